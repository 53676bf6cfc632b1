package plyworth.plugins.machinability;

import java.util.Arrays;

/**
 * How the seal interfaces of a tile warm up: the two slowest exponentials of the share θ of the
 * temperature step that is still missing, θ(t) = r₁·exp(−p₁·t) + r₂·exp(−p₂·t), with the rates of
 * {@link HeatingRates}. The shares r are the residues of the step response.
 *
 * <p>Before {@code from} the two exponentials do not describe the start, and θ is taken as a
 * straight line from 1; that concerns the first two percent of the warming. Where the series does
 * not hold a second rate, its share is 0. What that start takes is worked out when it is asked for:
 * at the dwell of a machine it is mostly over.
 */
final class HeatingCurves {

  private static final int ROWS = SeriesColumns.ROWS;

  /**
   * Halley's method triples the digits at each step. Five find any share within 10⁻⁹, also next to
   * the crest.
   */
  private static final int STEPS = 5;

  private final SeriesColumns denominator = new SeriesColumns();
  private final SeriesColumns numerator = new SeriesColumns();
  private final HeatingRates rates = new HeatingRates();
  private final double[] p1 = rates.p1;
  private final double[] p2 = rates.p2;
  private final double[] r1 = new double[ROWS];
  private final double[] r2 = new double[ROWS];
  private final double[] crest = new double[ROWS];
  private final double[] from = new double[ROWS];
  private final double[] atFrom = new double[ROWS];
  private final double[] slow = new double[ROWS];
  private final double[] fast = new double[ROWS];
  private final double[] value = new double[ROWS];
  private final double[] slope = new double[ROWS];
  private boolean started;

  /** Slowest rate of a row, 1/s; NaN when the stack is not known. */
  double slowest(int row) {
    return p1[row];
  }

  /** Takes the curves of stacks. */
  void fit(SealStack stack) {
    inverse(stack.denominator().power(0), value);
    denominator.reflect(stack.denominator(), value);
    numerator.reflect(stack.numerator(), value);
    rates.find(denominator);
    share(p1, r1);
    share(p2, r2);
    crest(p1, r1, p2, r2, crest);
    for (int i = 0; i < ROWS; i++) {
      settle(i);
    }
    started = false;
  }

  /** Keeps {@code count} curves, from a row of {@code kept} on. */
  void keep(KeptCurves kept, int at, int count) {
    System.arraycopy(p1, 0, kept.p1(), at, count);
    System.arraycopy(p2, 0, kept.p2(), at, count);
    System.arraycopy(r1, 0, kept.r1(), at, count);
    System.arraycopy(r2, 0, kept.r2(), at, count);
    System.arraycopy(crest, 0, kept.crest(), at, count);
  }

  /** Takes the curves of the first {@code count} of some rows that were kept. */
  void take(KeptCurves kept, int[] rows, int count) {
    for (int i = 0; i < count; i++) {
      p1[i] = kept.p1()[rows[i]];
      p2[i] = kept.p2()[rows[i]];
      r1[i] = kept.r1()[rows[i]];
      r2[i] = kept.r2()[rows[i]];
      crest[i] = kept.crest()[rows[i]];
    }
    started = false;
  }

  /** Share of the step still missing at a time, 0 to 1. */
  void remaining(double time, double[] share) {
    boolean over = started(time);
    if (!over) {
      start();
    }
    Arrays.fill(value, time);
    sum(value, share);
    for (int i = 0; i < ROWS; i++) {
      share[i] =
          !over && time < from[i] ? 1 - (1 - atFrom[i]) * time / from[i] : Math.min(1, share[i]);
    }
  }

  /**
   * Time until only a share of the step is missing, s; 0 when none is needed. Halley's method from
   * where the slower exponential alone would be.
   */
  void time(double[] share, double[] time) {
    start();
    divide(r1, share, value);
    Exponentials.log(value, slope);
    begin(slope, p1, from, time);
    for (int step = 0; step < STEPS; step++) {
      Exponentials.decay(p1, time, slow);
      Exponentials.decay(p2, time, fast);
      weigh(r1, slow, r2, fast, share, value);
      correct(p1, slow, p2, fast, value, from, time);
    }
    for (int i = 0; i < ROWS; i++) {
      if (share[i] >= 1) {
        time[i] = 0;
      } else if (share[i] >= atFrom[i]) {
        time[i] = from[i] * (1 - share[i]) / (1 - atFrom[i]);
      }
    }
  }

