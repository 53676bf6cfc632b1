package plyworth.shared.study;

import plyworth.shared.quantity.Range;

/**
 * What is believed of a positive figure: its natural logarithm is normal.
 *
 * @param mean mean of the logarithm
 * @param deviation standard deviation of the logarithm, 0 or more
 */
public record LogNormal(double mean, double deviation) {

  /** Standard deviations from the middle to either end of the middle 90 %. */
  private static final double TAIL = 1.6448536269514722;

  /**
   * Checks both.
   *
   * @throws IllegalArgumentException unless both are finite and the deviation is not negative
   */
  public LogNormal {
    if (!Double.isFinite(mean) || !Double.isFinite(deviation) || deviation < 0) {
      throw new IllegalArgumentException(
          "a log-normal figure needs a finite mean and a deviation of 0 or more, not "
              + (mean + " and " + deviation));
    }
  }

  /**
   * A figure whose typical value is the middle, and whose low and high are as far apart as the
   * middle 90 % (judgement: a range says no more than what is credible).
   *
   * @throws IllegalArgumentException unless the range is known and positive
   */
  public static LogNormal of(Range range) {
    if (!(range.low() > 0)) {
      throw new IllegalArgumentException("no logarithm of " + range);
    }
    double width = Math.log(range.high()) - Math.log(range.low());
    return new LogNormal(Math.log(range.typical()), width / (2 * TAIL));
  }

  /**
   * A reading.
   *
   * @param value what was read, above 0
   * @param spread factor that the truth may lie above or below at the ends of the middle 90 %, 1 or
   *     more
   */
  public static LogNormal reading(double value, double spread) {
    return new LogNormal(Math.log(value), Math.log(spread) / TAIL);
  }

  /**
   * What is believed after an independent reading as well: precisions add, and the mean is that of
   * both, weighed by precision (normal prior, normal reading of known deviation; analytic). Of two
   * that are both certain, the reading holds.
   */
  public LogNormal after(LogNormal reading) {
    if (reading.deviation == 0 || deviation == 0) {
      return reading.deviation == 0 ? reading : this;
    }
    double own = 1 / (deviation * deviation);
    double other = 1 / (reading.deviation * reading.deviation);
    return new LogNormal(
        (own * mean + other * reading.mean) / (own + other), 1 / Math.sqrt(own + other));
  }

  /** The middle, and the ends of the middle 90 %. */
  public Range range() {
    double factor = Math.exp(TAIL * deviation);
    double middle = Math.exp(mean);
    return new Range(middle / factor, middle, middle * factor);
  }
}
