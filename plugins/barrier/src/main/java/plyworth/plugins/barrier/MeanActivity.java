package plyworth.plugins.barrier;

/**
 * The activity of the alcohol averaged over the time until the allowed loss: allowed loss over
 * exposure. It depends on the ratio r of the two conductances alone and is tabulated over r/(r +
 * k), which runs from no water leaving to water in balance with the outside.
 *
 * <p>Cubic through four points; within 1e-5 of the differential equation.
 */
final class MeanActivity {

  private static final int CELLS = 64;

  /** Turnovers of water at the middle of the table. */
  private static final double MIDDLE = 2;

  private final double middle;
  private final double largestRatio;
  private final double perShare;
  private final double[] nodes = new double[CELLS + 1];

  /**
   * The table of a course.
   *
   * @param loss allowed share, above 0 and below 1
   */
  MeanActivity(VolatileCourse course, double loss) {
    middle = MIDDLE * course.turnover() / loss;
    largestRatio = course.largestRatio(loss);
    double end = largestRatio / (largestRatio + middle);
    perShare = CELLS / end;
    for (int i = 0; i <= CELLS; i++) {
      double share = end * i / CELLS;
      nodes[i] = loss / course.until(loss, middle * share / (1 - share)).exposure();
    }
  }

  /** Mean activity at a ratio of the conductances, 0 to infinite; NaN when that is unknown. */
  double at(double ratio) {
    if (Double.isNaN(ratio)) {
      return Double.NaN;
    }
    double within = Math.min(ratio, largestRatio);
    double place = perShare * (within / (within + middle));
    int cell = Math.min(CELLS - 2, Math.max(1, (int) place));
    double t = place - cell;
    return -t * (t - 1) * (t - 2) / 6 * nodes[cell - 1]
        + (t + 1) * (t - 1) * (t - 2) / 2 * nodes[cell]
        - (t + 1) * t * (t - 2) / 2 * nodes[cell + 1]
        + (t + 1) * t * (t - 1) / 6 * nodes[cell + 2];
  }
}