  /** θ of the two exponentials. */
  private void sum(double[] time, double[] sum) {
    Exponentials.decay(p1, time, slow);
    Exponentials.decay(p2, time, fast);
    for (int i = 0; i < ROWS; i++) {
      sum[i] = r1[i] * slow[i] + r2[i] * fast[i];
    }
  }

  /** Drops a second exponential that is none: from then on the crest is at −∞. */
  private void settle(int i) {
    if (!(p2[i] > p1[i]) || !(Math.abs(r2[i]) < 2)) {
      p2[i] = 2 * p1[i];
      r2[i] = 0 * p1[i];
      crest[i] = Double.NEGATIVE_INFINITY;
    }
  }

  /** Whether both exponentials hold at a time in every row, told by ln(x) ≤ x − 1 from above. */
  private boolean started(double time) {
    int early = 0;
    for (int i = 0; i < ROWS; i++) {
      boolean rises = crest[i] > 1 && 1.25 * (crest[i] - 1) > time * (p2[i] - p1[i]);
      early += rises || 0.1 > time * p2[i] ? 1 : 0;
    }
    return early == 0;
  }

  /**
   * Finds the time from which both exponentials hold: a little after the crest of the two, where
   * that is; a tenth of the faster time constant when they only fall, but from below 1; 0 when they
   * fall from 1 or more, and for a single one.
   */
  private void start() {
    if (started) {
      return;
    }
    Exponentials.log(crest, slope);
    for (int i = 0; i < ROWS; i++) {
      if (crest[i] > 1) {
        from[i] = 1.25 * slope[i] / (p2[i] - p1[i]);
      } else {
        boolean single = crest[i] == Double.NEGATIVE_INFINITY;
        from[i] = !single && r1[i] + r2[i] < 1 ? 0.1 / p2[i] : 0;
      }
    }
    sum(from, atFrom);
    started = true;
  }

  /** Residue of the step response, −numerator/(p·denominator′). */
  private void share(double[] p, double[] r) {
    denominator.at(p, value, slope);
    numerator.at(p, r);
    for (int i = 0; i < ROWS; i++) {
      r[i] = -r[i] / (p[i] * slope[i]);
    }
  }

  /** Turns both exponentials into their parts of θ, and takes what θ has too much. */
  private static void weigh(
      double[] r1, double[] slow, double[] r2, double[] fast, double[] share, double[] excess) {
    for (int i = 0; i < ROWS; i++) {
      slow[i] *= r1[i];
      fast[i] *= r2[i];
      excess[i] = slow[i] + fast[i] - share[i];
    }
  }

  /** Halley's step 2·u·D/(2·D² − u·E) for the excess u, with D = −θ′ and E = θ″. */
  private static void correct(
      double[] p1,
      double[] slow,
      double[] p2,
      double[] fast,
      double[] excess,
      double[] from,
      double[] time) {
    for (int i = 0; i < ROWS; i++) {
      double fallSlow = p1[i] * slow[i];
      double fallFast = p2[i] * fast[i];
      double fall = fallSlow + fallFast;
      double bend = p1[i] * fallSlow + p2[i] * fallFast;
      double step = 2 * excess[i] * fall / (2 * fall * fall - excess[i] * bend);
      time[i] = Math.max(from[i], time[i] + step);
    }
  }

  private static void begin(double[] log, double[] p, double[] from, double[] time) {
    for (int i = 0; i < ROWS; i++) {
      time[i] = Math.max(from[i], log[i] / p[i]);
    }
  }

  /** How fast the second exponential rises at first beside the fall of the first. */
  private static void crest(double[] p1, double[] r1, double[] p2, double[] r2, double[] crest) {
    for (int i = 0; i < ROWS; i++) {
      crest[i] = -r2[i] * p2[i] / (r1[i] * p1[i]);
    }
  }

  private static void inverse(double[] a, double[] r) {
    for (int i = 0; i < ROWS; i++) {
      r[i] = 1 / a[i];
    }
  }

  private static void divide(double[] a, double[] b, double[] r) {
    for (int i = 0; i < ROWS; i++) {
      r[i] = a[i] / b[i];
    }
  }
}
