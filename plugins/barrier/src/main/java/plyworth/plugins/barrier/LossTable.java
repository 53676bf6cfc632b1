package plyworth.plugins.barrier;

/**
 * Enclosing figures of the loss over a fixed time, for many packs.
 *
 * <p>Axes: y, the share that would be lost at the rate as filled, two steps to the octave; and z/(z
 * + w), where z is the mass of water per gram of alcohol that would pass in that time from
 * saturation into dryness, and w the mass of one turnover. Straight between the nodes. Twice the
 * step makes four times the error, so the distance of a node from the straight line between its
 * neighbours is taken as the error of the cells around it: about 1 % of the loss while less than a
 * tenth is lost.
 */
final class LossTable {

  private static final int CELLS = 20;

  /** Bits of a double below its exponent and one more: two steps to the octave. */
  private static final int SHIFT = 51;

  private static final long FIRST = Double.doubleToRawLongBits(0x1p-10) >>> SHIFT;
  private static final double LOWEST = Double.longBitsToDouble(FIRST << SHIFT);
  private static final int STEPS = 13 * 2;

  /** Share of the loss by which the figures are set apart at least. */
  private static final double SLACK = 1e-3;

  private final double[][] low = new double[STEPS + 1][CELLS + 1];
  private final double[][] high = new double[STEPS + 1][CELLS + 1];

  private final double turnover;

  /** The table of a course, whatever the time. */
  LossTable(VolatileCourse course) {
    turnover = course.turnover();
    double[][] losses = new double[STEPS + 1][CELLS + 1];
    for (int i = 0; i <= STEPS; i++) {
      double exposure = step(i) / course.activity();
      for (int j = 0; j <= CELLS; j++) {
        losses[i][j] = course.after(exposure, node(j) / exposure).loss();
      }
    }
    setApart(losses);
    if (course.dries()) {
      straightenAcross();
    }
    straightenAlong();
  }

  private double node(int j) {
    return turnover * j / (CELLS - j);
  }

  private static double step(int i) {
    return Double.longBitsToDouble((FIRST + i) << SHIFT);
  }

  private void setApart(double[][] losses) {
    for (int i = 0; i <= STEPS; i++) {
      for (int j = 0; j <= CELLS; j++) {
        double error = SLACK * losses[i][j];
        for (int a = Math.max(0, i - 1); a <= Math.min(STEPS, i + 1); a++) {
          for (int b = Math.max(0, j - 1); b <= Math.min(CELLS, j + 1); b++) {
            error = Math.max(error, bend(losses, a, b));
          }
        }
        low[i][j] = Math.max(0, losses[i][j] - error);
        high[i][j] = losses[i][j] + error;
      }
    }
  }

  /** How far a node lies off the straight lines between its neighbours. */
  private static double bend(double[][] losses, int i, int j) {
    double bend = 0;
    if (i > 0 && i < STEPS) {
      double before = step(i) - step(i - 1);
      double behind = step(i + 1) - step(i);
      double straight = (behind * losses[i - 1][j] + before * losses[i + 1][j]) / (before + behind);
      bend += Math.abs(losses[i][j] - straight);
    }
    if (j > 0 && j < CELLS) {
      bend += Math.abs(losses[i][j] - (losses[i][j - 1] + losses[i][j + 1]) / 2);
    }
    return bend;
  }

  /** More conductance to alcohol never loses less: no error may turn that round. */
  private void straightenAlong() {
    for (int i = 1; i <= STEPS; i++) {
      for (int j = 0; j <= CELLS; j++) {
        high[i][j] = Math.max(high[i][j], high[i - 1][j]);
        low[STEPS - i][j] = Math.min(low[STEPS - i][j], low[STEPS - i + 1][j]);
      }
    }
  }

  /** Nor does more conductance to water, where the liquid dries. */
  private void straightenAcross() {
    for (int i = 0; i <= STEPS; i++) {
      for (int j = 1; j <= CELLS; j++) {
        high[i][j] = Math.max(high[i][j], high[i][j - 1]);
        low[i][CELLS - j] = Math.min(low[i][CELLS - j], low[i][CELLS - j + 1]);
      }
    }
  }

  /**
   * Writes the least and the largest share, 0 to 1, that a pack can lose at y and z.
   *
   * @param at where in the columns
   */
  void enclose(double y, double z, double[] least, double[] largest, int at) {
    if (Double.isNaN(y) || Double.isNaN(z)) {
      least[at] = Double.NaN;
      largest[at] = Double.NaN;
      return;
    }
    double place = CELLS * (z < Double.POSITIVE_INFINITY ? z / (z + turnover) : 1);
    int cell = Math.min(CELLS - 1, (int) place);
    double t = place - cell;
    long step = y < LOWEST ? -1 : (Double.doubleToRawLongBits(y) >>> SHIFT) - FIRST;
    if (step < 0) {
      least[at] = y / LOWEST * across(low[0], cell, t);
      largest[at] = y / LOWEST * across(high[0], cell, t);
    } else if (step >= STEPS) {
      least[at] = across(low[STEPS], cell, t);
      largest[at] = 1;
    } else {
      int i = (int) step;
      double u = (y - step(i)) / (step(i + 1) - step(i));
      least[at] = (1 - u) * across(low[i], cell, t) + u * across(low[i + 1], cell, t);
      largest[at] =
          Math.min(1, (1 - u) * across(high[i], cell, t) + u * across(high[i + 1], cell, t));
    }
  }

  private static double across(double[] row, int cell, double t) {
    return row[cell] + t * (row[cell + 1] - row[cell]);
  }
}
