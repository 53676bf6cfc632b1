package plyworth.plugins.barrier;

import java.util.Set;

/**
 * Vapour over a mixture of isopropanol and water.
 *
 * @param alcoholPa partial pressure of isopropanol, Pa
 * @param waterPa partial pressure of water, Pa
 * @param alcoholActivity partial over saturated pressure of isopropanol, 0 to 1
 * @param waterActivity the same of water
 */
record AlcoholVapour(
    double alcoholPa, double waterPa, double alcoholActivity, double waterActivity) {

  /** The substance names whose constants are known. */
  static final Set<String> KNOWN = Set.of("isopropanol", "2-propanol");

  private static final double PASCAL_PER_MMHG = 133.322368;
  private static final double GAS_CONSTANT_CAL = 1.98721;
  private static final double MOLAR_MASS_ALCOHOL = 60.096;
  private static final double MOLAR_MASS_WATER = 18.0153;
  private static final double VOLUME_RATIO = 18.07 / 76.92;
  private static final double A12 = 437.98;
  private static final double A21 = 1238.00;

  /** Nothing is known. */
  static final AlcoholVapour UNKNOWN =
      new AlcoholVapour(Double.NaN, Double.NaN, Double.NaN, Double.NaN);

  /**
   * Vapour over a liquid: p = x·γ·psat, γ after Wilson, psat after Antoine (constants from memory,
   * recovered from an open interaction-parameter data set; other activity models differ by up to 15
   * % at 70 % alcohol).
   *
   * @param massFraction isopropanol in the liquid, 0 to 1; the rest is water
   * @param celsius °C
   */
  static AlcoholVapour over(double massFraction, double celsius) {
    double moles = massFraction / MOLAR_MASS_ALCOHOL;
    double x1 = moles / (moles + (1 - massFraction) / MOLAR_MASS_WATER);
    double x2 = 1 - x1;
    double rt = GAS_CONSTANT_CAL * (celsius + Arrhenius.ZERO_C);
    double l12 = VOLUME_RATIO * Math.exp(-A12 / rt);
    double l21 = Math.exp(-A21 / rt) / VOLUME_RATIO;
    double q = l12 / (x1 + l12 * x2) - l21 / (x2 + l21 * x1);
    double activity1 = x1 * Math.exp(-Math.log(x1 + l12 * x2) + x2 * q);
    double activity2 = x2 * Math.exp(-Math.log(x2 + l21 * x1) - x1 * q);
    return new AlcoholVapour(
        activity1 * antoine(8.11778, 1580.92, 219.61, celsius),
        activity2 * antoine(8.07131, 1730.63, 233.426, celsius),
        activity1,
        activity2);
  }

  private static double antoine(double a, double b, double c, double celsius) {
    return Math.pow(10, a - b / (c + celsius)) * PASCAL_PER_MMHG;
  }
}
