package plyworth.plugins.barrier.course;

import org.hipparchus.ode.OrdinaryDifferentialEquation;
import plyworth.plugins.barrier.permeation.SaturatedVapour;
import plyworth.shared.brief.Climate.Season;

/**
 * Rates per day of the water activity in a pack, G·p0·(RH − a)/c(a), and of the water that crosses
 * it, G·p0·(RH − a).
 *
 * @param sorption what product and head-space hold
 * @param season the climate outside
 * @param conductance of the pack, g/(day·Pa)
 */
record SorptionEquation(Sorption sorption, Season season, SampledConductance conductance)
    implements OrdinaryDifferentialEquation {

  /** No pack levels faster than this, 1/day; a wide-open one would not let the solver step. */
  private static final double FASTEST = 1e4;

  @Override
  public int getDimension() {
    return 2;
  }

  @Override
  public double[] computeDerivatives(double day, double[] state) {
    double activity = state[0];
    double capacity = sorption.capacity(activity);
    if (Double.isNaN(capacity)) {
      capacity = sorption.capacity(sorption.limit().criticalActivity());
    }
    double saturated = SaturatedVapour.pascal(season.temperatureC());
    double rate = Math.min(conductance.at(activity) * saturated, FASTEST * capacity);
    double entering = rate * (season.humidityPercent() / 100 - activity);
    return new double[] {entering / capacity, entering};
  }
}
