package plyworth.workbench.robustness;

/**
 * One draw of weights and inputs.
 *
 * @param weights one for each criterion; they add up to 1
 * @param values candidate by criterion; null for a candidate that is not ranked in this draw
 */
record Sample(double[] weights, double[][] values) {

  /** Values that differ by less come from rounding: these candidates share their ranks. */
  private static final double LEVEL = 1e-12;

  /** The value of every candidate under some weights; negative infinity when it is not ranked. */
  double[] sums(double[] under) {
    double[] sums = new double[values.length];
    for (int i = 0; i < sums.length; i++) {
      sums[i] = values[i] == null ? Double.NEGATIVE_INFINITY : sum(under, values[i]);
    }
    return sums;
  }

  private static double sum(double[] weights, double[] values) {
    double sum = 0;
    for (int c = 0; c < values.length; c++) {
      sum += weights[c] * values[c];
    }
    return sum;
  }

  /**
   * The share of a candidate in the ranks from the first to {@code last}; candidates that are level
   * share the ranks that they take together.
   */
  static double within(double[] sums, int candidate, int last) {
    if (sums[candidate] == Double.NEGATIVE_INFINITY) {
      return 0;
    }
    int before = 0;
    int level = 0;
    for (double sum : sums) {
      if (Math.abs(sum - sums[candidate]) <= LEVEL) {
        level++;
      } else if (sum > sums[candidate]) {
        before++;
      }
    }
    return Math.max(0, Math.min(1, (double) (last - before) / level));
  }
}
