package plyworth.plugins.barrier.laminate;

/**
 * Means of a curve between two humidities, looked up: the curve is taken as straight between steps
 * of 0.2 % RH. For millions of laminates, with a stated error.
 */
public final class MeanTable {

  private static final int STEPS = 500;
  private static final double NARROW = 1e-6;
  private static final double ROUNDING = 1e-9;

  /** A cell for every step: the integral up to it, over the step, the figure and its rise. */
  private final double[] cells = new double[3 * (STEPS + 1)];

  private final double error;

  /** Tabulates a curve. */
  public MeanTable(HumidityCurve curve) {
    double figure = curve.value(0);
    double integral = 0;
    for (int i = 0; i <= STEPS; i++) {
      double next = curve.value((i + 1.0) / STEPS);
      cells[3 * i] = integral;
      cells[3 * i + 1] = figure;
      cells[3 * i + 2] = next - figure;
      integral += (figure + next) / 2;
      figure = next;
    }
    error = worst(curve);
  }

  /**
   * A chord over a step of an exponential that rises by u in the logarithm is off by u²/8 at most;
   * where a node of the curve lies inside a step, by no more than the curve changes in it.
   */
  private double worst(HumidityCurve curve) {
    double worst = 0;
    for (int i = 0; i < STEPS; i++) {
      double rise = Math.log1p(cells[3 * i + 2] / cells[3 * i + 1]);
      worst = Math.max(worst, rise * rise / 7);
    }
    for (double node : curve.nodes()) {
      double place = Math.min(STEPS - 1, node * STEPS);
      double from = Math.floor(place) / STEPS;
      double to = from + 1.0 / STEPS;
      boolean kinked = Math.abs(place - Math.rint(place)) > ROUNDING;
      double change = curve.highest(from, to) / curve.lowest(from, to) - 1;
      worst = kinked ? Math.max(worst, change) : worst;
    }
    return worst;
  }

  /** The relative error that no mean exceeds. */
  public double error() {
    return error;
  }

  private double value(double humidity) {
    double place = humidity * STEPS;
    int step = (int) place;
    return cells[3 * step + 1] + (place - step) * cells[3 * step + 2];
  }

  /** The integral from dryness, over the step. */
  private double integral(double humidity) {
    double place = humidity * STEPS;
    int step = (int) place;
    double share = place - step;
    return cells[3 * step] + share * (cells[3 * step + 1] + share * cells[3 * step + 2] / 2);
  }

  /** The mean between two humidities of 0 to 1, in either order. */
  public double mean(double one, double other) {
    double wide = one - other;
    return Math.abs(wide) < NARROW
        ? value((one + other) / 2)
        : (integral(one) - integral(other)) / (STEPS * wide);
  }

  /** A figure over the {@link #mean}. */
  public double overMean(double figure, double one, double other) {
    double wide = one - other;
    return Math.abs(wide) < NARROW
        ? figure / value((one + other) / 2)
        : figure * (STEPS * wide) / (integral(one) - integral(other));
  }
}
