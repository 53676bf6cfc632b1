package plyworth.workbench.robustness;

/** How strongly a candidate is preferred for being better by some amount in one criterion. */
@FunctionalInterface
interface Preference {

  /**
   * Strength of preference, 0 (none) to 1 (full).
   *
   * @param difference by how much it is better, above 0
   */
  double strength(double difference);

  /**
   * None up to a difference, full from another, straight between.
   *
   * @param indifferent greatest difference nobody minds
   * @param full smallest difference that counts in full, above {@code indifferent}
   */
  static Preference linear(double indifferent, double full) {
    return difference ->
        Math.max(0, Math.min(1, (difference - indifferent) / (full - indifferent)));
  }
}
