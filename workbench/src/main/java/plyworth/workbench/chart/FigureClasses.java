package plyworth.workbench.chart;

import java.util.Arrays;
import java.util.stream.DoubleStream;

/**
 * Classes of figures with round bounds, few enough to be told apart by a mark.
 *
 * @param bounds where one class ends and the next begins, ascending; one fewer than there are
 *     classes. A figure on a bound belongs to the class above it.
 */
public record FigureClasses(double[] bounds) {

  /** The index of an unknown figure. */
  public static final int UNKNOWN = -1;

  private static final int MOST = 5;

  /** Figures that span this ratio are classed by ratios. */
  private static final double WIDE = 30;

  private static final double[] ROUND = {1, 2, 2.5, 5, 10};

  /** Copies the bounds. */
  public FigureClasses {
    bounds = bounds.clone();
  }

  @Override
  public double[] bounds() {
    return bounds.clone();
  }

  /** Five classes at most that share out some figures; the unknown are passed over. */
  public static FigureClasses of(double[] figures) {
    double[] known = Arrays.stream(figures).filter(Double::isFinite).toArray();
    double low = Arrays.stream(known).min().orElse(0);
    double high = Arrays.stream(known).max().orElse(0);
    if (!(low < high)) {
      return new FigureClasses(new double[0]);
    }
    return new FigureClasses(low > 0 && high / low >= WIDE ? ratios(low, high) : steps(low, high));
  }

  private static double[] steps(double low, double high) {
    double least = (high - low) / MOST;
    double power = Math.pow(10, Math.floor(Math.log10(least)));
    double step =
        Arrays.stream(ROUND).map(r -> r * power).filter(s -> s >= least).findFirst().orElseThrow();
    double first = Math.floor(low / step) + 1;
    double[] bounds =
        DoubleStream.iterate(first, k -> k * step < high, k -> k + 1).map(k -> k * step).toArray();
    return Arrays.copyOf(bounds, Math.min(bounds.length, MOST - 1));
  }

  private static double[] ratios(double low, double high) {
    int from = (int) Math.floor(Math.log10(low)) + 1;
    int to = (int) Math.ceil(Math.log10(high)) - 1;
    int stride = Math.max(1, (int) Math.ceil((to - from + 1) / (MOST - 1.0)));
    return DoubleStream.iterate(from, k -> k <= to, k -> k + stride)
        .map(k -> Math.pow(10, k))
        .toArray();
  }

  /** How many classes there are. */
  public int size() {
    return bounds.length + 1;
  }

  /** The class of a figure; {@link #UNKNOWN} where it is unknown. */
  public int of(double figure) {
    if (Double.isNaN(figure)) {
      return UNKNOWN;
    }
    int index = 0;
    while (index < bounds.length && figure >= bounds[index]) {
      index++;
    }
    return index;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof FigureClasses classes && Arrays.equals(bounds, classes.bounds);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(bounds);
  }

  @Override
  public String toString() {
    return "classes divided at " + Arrays.toString(bounds);
  }
}
