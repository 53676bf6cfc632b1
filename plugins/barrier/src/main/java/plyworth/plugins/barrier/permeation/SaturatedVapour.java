package plyworth.plugins.barrier.permeation;

/** Vapour pressure of water over its liquid. */
public final class SaturatedVapour {

  private SaturatedVapour() {}

  /**
   * Saturated water vapour pressure in Pa: 610.94 · exp(17.625 t / (t + 243.04)).
   *
   * <p>Magnus form with the constants of Alduchov and Eskridge (from memory); 0.15 to 0.3 % below
   * the IAPWS values between 20 and 40 °C.
   *
   * @param celsius °C, about −40 to 70
   */
  public static double pascal(double celsius) {
    return 610.94 * Math.exp(17.625 * celsius / (celsius + 243.04));
  }
}
