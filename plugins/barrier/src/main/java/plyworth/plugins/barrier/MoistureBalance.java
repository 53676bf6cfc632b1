package plyworth.plugins.barrier;

import plyworth.shared.brief.Isotherm;
import plyworth.shared.brief.MoistureLimit;

/**
 * Water that a product takes up or gives off through its pack.
 *
 * <p>The product stays in equilibrium with the gas around it, so its water activity follows W·m'(a)
 * da/dt = G·p0·(RH − a), with the pack's conductance G in g/(day·Pa). The time between two
 * activities is an integral over the isotherm divided by G: time times conductance is a constant of
 * the brief (sorption balance of moisture-sensitive packs, from memory; any isotherm).
 *
 * @param limit the product's limit
 * @param outside relative humidity outside, 0 to 1
 * @param saturatedPa saturated vapour pressure p0 at the storage temperature, Pa
 */
record MoistureBalance(MoistureLimit limit, double outside, double saturatedPa) {

  private static final int BISECTIONS = 60;

  /**
   * Checks that the isotherm holds as far as it is used.
   *
   * @throws IllegalArgumentException when it does not
   */
  MoistureBalance {
    boolean stepwise = limit.isotherm() instanceof Isotherm.Deliquescent;
    if (!stepwise && Double.isNaN(wettest(limit))) {
      throw new IllegalArgumentException(
          ("the isotherm of the brief does not hold up to the water activities ")
              + limit.initialActivity()
              + " and "
              + limit.criticalActivity()
              + "; lower them, or the GAB constant k");
    }
  }

  private static double wettest(MoistureLimit limit) {
    return limit.isotherm().moisture(Math.max(limit.initialActivity(), limit.criticalActivity()));
  }

  /**
   * Days until the limit times conductance, in g/Pa; infinite when the climate never drives the
   * product to its limit.
   */
  double allowance() {
    if (limit.isotherm() instanceof Isotherm.Deliquescent crystals) {
      double drive = outside - crystals.deliquescence();
      return drive > 0
          ? limit.dryMassG() * crystals.allowedUptake() / (saturatedPa * drive)
          : Double.POSITIVE_INFINITY;
    }
    return reachesLimit() ? until(limit.criticalActivity()) : Double.POSITIVE_INFINITY;
  }

  /** Whether the climate lies beyond the critical activity, on the way the product moves. */
  private boolean reachesLimit() {
    double start = limit.initialActivity();
    double critical = limit.criticalActivity();
    return start <= critical ? outside > critical : outside < critical;
  }

  /**
   * Days times conductance from the initial activity to another that lies before the outside
   * humidity: W/p0 · ∫ m'(a)/(RH − a) da, in g/Pa. Integrated over ln|RH − a|, along which the
   * integrand is smooth however near the outside humidity comes.
   */
  double until(double activity) {
    double sign = Math.signum(outside - limit.initialActivity());
    double from = Math.log(Math.abs(outside - activity));
    double to = Math.log(Math.abs(outside - limit.initialActivity()));
    double integral =
        Quadrature.integral(u -> limit.isotherm().slope(outside - sign * Math.exp(u)), from, to);
    return limit.dryMassG() / saturatedPa * integral;
  }

  /**
   * Water taken up after some days, g per pack, negative when given off; past the limit it stays at
   * the limit.
   *
   * @param conductance of the pack, g/(day·Pa)
   */
  double uptakeG(double days, double conductance) {
    if (limit.isotherm() instanceof Isotherm.Deliquescent crystals) {
      double drive = Math.max(0, outside - crystals.deliquescence());
      return Math.min(
          limit.dryMassG() * crystals.allowedUptake(), days * conductance * saturatedPa * drive);
    }
    double moisture = limit.isotherm().moisture(activityAfter(days * conductance));
    return limit.dryMassG() * (moisture - limit.isotherm().moisture(limit.initialActivity()));
  }

  /** Water that crosses the pack when it is filled, g/day; negative when the product dries. */
  double initialRate(double conductance) {
    double within =
        limit.isotherm() instanceof Isotherm.Deliquescent crystals
            ? Math.min(outside, crystals.deliquescence())
            : limit.initialActivity();
    return conductance * saturatedPa * (outside - within);
  }

  /** Water taken up at the limit, g per pack. */
  double allowedG() {
    if (limit.isotherm() instanceof Isotherm.Deliquescent crystals) {
      return limit.dryMassG() * crystals.allowedUptake();
    }
    double change =
        limit.isotherm().moisture(limit.criticalActivity())
            - limit.isotherm().moisture(limit.initialActivity());
    return limit.dryMassG() * change;
  }

  /** The activity reached after a time times conductance, by bisection. */
  private double activityAfter(double exposure) {
    double near = limit.initialActivity();
    double far = reachesLimit() ? limit.criticalActivity() : outside;
    if (near == far) {
      return near;
    }
    for (int i = 0; i < BISECTIONS; i++) {
      double middle = (near + far) / 2;
      if (until(middle) < exposure) {
        near = middle;
      } else {
        far = middle;
      }
    }
    return near;
  }
}
