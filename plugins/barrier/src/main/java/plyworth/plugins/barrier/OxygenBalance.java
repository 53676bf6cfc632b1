package plyworth.plugins.barrier;

import plyworth.shared.brief.Brief;

/**
 * Oxygen that enters a pack whose product consumes all of it (standard balance; analytic).
 *
 * @param allowedCm3 oxygen the product may take up, cm³ at 0 °C and 1.01325 bar
 * @param headspaceCm3 oxygen sealed in with it, cm³ at 0 °C and 1.01325 bar
 */
record OxygenBalance(double allowedCm3, double headspaceCm3) {

  /** Partial pressure of oxygen in air at 1 atm, bar. */
  static final double AIR_BAR = 0.2095 * 1.01325;

  /** Mass of 1 cm³ of oxygen at 0 °C and 1.01325 bar, mg: 31.998 g / 22413.97 cm³. */
  static final double MG_PER_CM3 = 31.998e3 / 22413.97;

  /** The balance of a brief that has an oxygen limit. */
  static OxygenBalance of(Brief brief) {
    var limit = brief.product().oxygen().orElseThrow();
    double allowed = limit.uptakePpm() * 1e-6 * brief.product().massG() * 1000 / MG_PER_CM3;
    double kelvin = brief.climate().temperatureC() + Arrhenius.ZERO_C;
    double share = limit.headspacePercent() / 100;
    return new OxygenBalance(
        allowed, brief.pack().headspaceCm3() * share * Arrhenius.ZERO_C / kelvin);
  }

  /**
   * Days until the limit times conductance, in cm³/bar: (allowed − head-space) / 0.212276 bar; zero
   * when the head-space alone is too much.
   */
  double allowance() {
    return Math.max(0, allowedCm3 - headspaceCm3) / AIR_BAR;
  }

  /** Oxygen taken up after some days, head-space included, cm³. */
  double uptakeCm3(double days, double conductance) {
    return headspaceCm3 + days * conductance * AIR_BAR;
  }
}
