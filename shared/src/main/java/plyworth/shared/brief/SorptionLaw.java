package plyworth.shared.brief;

/** Isotherms whose constants follow from the temperature. */
public sealed interface SorptionLaw extends Sorption {

  /** Molar gas constant, J/(mol·K) (CODATA). */
  double GAS_CONSTANT = 8.314462618;

  /** 0 °C in K. */
  double ZERO_C = 273.15;

  /**
   * The form of {@link Isotherm.Gab} with C = c0·exp(ΔHc/(R·T)) and k = k0·exp(ΔHk/(R·T)) (usual
   * temperature terms of the form, from memory).
   *
   * @param m0 monolayer moisture, g/g dry
   * @param c0 factor of C
   * @param cHeat heat ΔHc, J/mol
   * @param k0 factor of k
   * @param kHeat heat ΔHk, J/mol; may be negative
   */
  record Gab(double m0, double c0, double cHeat, double k0, double kHeat) implements SorptionLaw {

    @Override
    public Isotherm at(double celsius) {
      double rt = GAS_CONSTANT * (celsius + ZERO_C);
      return new Isotherm.Gab(m0, c0 * Math.exp(cHeat / rt), k0 * Math.exp(kHeat / rt));
    }
  }

  /**
   * Crystals whose deliquescence point follows ln a = slope/T + offset (form of a fit of saturated
   * salt solutions).
   *
   * @param slopeK slope, K
   * @param offset offset
   * @param allowedUptake water that may be taken up above it before the product is spoilt, g/g dry
   */
  record Deliquescence(double slopeK, double offset, double allowedUptake) implements SorptionLaw {

    @Override
    public Isotherm at(double celsius) {
      double activity = Math.exp(slopeK / (celsius + ZERO_C) + offset);
      return new Isotherm.Deliquescent(activity, allowedUptake);
    }
  }
}
