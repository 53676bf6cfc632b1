package plyworth.plugins.barrier.calibration;

import java.util.List;
import plyworth.shared.quantity.Range;

/**
 * How many times its standard each shared term is: the part of every damage multiplier above 1, and
 * the seal edge.
 *
 * @param times the factor
 * @param spread factor that it may lie above or below, 1 or more
 */
public record Correction(double times, double spread) {

  /** Nothing is known better than the standard. */
  public static final Correction NONE = new Correction(1, 1);

  /**
   * The correction that several measurements ask for: their geometric mean, each weighing as much
   * as it has samples. Its spread holds both their own spreads and how far they disagree: on the
   * logarithm, u² = Σ wᵢ²·uᵢ² + Σ wᵢ·(lᵢ − l)²/(n − 1) (JCGM 100, from memory).
   */
  public static Correction of(List<Evidence> evidence) {
    if (evidence.isEmpty()) {
      return NONE;
    }
    double samples = evidence.stream().mapToDouble(Evidence::samples).sum();
    double mean =
        evidence.stream().mapToDouble(e -> e.samples() / samples * Math.log(e.times())).sum();
    double own = 0;
    double apart = 0;
    for (Evidence one : evidence) {
      double weight = one.samples() / samples;
      own += Math.pow(weight * Math.log(one.spread()), 2);
      apart += weight * Math.pow(Math.log(one.times()) - mean, 2);
    }
    double disagreement = evidence.size() == 1 ? 0 : apart / (evidence.size() - 1);
    return new Correction(Math.exp(mean), Math.exp(Math.sqrt(own + disagreement)));
  }

  /** What the factor may be. */
  public Range range() {
    return new Range(times / spread, times, times * spread);
  }
}
