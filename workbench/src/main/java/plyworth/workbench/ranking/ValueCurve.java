package plyworth.workbench.ranking;

import plyworth.shared.scoring.ValueFunction;
import plyworth.workbench.engine.search.Line;

/**
 * A value function in flat arrays, for millions of calls.
 *
 * <p>Unlike {@link ValueFunction#value}, from which it differs by rounding alone, it never leaves
 * the values at the ends of a line, so that between two points it rises or falls without exception.
 */
public final class ValueCurve {

  /** What rounding can be in a value and in its distance from a line. */
  private static final double ROUNDING = 1e-13;

  private final boolean logarithmic;
  private final double[] figures;
  private final double[] places;
  private final double[] values;

  /** The curve of a value function. */
  public ValueCurve(ValueFunction function) {
    logarithmic = function.logarithmic();
    figures = function.points().stream().mapToDouble(ValueFunction.Point::figure).toArray();
    values = function.points().stream().mapToDouble(ValueFunction.Point::value).toArray();
    places = figures.clone();
    for (int i = 0; i < places.length; i++) {
      places[i] = place(figures[i]);
    }
  }

  private double place(double figure) {
    return logarithmic ? Math.log(figure) : figure;
  }

  /** The value of a known figure. */
  public double value(double figure) {
    int last = figures.length - 1;
    if (figure <= figures[0]) {
      return values[0];
    }
    if (figure >= figures[last]) {
      return values[last];
    }
    int upper = 1;
    while (figures[upper] < figure) {
      upper++;
    }
    double a = values[upper - 1];
    double b = values[upper];
    double share = (place(figure) - places[upper - 1]) / (places[upper] - places[upper - 1]);
    double value = a + share * (b - a);
    return a <= b ? Math.max(a, Math.min(b, value)) : Math.max(b, Math.min(a, value));
  }

  /** The highest value of any figure between two. */
  public double highest(double low, double high) {
    double highest = Math.max(value(low), value(high));
    for (int i = 0; i < figures.length; i++) {
      if (figures[i] > low && figures[i] < high) {
        highest = Math.max(highest, values[i]);
      }
    }
    return highest;
  }

  /** The lowest value of any figure between two. */
  public double lowest(double low, double high) {
    double lowest = Math.min(value(low), value(high));
    for (int i = 0; i < figures.length; i++) {
      if (figures[i] > low && figures[i] < high) {
        lowest = Math.min(lowest, values[i]);
      }
    }
    return lowest;
  }

  /** A line over the values of all figures between two, parallel to the chord. */
  Line above(double low, double high) {
    double slope = low < high ? (value(high) - value(low)) / (high - low) : 0;
    double most = Math.max(value(low) - slope * low, value(high) - slope * high);
    double least = Math.min(value(low) - slope * low, value(high) - slope * high);
    for (int i = 0; i < figures.length; i++) {
      for (double at : new double[] {figures[i], touching(slope, i)}) {
        if (at > low && at < high) {
          most = Math.max(most, value(at) - slope * at);
          least = Math.min(least, value(at) - slope * at);
        }
      }
    }
    return new Line(slope, most + ROUNDING, most - least <= ROUNDING);
  }

  /** Where a curve between two points has a slope; NaN when nowhere. */
  private double touching(double slope, int point) {
    if (!logarithmic || point + 1 == figures.length) {
      return Double.NaN;
    }
    double perPlace = (values[point + 1] - values[point]) / (places[point + 1] - places[point]);
    double at = perPlace / slope;
    return at > figures[point] && at < figures[point + 1] ? at : Double.NaN;
  }
}
