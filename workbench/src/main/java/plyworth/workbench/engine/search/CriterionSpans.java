package plyworth.workbench.engine.search;

/**
 * Between which figures some candidates lie, a few of them together; those that a plugin blocks for
 * certain are left out.
 *
 * @param low by bundle and criterion, the lower end; NaN when nothing is known of the figure
 * @param high the upper end
 */
record CriterionSpans(double[][] low, double[][] high) {

  /**
   * The most that one of the candidates can be worth; −∞ when none is of interest.
   *
   * @param summed criteria that are better known together
   * @param sums the most that these can be worth together
   */
  double atMost(Goal goal, boolean[] summed, double sums) {
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < low.length; i++) {
      double apart = goal.atMost(low[i], high[i]);
      double together = sums + goal.atMost(low[i], high[i], summed);
      most = Math.max(most, Math.min(apart, together));
    }
    return most;
  }
}
