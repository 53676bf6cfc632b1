package plyworth.plugins.barrier.course;

import java.util.Arrays;

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

  /** The whole charge, %. */
  private static final double ALL = 100;

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

  /** Cells of a step; that behind the last stands for packs that conduct water without end. */
  private static final int ACROSS = CELLS + 1;

  /** Figures of a plane: at the lower corner, its rise along z, along y, and along both. */
  private static final int PLANE = 4;

  /**
   * By cell, the plane of the least figures and behind it that of the largest; a step behind the
   * last stands for all that lies beyond.
   */
  private final double[] planes = new double[2 * PLANE * (STEPS + 1) * ACROSS];

  private final double turnover;

  /** The table of a course, whatever the time. */
  LossTable(VolatileCourse course) {
    turnover = course.turnover();
    double[][] losses = new double[STEPS + 1][CELLS + 1];
    for (int i = 0; i <= STEPS; i++) {
      double exposure = step(i) / course.activity();
      for (int j = 0; j <= CELLS; j++) {
        losses[i][j] = ALL * course.after(exposure, node(j) / exposure).loss();
      }
    }
    double[][] low = new double[STEPS + 1][CELLS + 1];
    double[][] high = new double[STEPS + 1][CELLS + 1];
    setApart(losses, low, high);
    if (course.dries()) {
      straightenAcross(low, high);
    }
    straightenAlong(low, high);
    put(low, 0);
    put(high, PLANE);
    for (int j = 0; j <= CELLS; j++) {
      Arrays.fill(planes, at(STEPS, j) + PLANE, at(STEPS, j) + 2 * PLANE, 0);
      planes[at(STEPS, j) + PLANE] = ALL;
    }
  }

  private void put(double[][] nodes, int first) {
    for (int i = 0; i <= STEPS; i++) {
      for (int j = 0; j <= CELLS; j++) {
        double[] upper = nodes[Math.min(STEPS, i + 1)];
        int next = Math.min(CELLS, j + 1);
        double along = nodes[i][next] - nodes[i][j];
        int at = at(i, j) + first;
        planes[at] = nodes[i][j];
        planes[at + 1] = along;
        planes[at + 2] = upper[j] - nodes[i][j];
        planes[at + 3] = upper[next] - upper[j] - along;
      }
    }
  }

  private static int at(int step, int cell) {
    return 2 * PLANE * (ACROSS * step + cell);
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
   * Where packs stand along z, in cells.
   *
   * @param water conductances to water, which may be infinite
   * @param perWater z per unit of them
   */
  void place(double[] water, double perWater, int many, double[] places) {
    for (int i = 0; i < many; i++) {
      places[i] = CELLS - CELLS * turnover / (water[i] * perWater + turnover);
    }
  }

  /**
   * Writes between which losses, %, a pack can lie; NaN when y or its place is unknown.
   *
   * @param low holds the least place along z, then the least loss
   * @param high holds the largest place, then the largest loss
   */
  void enclose(double y, double[] low, double[] high, int at) {
    double scale = y >= LOWEST ? 1 : y / LOWEST;
    double within = y > LOWEST ? Math.min(y, LAST) : LOWEST;
    long bits = Double.doubleToRawLongBits(within);
    int step = (int) ((bits >>> SHIFT) - FIRST);
    double u = (bits & FRACTION) * PER_STEP;
    low[at] = scale * loss(step, u, low[at], 0);
    high[at] = scale * Math.min(ALL, loss(step, u, high[at], PLANE));
  }

  private double loss(int step, double u, double place, int first) {
    int cell = (int) place;
    double t = place - cell;
    int at = at(step, cell) + first;
    return planes[at] + t * planes[at + 1] + u * (planes[at + 2] + t * planes[at + 3]);
  }
}
