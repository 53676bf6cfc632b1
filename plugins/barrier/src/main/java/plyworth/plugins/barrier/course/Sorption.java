package plyworth.plugins.barrier.course;

import java.util.function.DoubleUnaryOperator;
import plyworth.plugins.barrier.permeation.Arrhenius;
import plyworth.plugins.barrier.permeation.SaturatedVapour;
import plyworth.shared.brief.Isotherm;
import plyworth.shared.brief.MoistureLimit;

/**
 * Water that a product and the gas around it hold together, at one water activity (sorption balance
 * of moisture-sensitive packs, from memory; any isotherm).
 *
 * @param limit the product's limit
 * @param isotherm its isotherm at the warmest season; it has a slope
 * @param vapourG vapour in the head-space per unit of activity, g; taken at the warmest season and
 *     kept, since it is small beside what the product holds
 */
record Sorption(MoistureLimit limit, Isotherm isotherm, double vapourG) {

  /** Molar mass of water, g/mol. */
  private static final double MOLAR_MASS = 18.0153;

  /**
   * Checks that the isotherm holds as far as it is used.
   *
   * @throws IllegalArgumentException when it does not
   */
  Sorption {
    double wettest = Math.max(limit.initialActivity(), limit.criticalActivity());
    if (Double.isNaN(isotherm.moisture(wettest))) {
      throw new IllegalArgumentException(
          ("the isotherm of the brief does not hold up to the water activities ")
              + limit.initialActivity()
              + " and "
              + limit.criticalActivity()
              + "; lower them, or the GAB constant k");
    }
  }

  /** Product and head-space of a volume at a temperature, as an ideal gas. */
  static Sorption of(MoistureLimit limit, double headspaceCm3, double celsius) {
    double kelvin = celsius + Arrhenius.ZERO_C;
    double saturated =
        SaturatedVapour.pascal(celsius) * MOLAR_MASS / Arrhenius.GAS_CONSTANT / kelvin;
    return new Sorption(limit, limit.isotherm(celsius), headspaceCm3 * 1e-6 * saturated);
  }

  /** 1 when the product spoils by taking up water, −1 when by drying. */
  double way() {
    return limit.spoiltBy() == MoistureLimit.Way.MOISTENING ? 1 : -1;
  }

  /** Whether the product is at its limit when filled, or beyond it. */
  boolean beyond() {
    return way() * (limit.initialActivity() - limit.criticalActivity()) >= 0;
  }

  /** Water that product and head-space may still take up, g; negative when they may lose some. */
  double allowed() {
    return beyond() ? 0 : water(limit.criticalActivity()) - water(limit.initialActivity());
  }

  /** Whether a relative humidity outside lies beyond the critical activity. */
  boolean drives(double outside) {
    return way() * (outside - limit.criticalActivity()) > 0;
  }

  /** Water in product and head-space at an activity, g. */
  double water(double activity) {
    return limit.dryMassG() * isotherm.moisture(activity) + vapourG * activity;
  }

  /** Its slope, g per unit of activity. */
  double capacity(double activity) {
    return limit.dryMassG() * isotherm.slope(activity) + vapourG;
  }

  /**
   * Exposure from one activity to another that lies before the outside humidity: ∫ c(a)/(RH − a)
   * da, g. Integrated over ln|RH − a|, along which the integrand is smooth however near the outside
   * humidity comes.
   */
  double exposure(double from, double to, double outside) {
    return exposure(from, to, outside, this::capacity);
  }

  /** The same over a pack whose conductance changes with the activity: ∫ c(a)/G(a)/(RH − a) da. */
  double exposure(double from, double to, double outside, SampledConductance conductance) {
    return exposure(from, to, outside, a -> capacity(a) / conductance.at(a));
  }

  private static double exposure(
      double from, double to, double outside, DoubleUnaryOperator capacity) {
    double sign = Math.signum(outside - from);
    return Quadrature.integral(
        u -> capacity.applyAsDouble(outside - sign * Math.exp(u)),
        Math.log(Math.abs(outside - to)),
        Math.log(Math.abs(outside - from)));
  }
}
