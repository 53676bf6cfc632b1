package plyworth.plugins.barrier.calibration;

import java.util.function.DoubleUnaryOperator;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/** The terms that all packs share, as a factor on their standard: solved for a measured figure. */
final class SharedTerms {

  /** The factor lies between 1 over this and this (judgement). */
  static final double WIDEST = 100;

  private static final double PRECISION = 1e-12;

  private static final int EVALUATIONS = 200;

  private SharedTerms() {}

  /** The factor at which a figure is predicted as measured; NaN when there is none. */
  static double predicting(DoubleUnaryOperator predicted, double measured) {
    DoubleUnaryOperator miss = log -> miss(predicted.applyAsDouble(Math.exp(log)), measured);
    double end = Math.log(WIDEST);
    double least = miss.applyAsDouble(-end);
    double most = miss.applyAsDouble(end);
    if (!(Math.min(least, most) <= 0 && Math.max(least, most) >= 0) || least == most) {
      return Double.NaN;
    }
    var solver = new BracketingNthOrderBrentSolver(0, PRECISION, 5);
    return Math.exp(solver.solve(EVALUATIONS, miss::applyAsDouble, -end, end));
  }

  /** Of the logarithms, in −1 to 1, so that a figure may be infinite or nothing. */
  private static double miss(double figure, double measured) {
    return Math.tanh(Math.log(figure / measured) / 4);
  }
}
