package plyworth.workbench.chart;

import java.util.List;

/**
 * Shares as bars from 0 to 1, each built from parts.
 *
 * @param axis label of the scale
 * @param parts name of each part, in the order they are stacked
 * @param bars bars from the top down; their names differ
 */
public record ShareBars(String axis, List<String> parts, List<Bar> bars) {

  private static final double ROUNDING = 1e-9;

  /** Copies the lists. */
  public ShareBars {
    parts = List.copyOf(parts);
    bars = List.copyOf(bars);
  }

  /**
   * A bar.
   *
   * @param name what it is of
   * @param tip what is shown when the pointer rests on it
   * @param shares its parts, as many as there are; together not more than 1
   * @param error standard error of the first part; NaN where none is known
   * @param figure what is written beside it
   */
  public record Bar(String name, String tip, List<Double> shares, double error, String figure) {

    /**
     * Copies the list.
     *
     * @throws IllegalArgumentException when a part is negative, or all together exceed 1
     */
    public Bar {
      shares = List.copyOf(shares);
      double sum = 0;
      for (double share : shares) {
        sum += share;
        if (!(share >= 0) || sum > 1 + ROUNDING) {
          throw new IllegalArgumentException("the shares of " + name + " are " + shares);
        }
      }
    }
  }
}
