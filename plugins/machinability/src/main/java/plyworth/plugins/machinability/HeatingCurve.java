package plyworth.plugins.machinability;

/**
 * How the seal interface warms up: the two slowest exponentials of the share θ of the temperature
 * step that is still missing, θ(t) = r₁·exp(−p₁·t) + r₂·exp(−p₂·t).
 *
 * <p>The rates p are the roots of the denominator of a {@link SealStack} at −p, found by Newton's
 * method from the left, where the approach is monotone; the start is the power-sum bound (Σ 1/p⁴)
 * to the power of −1/4, from the coefficients by Newton's identities. The second root is found in
 * the denominator divided by the first factor. The shares r are the residues of the step response.
 * Before {@code from} the two exponentials do not describe the start, and θ is taken as a straight
 * line from 1; that concerns the first two percent of the warming.
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
    double p1 = root(w, Math.sqrt(1 / Math.sqrt(sums[1])), Double.POSITIVE_INFINITY);
    double r1 = share(n, w, p1);
    double left = sums[1] - 1 / (p1 * p1 * p1 * p1);
    double p2 = left > 0 ? root(w, Math.sqrt(1 / Math.sqrt(left)), p1) : Double.NaN;
    double r2 = share(n, w, p2);
    if (!(p2 > p1) || !(Math.abs(r2) < 1)) {
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

  /** A little after the crest of the two exponentials; 0 when they only fall. */
  private static double start(double p1, double r1, double p2, double r2) {
    double ratio = -r2 * p2 / (r1 * p1);
    return ratio > 1 ? 1.25 * Math.log(ratio) / (p2 - p1) : 0;
  }

  private static double[] scaled(double[] series) {
    double[] scaled = series.clone();
    for (int n = 0; n < scaled.length; n++) {
      scaled[n] = series[n] / series[0];
    }
    return scaled;
  }

  /** Sums of the squares and of the fourth powers of 1/p over all roots (Newton's identities). */
  private static double[] powerSums(double[] w) {
    double s1 = w[1];
    double s2 = w[1] * s1 - 2 * w[2];
    double s3 = w[1] * s2 - w[2] * s1 + 3 * w[3];
    double s4 = w[1] * s3 - w[2] * s2 + w[3] * s1 - 4 * w[4];
    return new double[] {s2, s4};
  }

  /** The root of w(−p)/(1 − p/divided) next to the right of {@code start}. */
  private static double root(double[] w, double start, double divided) {
    double p = start;
    for (int i = 0; i < STEPS; i++) {
      double logSlope = -Series.slope(w, -p) / Series.at(w, -p) - 1 / (p - divided);
      double step = -1 / logSlope;
      p += step;
      if (!(Math.abs(step) > NEAR * p)) {
        return p;
      }
    }
    return Double.NaN;
  }

  private static double share(double[] n, double[] w, double p) {
    return Series.at(n, -p) / (p * Series.slope(w, -p));
  }
}
