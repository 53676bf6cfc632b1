package plyworth.workbench.robustness;

/**
 * How much of the uncertainty of a figure comes from one input (Sobol indices).
 *
 * @param input the input
 * @param first share of the variance that it explains alone
 * @param total share that would be left if all others were known: what it does alone and together
 *     with others
 */
public record Influence(UncertainInput input, Index first, Index total) {

  /**
   * An estimate.
   *
   * @param estimate as estimated; by chance a little below 0 or above 1; NaN where nothing varies
   * @param low lower end of the interval that holds the index with a confidence of 95 %
   * @param high upper end of it
   */
  public record Index(double estimate, double low, double high) {

    /** The estimate, 0 to 1, as an index must be. */
    public double share() {
      return Math.min(1, Math.max(0, estimate));
    }
  }
}
