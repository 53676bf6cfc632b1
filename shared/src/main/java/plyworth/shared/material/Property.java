package plyworth.shared.material;

import java.util.Comparator;
import java.util.List;
import plyworth.shared.quantity.Range;

/**
 * One fact about a material: a single figure, or a table of figures along gauge or humidity.
 *
 * @param id identifier, for example {@code o2-permeability}
 * @param unit unit of every figure, in plain spelling
 * @param points figures, ascending in {@link Sourced#at()}; one point when it holds always
 */
public record Property(String id, String unit, List<Sourced> points) {

  /**
   * Sorts the points.
   *
   * @throws IllegalArgumentException without points, or when several points hold always
   */
  public Property {
    points = points.stream().sorted(Comparator.comparingDouble(Sourced::at)).toList();
    boolean single = points.size() == 1;
    if (points.isEmpty() || !single && points.stream().anyMatch(p -> Double.isNaN(p.at()))) {
      throw new IllegalArgumentException(
          "property " + id + " needs one figure, or several that each say what they hold for");
    }
  }

  /** The figure when it does not depend on anything: the first point. */
  public Range range() {
    return points.get(0).range();
  }

  /**
   * The figure at {@code x}: constant outside the table; between two points the logarithm is
   * interpolated linearly, or the figure itself where one of them is not positive.
   *
   * @param x gauge in µm, or relative humidity in %; NaN takes the first point
   */
  public Range at(double x) {
    int last = points.size() - 1;
    if (last == 0 || Double.isNaN(x) || x <= points.get(0).at()) {
      return points.get(0).range();
    }
    if (x >= points.get(last).at()) {
      return points.get(last).range();
    }
    int upper = 1;
    while (points.get(upper).at() < x) {
      upper++;
    }
    Sourced next = points.get(upper);
    return next.at() == x ? next.range() : between(points.get(upper - 1), next, x);
  }

  private static Range between(Sourced a, Sourced b, double x) {
    double share = (x - a.at()) / (b.at() - a.at());
    double low = mix(a.range().low(), b.range().low(), share);
    double typical = mix(a.range().typical(), b.range().typical(), share);
    double high = mix(a.range().high(), b.range().high(), share);
    // near a point without a band the three differ by rounding alone, in any order
    return new Range(Math.min(low, typical), typical, Math.max(high, typical));
  }

  private static double mix(double a, double b, double share) {
    return a > 0 && b > 0 ? a * Math.pow(b / a, share) : a + share * (b - a);
  }
}
