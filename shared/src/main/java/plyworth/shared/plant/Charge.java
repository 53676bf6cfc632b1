package plyworth.shared.plant;

/**
 * What an outside service asks for a pass.
 *
 * @param setupEur for every order, EUR
 * @param per1000M2Eur for 1000 m² that run, EUR
 */
public record Charge(double setupEur, double per1000M2Eur) {

  /**
   * Checks the figures.
   *
   * @throws IllegalArgumentException when one is negative or not finite
   */
  public Charge {
    if (!(setupEur >= 0 && per1000M2Eur >= 0) || !Double.isFinite(setupEur + per1000M2Eur)) {
      throw new IllegalArgumentException(
          "a charge of " + setupEur + " EUR and " + per1000M2Eur + " EUR per 1000 m² is none");
    }
  }

  /** Cost of a pass over an area in m², EUR. */
  public double cost(double areaM2) {
    return setupEur + per1000M2Eur * areaM2 / 1000;
  }
}
