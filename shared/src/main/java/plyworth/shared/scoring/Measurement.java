package plyworth.shared.scoring;

import plyworth.shared.data.Day;

/**
 * Something measured on today's pack.
 *
 * @param figure full id of the criterion it is the true figure of, for example {@code barrier/otr};
 *     under its conditions
 * @param value what was measured
 * @param unit unit of the value: that of the criterion, in plain spelling
 * @param spread factor that the truth may lie above or below, 1 or more
 * @param samples number of samples, 1 or more
 * @param method standard or other way of measuring; never empty
 * @param date when, as year-month-day; may be empty
 * @param note remark; a ratio of measured to predicted above 3 either way asks for one
 */
public record Measurement(
    String figure,
    double value,
    String unit,
    double spread,
    int samples,
    String method,
    String date,
    String note) {

  /**
   * Checks the figures, the method and the date.
   *
   * @throws IllegalArgumentException when one of them is wrong
   */
  public Measurement {
    if (!(value > 0) || !Double.isFinite(value)) {
      throw new IllegalArgumentException(
          "the measured " + figure + " is " + value + "; it must be greater than 0");
    }
    if (!(spread >= 1) || !Double.isFinite(spread)) {
      throw new IllegalArgumentException(
          "the spread of " + figure + " is " + spread + "; it is a factor of 1 or more");
    }
    if (samples < 1) {
      throw new IllegalArgumentException(
          "the number of samples of " + figure + " is " + samples + "; it must be 1 or more");
    }
    if (method.isBlank()) {
      throw new IllegalArgumentException(
          "the method of measuring " + figure + " is empty; name a standard, or say how");
    }
    Day.require("measuring " + figure, date);
  }
}
