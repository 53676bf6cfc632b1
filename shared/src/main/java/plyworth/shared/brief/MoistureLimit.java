package plyworth.shared.brief;

/**
 * How moisture spoils a product.
 *
 * @param sorption water held against water activity
 * @param dryMassG dry mass in one pack, g
 * @param initialActivity water activity when packed
 * @param criticalActivity water activity at which it is spoilt; not used by {@link
 *     Isotherm.Deliquescent}
 */
public record MoistureLimit(
    Sorption sorption, double dryMassG, double initialActivity, double criticalActivity) {

  /**
   * Checks the figures.
   *
   * @throws IllegalArgumentException when one of them is out of its bounds, or beyond what the
   *     isotherm of a known product holds for
   */
  public MoistureLimit {
    Check.positive("the dry mass", dryMassG, "g");
    Check.between("the initial water activity", initialActivity, 0, 1, "");
    Check.between("the critical water activity", criticalActivity, 0, 1, "");
    if (sorption instanceof KnownProduct product) {
      product.refuseBeyond(Math.max(initialActivity, criticalActivity));
    }
  }

  /** The isotherm at a storage temperature in °C. */
  public Isotherm isotherm(double celsius) {
    return sorption.at(celsius);
  }
}
