package plyworth.shared.plant;

/**
 * The least that a supplier delivers of a web.
 *
 * @param amount 0 when there is none; NaN when it is not known
 * @param by what the amount is
 */
public record MinimumOrder(double amount, By by) {

  /** Nothing is known of it. */
  public static final MinimumOrder UNKNOWN = new MinimumOrder(Double.NaN, By.KG);

  /** What a minimum order is counted in. */
  public enum By {
    /** Mass, kg. */
    KG,
    /** Area, m². */
    M2
  }

  /**
   * Checks the amount.
   *
   * @throws IllegalArgumentException when it is negative or infinite
   */
  public MinimumOrder {
    if (amount < 0 || Double.isInfinite(amount)) {
      throw new IllegalArgumentException(
          "a minimum order of " + amount + " is none; write 0 or more, or nothing when unknown");
    }
  }

  /** In kg, for a web of a grammage in g/m². */
  public double kilograms(double grammage) {
    return by == By.KG ? amount : amount * grammage / 1000;
  }
}
