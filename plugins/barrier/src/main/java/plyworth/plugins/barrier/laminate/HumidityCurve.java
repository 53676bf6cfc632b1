package plyworth.plugins.barrier.laminate;

import java.util.Arrays;
import java.util.TreeSet;

/**
 * A positive figure along relative humidity, 0 to 1: its logarithm is straight between nodes and
 * constant outside them. Integrals and their inverses are exact.
 */
public final class HumidityCurve {

  /** What humidity does not move. */
  public static final HumidityCurve ONE = new HumidityCurve(new double[] {0}, new double[] {0});

  /** Below this rise in the logarithm a piece is integrated as a rectangle. */
  private static final double FLAT = 1e-12;

  private final double[] at;
  private final double[] logs;
  private final boolean one;

  private HumidityCurve(double[] at, double[] logs) {
    this.at = at;
    this.logs = logs;
    this.one = Arrays.stream(logs).allMatch(log -> log == 0);
  }

  /**
   * A curve through nodes.
   *
   * @param humidities relative humidity of the nodes, 0 to 1, ascending
   * @param figures as many, above 0
   */
  public static HumidityCurve of(double[] humidities, double[] figures) {
    return new HumidityCurve(humidities.clone(), Arrays.stream(figures).map(Math::log).toArray());
  }

  /** Whether it is 1 at every humidity. */
  public boolean one() {
    return one;
  }

  /** Whether it never falls. */
  public boolean rising() {
    for (int i = 1; i < logs.length; i++) {
      if (logs[i] < logs[i - 1]) {
        return false;
      }
    }
    return true;
  }

  /** The figure at a humidity. */
  public double value(double humidity) {
    return one ? 1 : Math.exp(log(humidity));
  }

  private double log(double humidity) {
    int piece = piece(humidity);
    if (piece < 0 || piece == at.length - 1) {
      return logs[Math.max(piece, 0)];
    }
    return logs[piece] + slope(piece) * (humidity - at[piece]);
  }

  /** Index of the last node at or below a humidity; −1 below the first. */
  private int piece(double humidity) {
    int piece = at.length - 1;
    while (piece >= 0 && at[piece] > humidity) {
      piece--;
    }
    return piece;
  }

  private double slope(int piece) {
    return piece < 0 || piece == at.length - 1
        ? 0
        : (logs[piece + 1] - logs[piece]) / (at[piece + 1] - at[piece]);
  }

  /** The integral between two humidities; negative when {@code to} is the lower. */
  public double integral(double from, double to) {
    if (from > to) {
      return -integral(to, from);
    }
    double sum = 0;
    double left = from;
    for (int piece = piece(from); left < to; piece++) {
      double right = Math.min(to, end(piece));
      sum += within(piece, left, right);
      left = right;
    }
    return Double.isNaN(from + to) ? Double.NaN : sum;
  }

  private double end(int piece) {
    return piece + 1 < at.length ? at[piece + 1] : Double.POSITIVE_INFINITY;
  }

  private double within(int piece, double left, double right) {
    double rise = slope(piece) * (right - left);
    double mean = Math.abs(rise) < FLAT ? 1 : Math.expm1(rise) / rise;
    return value(left) * mean * (right - left);
  }

  /** The mean between two humidities, in either order; the figure itself where they are equal. */
  public double mean(double one, double other) {
    return logs.length == 1 || one == other ? value(one) : integral(one, other) / (other - one);
  }

  /** The humidity up to which the integral from {@code from} is {@code area}, of either sign. */
  public double reach(double from, double area) {
    double place = from;
    double left = area;
    int piece = piece(from);
    if (area < 0 && piece >= 0 && at[piece] == from) {
      piece--;
    }
    while (true) {
      double edge = area < 0 ? start(piece) : end(piece);
      if (Double.isInfinite(edge) || Double.isNaN(left)) {
        return place + left / value(place);
      }
      double whole = area < 0 ? -within(piece, edge, place) : within(piece, place, edge);
      if (Math.abs(left) <= Math.abs(whole)) {
        return inside(piece, place, left);
      }
      left -= whole;
      place = edge;
      piece += area < 0 ? -1 : 1;
    }
  }

  private double start(int piece) {
    return piece >= 0 ? at[piece] : Double.NEGATIVE_INFINITY;
  }

  private double inside(int piece, double place, double area) {
    double slope = slope(piece);
    double flat = area / value(place);
    double rise = slope * flat;
    return Math.abs(rise) < FLAT ? place + flat : place + Math.log1p(rise) / slope;
  }

  /** Humidities at which it bends. */
  public double[] nodes() {
    return at.clone();
  }

  /** The smallest figure between two humidities. */
  public double lowest(double from, double to) {
    double least = Math.min(value(from), value(to));
    for (int i = 0; i < at.length; i++) {
      least = at[i] > from && at[i] < to ? Math.min(least, Math.exp(logs[i])) : least;
    }
    return least;
  }

  /** The largest figure between two humidities. */
  public double highest(double from, double to) {
    double most = Math.max(value(from), value(to));
    for (int i = 0; i < at.length; i++) {
      most = at[i] > from && at[i] < to ? Math.max(most, Math.exp(logs[i])) : most;
    }
    return most;
  }

  /** This curve times a positive factor. */
  public HumidityCurve times(double factor) {
    return new HumidityCurve(at, Arrays.stream(logs).map(l -> l + Math.log(factor)).toArray());
  }

  /** This curve over another. */
  public HumidityCurve over(HumidityCurve other) {
    TreeSet<Double> nodes = new TreeSet<>();
    Arrays.stream(at).forEach(nodes::add);
    Arrays.stream(other.at).forEach(nodes::add);
    double[] humidities = nodes.stream().mapToDouble(Double::doubleValue).toArray();
    double[] quotients = Arrays.stream(humidities).map(h -> log(h) - other.log(h)).toArray();
    return new HumidityCurve(humidities, quotients);
  }
}
