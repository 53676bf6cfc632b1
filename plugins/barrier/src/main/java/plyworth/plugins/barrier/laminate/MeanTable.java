package plyworth.plugins.barrier.laminate;

/**
 * Means of a curve between two humidities, looked up: the curve is taken as straight between steps
 * of 0.2 % RH. For millions of laminates, with a stated error.
 */
public final class MeanTable {

  private static final int STEPS = 500;
  private static final double NARROW = 1e-6;
  private static final double ROUNDING = 1e-9;

  private final double[] figures = new double[STEPS + 2];
  private final double[] integrals = new double[STEPS + 2];
  private final double error;

  /** Tabulates a curve. */
  public MeanTable(HumidityCurve curve) {
    for (int i = 0; i < figures.length; i++) {
      figures[i] = curve.value((double) i / STEPS);
    }
    for (int i = 1; i < integrals.length; i++) {
      integrals[i] = integrals[i - 1] + (figures[i - 1] + figures[i]) / (2 * STEPS);
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
      double rise = Math.log(figures[i + 1] / figures[i]);
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
    return figures[step] + (place - step) * (figures[step + 1] - figures[step]);
  }

  private double integral(double humidity) {
    double place = humidity * STEPS;
    int step = (int) place;
    double share = place - step;
    double rise = figures[step + 1] - figures[step];
    return integrals[step] + share * (figures[step] + share * rise / 2) / STEPS;
  }

  /** The mean between two humidities of 0 to 1, in either order. */
  public double mean(double one, double other) {
    double wide = one - other;
    return Math.abs(wide) < NARROW
        ? value((one + other) / 2)
        : (integral(one) - integral(other)) / wide;
  }
}
