package plyworth.plugins.barrier.course;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.UnivariateFunction;
import org.hipparchus.analysis.solvers.BracketedUnivariateSolver;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;
import org.hipparchus.ode.ODEStateAndDerivative;
import org.hipparchus.ode.events.Action;
import org.hipparchus.ode.events.AdaptableInterval;
import org.hipparchus.ode.events.ODEEventDetector;
import org.hipparchus.ode.events.ODEEventHandler;

/** Stops a solution when a function of its first component changes sign. */
final class Crossing implements ODEEventDetector {

  /** To what a crossing is found, days. */
  private static final double PRECISION = 1e-11;

  private static final int ITERATIONS = 200;

  private final DoubleUnaryOperator distance;
  private boolean crossed;

  Crossing(DoubleUnaryOperator distance) {
    this.distance = distance;
  }

  /** Whether it was this one that stopped the solution. */
  boolean crossed() {
    return crossed;
  }

  @Override
  public double g(ODEStateAndDerivative state) {
    return distance.applyAsDouble(state.getPrimaryState()[0]);
  }

  @Override
  public ODEEventHandler getHandler() {
    return (state, detector, increasing) -> {
      crossed = true;
      return Action.STOP;
    };
  }

  /** Within one climate the activity moves one way, so the ends of a step show every crossing. */
  @Override
  public AdaptableInterval getMaxCheckInterval() {
    return AdaptableInterval.of(Double.POSITIVE_INFINITY);
  }

  @Override
  public int getMaxIterationCount() {
    return ITERATIONS;
  }

  @Override
  public BracketedUnivariateSolver<UnivariateFunction> getSolver() {
    return new BracketingNthOrderBrentSolver(0, PRECISION, 5);
  }
}
