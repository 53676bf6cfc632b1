package plyworth.plugins.machinability;

import plyworth.shared.brief.Machine.SealZone;

/**
 * Between what the warming of the seal interface must lie when the wall is known only within
 * bounds.
 *
 * <p>The missing share θ(t) is the chance that a particle that diffuses from the interface has not
 * reached a jaw by t (duality of heat conduction and diffusion). In the plain zone that time is a
 * sum of independent exponential times: its Laplace transform is 1/a(s) with real negative roots.
 * Its mean is m = a₁, its slowest time constant at least m − 2·a₂/m, and as such sums age
 * (increasing failure rate), θ ≥ exp(−t/m) for t &lt; m and t ≤ m·ln(1/θ)/(1 − θ) (Barlow and
 * Proschan, Mathematical Theory of Reliability; from memory). Further webs, and what a second jaw
 * beyond them does not reach, only lengthen the time. It is at most that from the far end of the
 * stack, a sum of the same kind, and obeys Markov's inequality with its own mean: t ≤ mean/θ.
 *
 * @param mean least mean of the plain zone, s
 * @param slowest least slowest time constant of the plain zone, s
 * @param plain greatest mean of the plain zone, s
 * @param thickest greatest mean of the thickest zone, s
 * @param farthest greatest mean from the far end of the thickest zone to one jaw, s
 */
record WarmingBounds(double mean, double slowest, double plain, double thickest, double farthest) {

  /** What the two-exponential form may differ from the conduction it stands for. */
  private static final double SLACK = 0.003;

  /** Missing share above which the two-exponential form is a rough interpolation. */
  private static final double EARLY = 0.97;

  /**
   * The bounds of walls between two.
   *
   * @param low each element the least
   * @param high each element the greatest
   * @param contact contact resistance, m²·K/W
   * @param zone the thickest zone
   */
  static WarmingBounds of(Wall low, Wall high, double contact, SealZone zone) {
    double capacity = high.c()[1];
    double inward = high.a()[1];
    double outward = high.d()[1];
    double mean = low.a()[1] + contact * low.c()[1];
    double curvature = high.a()[2] + contact * high.c()[2];
    double near = inward + contact * capacity;
    double filling = (high.b()[0] + contact) * capacity;
    double slowest = Math.max(0, mean - 2 * curvature / mean);
    return switch (zone) {
      case ONE_ON_ONE -> new WarmingBounds(mean, slowest, near, near, near);
      case ONE_ON_THREE ->
          new WarmingBounds(mean, slowest, near, near + filling, near + filling + outward);
      case ONE_ON_TWO -> {
        double longer = Math.max(inward, outward);
        double twoWebs = longer + contact * capacity + inward + filling;
        double most = nearShare(low.b()[0], contact);
        double least = nearShare(high.b()[0], contact);
        yield new WarmingBounds(
            mean,
            slowest,
            near,
            most * twoWebs + (1 - least) * near,
            near + outward + longer + high.b()[0] * capacity + 2 * filling);
      }
    };
  }

  /** Weight of the side of two webs in the mean of one on two: the other side's resistance. */
  private static double nearShare(double resistance, double contact) {
    return (resistance + contact) / (3 * resistance + 2 * contact);
  }

  /** Least time until the share still missing falls to {@code share}, s. */
  double leastTime(double share) {
    if (share >= EARLY) {
      return 0 * mean;
    }
    double steps = -Math.log(share);
    return (1 - SLACK) * Math.max(Math.min(1, steps) * mean, steps * slowest);
  }

  /** Greatest time until it does, in the thickest zone, s. */
  double mostTime(double share) {
    if (share >= 1) {
      return 0 * farthest;
    }
    double aged = farthest * -Math.log(share) / (1 - share);
    return (1 + SLACK) * Math.min(aged, thickest / share);
  }

  /** Least share still missing after a time, in any zone. */
  double leastRemaining(double time) {
    double aged = time < mean ? Math.exp(-time / mean) : 0;
    double share = Math.max(aged, time == 0 ? 1 : Math.exp(-time / slowest));
    return Math.max(0, Math.min(EARLY, share) - SLACK);
  }

  /** Greatest share still missing after a time, in the plain zone. */
  double mostRemainingPlain(double time) {
    return Math.min(1, aged(time, plain) + SLACK);
  }

  /** Greatest share still missing after a time, in the thickest zone. */
  double mostRemaining(double time) {
    return Math.min(1, Math.min(aged(time, farthest), thickest / time) + SLACK);
  }

  /** Solves ln(1/θ)/(1 − θ) = t/m for θ by halving; the left side falls as θ grows. */
  private static double aged(double time, double mean) {
    double ratio = time / mean;
    if (!(ratio > 1)) {
      return Double.isNaN(ratio) ? Double.NaN : 1;
    }
    double low = 0;
    double high = 1;
    for (int i = 0; i < 40; i++) {
      double middle = (low + high) / 2;
      if (-Math.log(middle) / (1 - middle) > ratio) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }
}
