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
  private static final double LAST = Double.longBitsToDouble((FIRST + STEPS) << SHIFT);

  /** Share of the loss by which the figures are set apart at least. */
  private static final double SLACK = 1e-3;

  /** Fractions of a step, in the bits below its exponent. */
  private static final long FRACTION = (1L << SHIFT) - 1;

  private static final double PER_STEP = 1.0 / (1L << SHIFT);

  /** Corners of a cell that lie together: two along z, the same one step on. */
  private static final int CORNERS = 4;

  /** By cell, the corners of the least figures and behind them those of the largest. */
  private final double[] corners;

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
    double[][] low = new double[STEPS + 1][CELLS + 1];
    double[][] high = new double[STEPS + 1][CELLS + 1];
    setApart(losses, low, high);
    if (course.dries()) {
      straightenAcross(low, high);
    }
    straightenAlong(low, high);
    corners = new double[2 * CORNERS * STEPS * CELLS];
    put(low, 0);
    put(high, CORNERS);
  }

  private void put(double[][] nodes, int first) {
    for (int i = 0; i < STEPS; i++) {
      for (int j = 0; j < CELLS; j++) {
        int at = 2 * CORNERS * (i * CELLS + j) + first;
        System.arraycopy(nodes[i], j, corners, at, 2);
        System.arraycopy(nodes[i + 1], j, corners, at + 2, 2);
      }
    }
  }

  private double node(int j) {
    return turnover * j / (CELLS - j);
  }

  private static double step(int i) {
    return Double.longBitsToDouble((FIRST + i) << SHIFT);
  }

  private static void setApart(double[][] losses, double[][] low, double[][] high) {
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
  private static void straightenAlong(double[][] low, double[][] high) {
    for (int i = 1; i <= STEPS; i++) {
      for (int j = 0; j <= CELLS; j++) {
        high[i][j] = Math.max(high[i][j], high[i - 1][j]);
        low[STEPS - i][j] = Math.min(low[STEPS - i][j], low[STEPS - i + 1][j]);
      }
    }
  }

  /** Nor does more conductance to water, where the liquid dries. */
  private static void straightenAcross(double[][] low, double[][] high) {
    for (int i = 0; i <= STEPS; i++) {
      for (int j = 1; j <= CELLS; j++) {
        high[i][j] = Math.max(high[i][j], high[i][j - 1]);
        low[i][CELLS - j] = Math.min(low[i][CELLS - j], low[i][CELLS - j + 1]);
      }
    }
  }

  /**
   * Writes between which shares, 0 to 1, times a factor, a pack can lose at y and z; NaN when one
   * is unknown.
   *
   * @param zLow least mass of water per gram of alcohol
   * @param zHigh largest
   */
  void enclose(
      double y, double zLow, double zHigh, double factor, double[] low, double[] high, int at) {
    double scale = y >= LOWEST ? factor : factor * y * (1 / LOWEST);
    double within = y > LOWEST ? y : LOWEST;
    boolean last = y >= LAST;
    long bits = Double.doubleToRawLongBits(within);
    int step = last ? STEPS - 1 : (int) ((bits >>> SHIFT) - FIRST);
    double u = last ? 1 : (bits & FRACTION) * PER_STEP;
    int row = CELLS * step;
    double most = at(row, CORNERS, u, place(zHigh));
    low[at] = scale * at(row, 0, u, place(zLow));
    high[at] = scale * (most > 1 || last && most == most ? 1 : most);
  }

  private double place(double z) {
    return z == Double.POSITIVE_INFINITY ? CELLS : CELLS * (z / (z + turnover));
  }

  private double at(int row, int first, double u, double place) {
    int cell = Math.min(CELLS - 1, (int) place);
    double t = place - cell;
    int at = 2 * CORNERS * (row + cell) + first;
    double lower = corners[at] + t * (corners[at + 1] - corners[at]);
    double upper = corners[at + 2] + t * (corners[at + 3] - corners[at + 2]);
    return lower + u * (upper - lower);
  }
}
