package plyworth.shared.plant;

/**
 * Figures between two ends, both included.
 *
 * @param from lowest, 0 or more
 * @param to highest
 */
public record Span(double from, double to) {

  /** Binary rounding must not push a figure over an end. */
  private static final double ROUNDING = 1e-9;

  /**
   * Checks the ends.
   *
   * @throws IllegalArgumentException when they are negative, not finite or the wrong way round
   */
  public Span {
    if (!(from >= 0) || !(to >= from) || !Double.isFinite(to)) {
      throw new IllegalArgumentException(
          "the span from " + from + " to " + to + " is none; write 0 or more, the lower end first");
    }
  }

  /** Whether a figure lies between the ends. */
  public boolean holds(double figure) {
    return figure >= from * (1 - ROUNDING) && figure <= to * (1 + ROUNDING);
  }
}
