package plyworth.plugins.barrier.calibration;

import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * What one measurement says about the shared terms.
 *
 * @param times the shared terms over their standard that predict what was measured
 * @param spread factor that this may lie above or below, 1 or more
 * @param samples number of samples behind it
 */
public record Evidence(double times, double spread, int samples) {

  /**
   * What a measurement says, solved for.
   *
   * <p>The spread is that of the farther end of the measured band; an end that no terms predict
   * counts as far off as the terms may be.
   *
   * @param predicted the figure for shared terms over their standard; rises or falls throughout
   * @param measured the measured figure
   * @param spread factor that the measured figure may lie above or below
   * @return empty when no shared terms predict what was measured
   */
  public static Optional<Evidence> of(
      DoubleUnaryOperator predicted, double measured, double spread, int samples) {
    double times = SharedTerms.predicting(predicted, measured);
    if (Double.isNaN(times)) {
      return Optional.empty();
    }
    double way = 0;
    if (spread > 1) {
      double above = away(times, SharedTerms.predicting(predicted, measured * spread));
      double below = away(times, SharedTerms.predicting(predicted, measured / spread));
      way = Math.max(above, below);
    }
    return Optional.of(new Evidence(times, Math.exp(way), samples));
  }

  /** Distance of an end on the logarithm; one out of reach lies as far off as terms may be. */
  private static double away(double times, double end) {
    return Double.isNaN(end) ? Math.log(SharedTerms.WIDEST) : Math.abs(Math.log(end / times));
  }
}
