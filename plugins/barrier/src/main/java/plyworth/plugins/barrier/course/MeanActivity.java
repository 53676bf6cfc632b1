package plyworth.plugins.barrier.course;

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

  private final boolean dries;
  private final double saturatedPa;
  private final double middle;
  private final double largestRatio;
  private final double perShare;

  /** Coefficients of the cubic in each cell, from its lower node on, the constant first. */
  private final double[] cubics = new double[4 * CELLS];

  /**
   * The table of a course.
   *
   * @param loss allowed share, above 0 and below 1
   */
  MeanActivity(VolatileCourse course, double loss) {
    dries = course.dries();
    saturatedPa = course.saturatedPa();
    middle = MIDDLE * course.turnover() / loss;
    largestRatio = course.largestRatio(loss);
    double end = largestRatio / (largestRatio + middle);
    perShare = CELLS / end;
    double[] nodes = new double[CELLS + 1];
    for (int i = 0; i <= CELLS; i++) {
      double share = end * i / CELLS;
      nodes[i] = loss / course.until(loss, middle * share / (1 - share)).exposure();
    }
    for (int i = 1; i < CELLS - 1; i++) {
      cubic(i, nodes[i - 1], nodes[i], nodes[i + 1], nodes[i + 2]);
    }
  }

  /** The cubic through the figures one node before a cell, at its ends, and one behind. */
  private void cubic(int cell, double before, double lower, double upper, double behind) {
    cubics[4 * cell] = lower;
    cubics[4 * cell + 1] = upper - lower / 2 - before / 3 - behind / 6;
    cubics[4 * cell + 2] = (before + upper) / 2 - lower;
    cubics[4 * cell + 3] = (behind - before) / 6 + (lower - upper) / 2;
  }

  /** Whether the liquid gives off water, or keeps it. */
  boolean dries() {
    return dries;
  }

  /**
   * Days until the allowed loss.
   *
   * @param amount the loss, g
   * @param alcohol conductance of the pack to alcohol, g/day per unit of activity
   * @param water to water, g/(day·Pa)
   */
  double days(double amount, double alcohol, double water) {
    return alcohol == 0
        ? amount / alcohol + 0 * water
        : amount / (alcohol * at(alcohol, water * saturatedPa));
  }

  /** Mean activity at two conductances per unit of activity; NaN when one is unknown. */
  private double at(double alcohol, double water) {
    double place =
        water > largestRatio * alcohol ? CELLS : perShare * (water / (water + middle * alcohol));
    int cell = Math.min(CELLS - 2, Math.max(1, (int) place));
    double t = place - cell;
    int at = 4 * cell;
    return cubics[at] + t * (cubics[at + 1] + t * (cubics[at + 2] + t * cubics[at + 3]));
  }
}
