package plyworth.plugins.machinability;

/**
 * Between what the warming of the seal interface must lie when the wall is known only within
 * bounds.
 *
 * <p>In the plain zone the missing share θ(t) is the chance that a sum of independent exponential
 * times exceeds t: its Laplace transform is 1/a(s) with real negative roots. Its mean is m = a₁,
 * its slowest time constant at least m − 2·a₂/m, and as such sums age (increasing failure rate), θ
 * ≥ exp(−t/m) for t &lt; m and t ≤ m·ln(1/θ)/(1 − θ) (Barlow and Proschan, Mathematical Theory of
 * Reliability; from memory). Further webs behind the interface only slow it, and slow it less than
 * their whole heat capacity put at the interface would, which is a sum of the same kind with the
 * mean {@code loaded}. A second hot jaw only speeds it; in one on two the two nearest webs make one
 * on one, and the third only slows that.
 *
 * @param mean least mean of the plain zone, s
 * @param slowest least slowest time constant of the plain zone, s
 * @param plain greatest mean of the plain zone, s
 * @param loaded greatest mean of the thickest zone, its further webs put at the interface, s
 */
record WarmingBounds(double mean, double slowest, double plain, double loaded) {

  /** What the two-exponential form may differ from the conduction it stands for. */
  private static final double SLACK = 0.003;

  /**
   * The bounds of walls between two.
   *
   * @param low each element the least
   * @param high each element the greatest
   * @param contact contact resistance, m²·K/W
   * @param further webs behind the interface: 0, 1 or 2
   */
  static WarmingBounds of(Wall low, Wall high, double contact, int further) {
    Wall near = low.behindContact(contact);
    Wall far = high.behindContact(contact);
    double mean = near.a()[1];
    return new WarmingBounds(
        mean,
        Math.max(0, mean - 2 * far.a()[2] / mean),
        far.a()[1],
        far.a()[1] + further * far.b()[0] * high.c()[1]);
  }

  /** Least time until the share still missing falls to {@code share}, s. */
  double leastTime(double share) {
    if (share >= 1) {
      return 0;
    }
    double steps = -Math.log(share);
    return (1 - SLACK) * Math.max(Math.min(1, steps) * mean, steps * slowest);
  }

  /** Greatest time until it does, in the thickest zone, s. */
  double mostTime(double share) {
    return share >= 1 ? 0 : (1 + SLACK) * loaded * -Math.log(share) / (1 - share);
  }

  /** Least share still missing after a time, in any zone. */
  double leastRemaining(double time) {
    double aged = time < mean ? Math.exp(-time / mean) : 0;
    double slow = Math.exp(-time / slowest);
    return Math.max(0, Math.max(aged, slow) - SLACK);
  }

  /** Greatest share still missing after a time, in the plain zone. */
  double mostRemainingPlain(double time) {
    return mostRemaining(time, plain);
  }

  /** Greatest share still missing after a time, in the thickest zone. */
  double mostRemaining(double time) {
    return mostRemaining(time, loaded);
  }

  /** Solves ln(1/θ)/(1 − θ) = t/m for θ by halving; the left side falls as θ grows. */
  private static double mostRemaining(double time, double mean) {
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
    return Math.min(1, high + SLACK);
  }
}
