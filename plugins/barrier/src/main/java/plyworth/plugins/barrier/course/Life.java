package plyworth.plugins.barrier.course;

/**
 * When a product reaches a limit.
 *
 * @param days days after filling; infinite when it never does, NaN when unknown
 * @param reached false when the product was only followed to that day, and kept
 */
public record Life(double days, boolean reached) {

  /** The limit is reached on a day; never, when it is infinite. */
  static Life of(double days) {
    return new Life(days, Double.isFinite(days));
  }

  /** The limit is not reached up to a day. */
  static Life beyond(double days) {
    return new Life(days, false);
  }
}
