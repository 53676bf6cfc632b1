package plyworth.plugins.barrier.course;

import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketedUnivariateSolver;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.ode.ODEState;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.OrdinaryDifferentialEquation;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;
import org.hipparchus.ode.nonstiff.DormandPrince853Integrator;
import plyworth.plugins.barrier.permeation.Alcohol;
import plyworth.plugins.barrier.permeation.AlcoholWater;
import plyworth.plugins.barrier.permeation.SaturatedVapour;
import plyworth.shared.brief.Climate;

/**
 * An alcohol and its water leaving a pack together, per gram of alcohol filled.
 *
 * <p>With conductances G1 for alcohol per unit of activity and G2·p0 for water per unit of relative
 * humidity, dm1/dt = −G1·a1(x) into air without alcohol and dm2/dt = −G2·p0·(a2(x) − RH), which may
 * be inwards. Over the share ℓ of the alcohol that is lost, with exposure τ = G1·t per gram of
 * alcohol and ratio r = G2·p0/G1: dτ/dℓ = 1/a1 and dw/dℓ = −r·(a2 − RH)/a1. So one course serves
 * all packs of equal ratio (balance of both components; analytic).
 *
 * @param mixture the liquid
 * @param waterG water filled per gram of alcohol
 * @param outside relative humidity outside, 0 to 1
 */
public record VolatileCourse(AlcoholWater mixture, double waterG, double outside) {

  /** The course in one season. */
  static VolatileCourse of(Alcohol alcohol, double waterG, Climate.Season season) {
    return new VolatileCourse(
        AlcoholWater.at(alcohol, season.temperatureC()), waterG, season.humidityPercent() / 100);
  }

  /** Of the alcohol, what counts as all. */
  private static final double ALL = 1 - 1e-9;

  /**
   * Beyond this many turnovers by the end, water stands in balance with the outside all the while;
   * counting no more of them changes a loss by less than one part in a thousand.
   */
  private static final double MOST_TURNOVERS = 500;

  /** Water to be moved even where little is filled, g per gram of alcohol. */
  private static final double LEAST_WATER = 0.25;

  private static final int BISECTIONS = 60;

  /** What is left to lose below this is lost. */
  private static final double SMALLEST_SHARE = 1e-12;

  private static final Point UNKNOWN = new Point(Double.NaN, Double.NaN, Double.NaN);
  private static final double SMALLEST_STEP = 1e-15;
  private static final double ABSOLUTE = 1e-13;
  private static final double RELATIVE = 1e-10;

  /**
   * A moment.
   *
   * @param exposure conductance to alcohol times days, g of it per unit of activity and gram filled
   * @param loss share of the alcohol that has left, 0 to 1
   * @param waterG water left per gram of alcohol filled
   */
  public record Point(double exposure, double loss, double waterG) {

    /** Mass fraction of alcohol in what is left; NaN when nothing is. */
    public double strength() {
      return (1 - loss) / (1 - loss + waterG);
    }
  }

  /** As filled. */
  Point filled() {
    return new Point(0, 0, waterG);
  }

  /** Mole fraction of the alcohol as filled. */
  double filledFraction() {
    return mixture.moleFraction(1, waterG);
  }

  /** Activity of the alcohol as filled. */
  public double activity() {
    return mixture.alcoholActivity(filledFraction());
  }

  /** Saturated vapour pressure of water at the temperature, Pa. */
  double saturatedPa() {
    return SaturatedVapour.pascal(mixture.celsius());
  }

  /** Whether the liquid as filled gives off water, or keeps it, rather than take it up. */
  boolean dries() {
    return mixture.waterActivity(filledFraction()) >= outside;
  }

  /** Mole fraction of the alcohol at which no water passes. */
  double meetingFraction() {
    double low = 0;
    double high = 1;
    for (int i = 0; i < BISECTIONS; i++) {
      double middle = (low + high) / 2;
      boolean wetter = mixture.waterActivity(middle) > outside;
      low = wetter ? middle : low;
      high = wetter ? high : middle;
    }
    return outside == 1 ? 0 : high;
  }

