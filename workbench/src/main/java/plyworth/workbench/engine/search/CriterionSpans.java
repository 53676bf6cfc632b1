package plyworth.workbench.engine.search;

/**
 * Between which figures some candidates lie, a few of them together; those that a plugin blocks for
 * certain are left out.
 *
 * @param low by bundle and criterion, the lower end; NaN when nothing is known of the figure
 * @param high the upper end
 */
record CriterionSpans(double[][] low, double[][] high) {

  private static final boolean[] NOTHING = {};

  /** The most that one of the candidates can be worth; −∞ when none is of interest. */
  double atMost(Goal goal) {
    return atMost(goal, NOTHING, Double.POSITIVE_INFINITY);
  }

  /**
   * The same.
   *
   * @param summed criteria that are better known together
   * @param sums the most that these can be worth together; +∞ when that is not known
   */
  double atMost(Goal goal, boolean[] summed, double sums) {
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < low.length; i++) {
      double apart = goal.atMost(low[i], high[i]);
      boolean known = sums < Double.POSITIVE_INFINITY && apart > most;
      double together = known ? sums + goal.atMost(low[i], high[i], summed) : apart;
      most = Math.max(most, Math.min(apart, together));
    }
    return most;
  }

  /** Memory that it takes, roughly. */
  long bytes() {
    return low.length * 2L * (16 + (low.length == 0 ? 0 : (long) Double.BYTES * low[0].length));
  }
}
