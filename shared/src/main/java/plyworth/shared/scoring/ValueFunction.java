package plyworth.shared.scoring;

import java.util.List;

/**
 * What a figure is worth, from 0 to 1: straight lines between named reference points, constant
 * outside them.
 *
 * @param logarithmic whether the lines are straight against the logarithm of the figure; then every
 *     point lies above 0, and figures at or below 0 count as the first point
 * @param points at least two, ascending in the figure
 */
public record ValueFunction(boolean logarithmic, List<Point> points) {

  /**
   * A reference point.
   *
   * @param figure the figure, in the unit of the criterion
   * @param value its value, 0 to 1
   * @param name what the point stands for, for example {@code the need}; may be empty
   */
  public record Point(double figure, double value, String name) {}

  /**
   * Checks the points.
   *
   * @throws IllegalArgumentException unless there are two or more points, ascending and finite,
   *     with values from 0 to 1
   */
  public ValueFunction {
    points = List.copyOf(points);
    if (points.size() < 2) {
      throw new IllegalArgumentException("a value function needs two or more points");
    }
    double last = logarithmic ? 0 : Double.NEGATIVE_INFINITY;
    for (Point point : points) {
      if (!(point.figure() > last) || !Double.isFinite(point.figure())) {
        throw new IllegalArgumentException(
            "the points of a value function must ascend"
                + (logarithmic ? " above 0" : "")
                + "; "
                + point.figure()
                + " follows "
                + last);
      }
      if (!(point.value() >= 0 && point.value() <= 1)) {
        throw new IllegalArgumentException(
            "the value at " + point.figure() + " is " + point.value() + "; it must be 0 to 1");
      }
      last = point.figure();
    }
  }

  /** Straight lines through figure and value pairs, without names. */
  public static ValueFunction linear(double... figuresAndValues) {
    return new ValueFunction(false, points(figuresAndValues));
  }

  /** Straight lines against the logarithm through figure and value pairs, without names. */
  public static ValueFunction logarithmic(double... figuresAndValues) {
    return new ValueFunction(true, points(figuresAndValues));
  }

  private static List<Point> points(double... pairs) {
    Point[] points = new Point[pairs.length / 2];
    for (int i = 0; i < points.length; i++) {
      points[i] = new Point(pairs[2 * i], pairs[2 * i + 1], "");
    }
    return List.of(points);
  }

  /** The value of a figure; NaN for NaN. */
  public double value(double figure) {
    if (Double.isNaN(figure)) {
      return Double.NaN;
    }
    int last = points.size() - 1;
    if (figure <= points.get(0).figure()) {
      return points.get(0).value();
    }
    if (figure >= points.get(last).figure()) {
      return points.get(last).value();
    }
    int upper = 1;
    while (points.get(upper).figure() < figure) {
      upper++;
    }
    Point a = points.get(upper - 1);
    Point b = points.get(upper);
    double share = (scale(figure) - scale(a.figure())) / (scale(b.figure()) - scale(a.figure()));
    return a.value() + share * (b.value() - a.value());
  }

  /**
   * The lowest and highest value of any figure between two.
   *
   * @return {lowest, highest}; {0, 1} when either end is NaN
   */
  public double[] valueBetween(double low, double high) {
    if (Double.isNaN(low) || Double.isNaN(high)) {
      return new double[] {0, 1};
    }
    double a = value(low);
    double b = value(high);
    double[] span = {Math.min(a, b), Math.max(a, b)};
    for (Point point : points) {
      if (point.figure() > low && point.figure() < high) {
        span[0] = Math.min(span[0], point.value());
        span[1] = Math.max(span[1], point.value());
      }
    }
    return span;
  }

  private double scale(double figure) {
    return logarithmic ? Math.log(figure) : figure;
  }
}
