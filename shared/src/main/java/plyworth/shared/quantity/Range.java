package plyworth.shared.quantity;

/**
 * An uncertain figure as low, typical and high, all in the unit of the declaration that holds it.
 *
 * <p>Unknown is {@link #UNKNOWN}, three times NaN, and never zero.
 *
 * @param low lowest credible figure
 * @param typical the figure used when one number is needed
 * @param high highest credible figure
 */
public record Range(double low, double typical, double high) {

  /** Nothing is known. */
  public static final Range UNKNOWN = new Range(Double.NaN, Double.NaN, Double.NaN);

  /**
   * Checks the order.
   *
   * @throws IllegalArgumentException unless all three are finite with low ≤ typical ≤ high, or all
   *     three are NaN
   */
  public Range {
    boolean unknown = Double.isNaN(low) && Double.isNaN(typical) && Double.isNaN(high);
    boolean ordered =
        Double.isFinite(low) && Double.isFinite(high) && low <= typical && typical <= high;
    if (!unknown && !ordered) {
      throw new IllegalArgumentException(
          "a range needs finite figures with low ≤ typical ≤ high, not "
              + low
              + " / "
              + typical
              + " / "
              + high);
    }
  }

  /** A figure without uncertainty; NaN gives {@link #UNKNOWN}. */
  public static Range exactly(double figure) {
    return new Range(figure, figure, figure);
  }

  /** Whether anything is known. */
  public boolean known() {
    return !Double.isNaN(typical);
  }

  /**
   * The range of {@code factor} times this figure.
   *
   * @param factor finite, not negative
   */
  public Range times(double factor) {
    return new Range(low * factor, typical * factor, high * factor);
  }
}
