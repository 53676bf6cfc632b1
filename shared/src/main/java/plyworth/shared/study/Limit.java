package plyworth.shared.study;

/**
 * A figure that a candidate must keep to; otherwise it is excluded.
 *
 * @param criterion full criterion id
 * @param bound which side is allowed
 * @param figure the limit, in the unit of the criterion; itself allowed
 * @param reason why; may be empty
 */
public record Limit(String criterion, Bound bound, double figure, String reason) {

  /** Which side of the figure is allowed. */
  public enum Bound {
    /** The figure or less. */
    AT_MOST,
    /** The figure or more. */
    AT_LEAST
  }

  /**
   * Checks the figure.
   *
   * @throws IllegalArgumentException when it is not finite
   */
  public Limit {
    if (!Double.isFinite(figure)) {
      throw new IllegalArgumentException("the limit on " + criterion + " is not a number");
    }
  }

  /** Whether a known figure keeps to the limit. */
  public boolean allows(double candidateFigure) {
    return bound == Bound.AT_MOST ? candidateFigure <= figure : candidateFigure >= figure;
  }
}
