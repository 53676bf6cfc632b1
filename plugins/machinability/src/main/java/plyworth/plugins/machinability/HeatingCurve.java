package plyworth.plugins.machinability;

/**
 * How the seal interface warms up: the two slowest exponentials of the share θ of the temperature
 * step that is still missing, θ(t) = r₁·exp(−p₁·t) + r₂·exp(−p₂·t).
 *
 * <p>The rates p are the roots of the denominator of a {@link SealStack} at −p. The sum of 1/p⁸
 * over all roots, from the coefficients by Newton's identities, puts the first within some 10⁻⁶;
 * what it leaves of the sum of 1/p⁴ puts the second within a few percent. Newton's method, for the
 * second with the first factor divided out, does the rest. The shares r are the residues of the
 * step response. Before {@code from} the two exponentials do not describe the start, and θ is taken
 * as a straight line from 1; that concerns the first two percent of the warming.
 *
 * @param p1 slowest rate, 1/s
 * @param r1 its share
 * @param p2 next rate, 1/s
 * @param r2 its share; 0 when the series does not hold a second rate
 * @param from time from which the exponentials hold, s
 */
record HeatingCurve(double p1, double r1, double p2, double r2, double from) {

  private static final int STEPS = 60;
  private static final double NEAR = 1e-8;

  /** The curve of a stack; its figures are NaN when the stack is not known. */
  static HeatingCurve of(SealStack stack) {
    double[] w = scaled(stack.denominator());
    double[] n = scaled(stack.numerator());
    double[] sums = powerSums(w);
    double p1 = root(w, eighthRoot(sums[8]), Double.POSITIVE_INFINITY, 2);
    double r1 = share(n, w, p1);
    double left = sums[4] - 1 / (p1 * p1 * p1 * p1);
    double p2 = root(w, 1 / Math.sqrt(Math.sqrt(left)), p1, 3);
    double r2 = share(n, w, p2);
    if (!(p2 > p1) || !(Math.abs(r2) < 2)) {
      return new HeatingCurve(p1, r1, 2 * p1, 0 * p1, 0);
    }
    return new HeatingCurve(p1, r1, p2, r2, start(p1, r1, p2, r2));
  }

  /** Share of the step still missing at a time, 0 to 1. */
  double remaining(double time) {
    if (time < from) {
      return 1 - (1 - sum(from)) * time / from;
    }
    return Math.min(1, sum(time));
  }

  /** Time until only {@code share} of the step is missing, s; 0 when none is needed. */
  double time(double share) {
    if (share >= 1) {
      return 0;
    }
    double atStart = sum(from);
    if (share >= atStart) {
      return from * (1 - share) / (1 - atStart);
    }
    double time = Math.max(from, Math.log(r1 / share) / p1);
    for (int i = 0; i < STEPS; i++) {
      double slow = r1 * Math.exp(-p1 * time);
      double fast = r2 * Math.exp(-p2 * time);
      double now = slow + fast;
      double step = Math.log(now / share) * now / (p1 * slow + p2 * fast);
      time = Math.max(from, time + step);
      if (!(Math.abs(step) > NEAR * time)) {
        break;
      }
    }
    return time;
  }

  private double sum(double time) {
    return r1 * Math.exp(-p1 * time) + r2 * Math.exp(-p2 * time);
  }

  /**
   * A little after the crest of the two exponentials; a tenth of the faster time constant when they
   * only fall, but from below 1; 0 when they fall from 1 or more.
   */
  private static double start(double p1, double r1, double p2, double r2) {
    double ratio = -r2 * p2 / (r1 * p1);
    if (ratio > 1) {
      return 1.25 * Math.log(ratio) / (p2 - p1);
    }
    return r1 + r2 < 1 ? 0.1 / p2 : 0;
  }

  private static double[] scaled(double[] series) {
    if (series[0] == 1) {
      return series;
    }
    double[] scaled = new double[series.length];
    for (int n = 0; n < scaled.length; n++) {
      scaled[n] = series[n] / series[0];
    }
    return scaled;
  }

  /** Sums of the powers of 1/p over all roots, by power (Newton's identities). */
  private static double[] powerSums(double[] w) {
    double[] sums = new double[w.length];
    for (int n = 1; n < w.length; n++) {
      double sum = (n % 2 == 0 ? -n : n) * w[n];
      for (int k = 1; k < n; k++) {
        sum += (k % 2 == 0 ? -w[k] : w[k]) * sums[n - k];
      }
      sums[n] = sum;
    }
    return sums;
  }

  private static double eighthRoot(double sum) {
    return 1 / Math.sqrt(Math.sqrt(Math.sqrt(sum)));
  }

  /** The root of w(−p)/(1 − p/divided) near {@code start}. */
  private static double root(double[] w, double start, double divided, int steps) {
    double p = start;
    for (int i = 0; i < steps; i++) {
      double value = 0;
      double slope = 0;
      for (int n = w.length - 1; n >= 0; n--) {
        slope = value - slope * p;
        value = w[n] - value * p;
      }
      p += value / (slope + value / (p - divided));
    }
    return p;
  }

  private static double share(double[] n, double[] w, double p) {
    return Series.at(n, -p) / (p * Series.slope(w, -p));
  }
}