  /** Water at which none passes while all alcohol is there, g per gram of it. */
  double meetingWater() {
    double x = meetingFraction();
    return (1 - x) / x * mixture.moleFraction(1, 1) / (1 - mixture.moleFraction(1, 1));
  }

  /** Water that makes one turnover, g per gram of alcohol. */
  double turnover() {
    return waterG + LEAST_WATER;
  }

  /** The largest ratio of the conductances that still makes a difference to a loss. */
  double largestRatio(double loss) {
    return MOST_TURNOVERS * turnover() / loss;
  }

  /**
   * When some of the alcohol has left.
   *
   * @param loss share lost, 0 to below 1
   * @param ratio of the conductances at unit activity, water over alcohol
   */
  Point until(double loss, double ratio) {
    return until(filled(), loss, ratio);
  }

  /** The same, from a later moment on. */
  Point until(Point from, double loss, double ratio) {
    return Double.isNaN(ratio) || Double.isNaN(from.loss())
        ? UNKNOWN
        : run(from, loss, Double.POSITIVE_INFINITY, Math.min(ratio, largestRatio(loss)));
  }

  /**
   * What is left after some time.
   *
   * @param exposure conductance to alcohol times days, per gram of alcohol
   * @param ratio of the conductances at unit activity, water over alcohol
   */
  Point after(double exposure, double ratio) {
    return onward(filled(), exposure, ratio);
  }

  /** The same, from a later moment on. */
  Point onward(Point from, double exposure, double ratio) {
    if (Double.isNaN(exposure) || Double.isNaN(ratio) || Double.isNaN(from.loss())) {
      return UNKNOWN;
    }
    double most = largestRatio(Math.min(1, exposure));
    return run(from, ALL, from.exposure() + exposure, Math.min(ratio, most));
  }

  private Point run(Point from, double loss, double exposure, double ratio) {
    if (exposure <= from.exposure() || loss - from.loss() < SMALLEST_SHARE) {
      return from;
    }
    var integrator = new DormandPrince853Integrator(SMALLEST_STEP, 1, ABSOLUTE, RELATIVE);
    if (exposure < Double.POSITIVE_INFINITY) {
      integrator.addEventDetector(new Exposed(exposure));
    }
    ODEState start = new ODEState(from.loss(), new double[] {from.exposure(), from.waterG()});
    ODEStateAndDerivative end = integrator.integrate(new Departure(ratio), start, loss);
    double[] state = end.getPrimaryState();
    double lost = end.getTime() < ALL ? end.getTime() : 1;
    return new Point(Math.min(state[0], exposure), lost, Math.max(0, state[1]));
  }

  /** State: exposure and water; running variable: the share lost. */
  private final class Departure implements OrdinaryDifferentialEquation {

    private final double ratio;

    Departure(double ratio) {
      this.ratio = ratio;
    }

    @Override
    public int getDimension() {
      return 2;
    }

    @Override
    public double[] computeDerivatives(double loss, double[] state) {
      double x = mixture.moleFraction(1 - loss, Math.max(0, state[1]));
      double activity = mixture.alcoholActivity(x);
      return new double[] {1 / activity, -ratio * (mixture.waterActivity(x) - outside) / activity};
    }
  }

  /** Stops when the exposure is reached. */
  private record Exposed(double exposure) implements ODEEventDetector {

    private static final int ITERATIONS = 100;
    private static final int ORDER = 5;

    @Override
    public AdaptableInterval getMaxCheckInterval() {
      return (state, forward) -> Double.POSITIVE_INFINITY;
    }

    @Override
    public int getMaxIterationCount() {
      return ITERATIONS;
    }

    @Override
    public BracketedUnivariateSolver<UnivariateFunction> getSolver() {
      return new BracketingNthOrderBrentSolver(0, SMALLEST_STEP, 0, ORDER);
    }

    @Override
    public ODEEventHandler getHandler() {
      return (state, detector, increasing) -> Action.STOP;
    }

    @Override
    public double g(ODEStateAndDerivative state) {
      return state.getPrimaryState()[0] - exposure;
    }
  }
}
