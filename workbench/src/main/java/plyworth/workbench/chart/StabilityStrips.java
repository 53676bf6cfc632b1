package plyworth.workbench.chart;

import java.util.List;

/**
 * How far each weight may move with the leader staying first: a strip for each criterion, over all
 * shares from 0 to 1.
 *
 * @param rows the criteria, from the top down
 */
public record StabilityStrips(List<Row> rows) {

  /** Copies the list. */
  public StabilityStrips {
    rows = List.copyOf(rows);
  }

  /**
   * A criterion.
   *
   * @param title its name
   * @param said its share and the interval, in words
   * @param weight its share of all weight now, 0 to 1
   * @param from how far it may fall; NaN where it cannot be moved
   * @param to how far it may rise
   * @param below who leads below; empty when nobody else does
   * @param above who leads above; empty when nobody else does
   */
  public record Row(
      String title,
      String said,
      double weight,
      double from,
      double to,
      String below,
      String above) {

    /**
     * Checks the shares.
     *
     * @throws IllegalArgumentException when the share lies outside its interval, or outside 0 to 1
     */
    public Row {
      boolean within = !(from > weight + 1e-9) && !(to < weight - 1e-9);
      if (!(weight >= 0 && weight <= 1) || !within || from < 0 || to > 1) {
        throw new IllegalArgumentException(
            "the share " + weight + " of " + title + " and its interval " + from + " to " + to);
      }
    }
  }
}
