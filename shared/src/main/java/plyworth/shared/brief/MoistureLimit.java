package plyworth.shared.brief;

/**
 * How moisture spoils a product.
 *
 * @param isotherm water held against water activity
 * @param dryMassG dry mass in one pack, g
 * @param initialActivity water activity when packed
 * @param criticalActivity water activity at which it is spoilt; not used by {@link
 *     Isotherm.Deliquescent}
 */
public record MoistureLimit(
    Isotherm isotherm, double dryMassG, double initialActivity, double criticalActivity) {

  /** Checks the figures. */
  public MoistureLimit {
    Check.positive("the dry mass", dryMassG, "g");
    Check.between("the initial water activity", initialActivity, 0, 1, "");
    Check.between("the critical water activity", criticalActivity, 0, 1, "");
  }
}
