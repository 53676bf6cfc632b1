package plyworth.plugins.machinability;

/**
 * Exponentials and logarithms of columns by arithmetic alone, which the compiler turns into vector
 * instructions, as it does not {@link Math#exp} and {@link Math#log}.
 */
final class Exponentials {

  private static final int ROWS = SeriesColumns.ROWS;

  /** Beyond it e^−x is nothing beside any share of a temperature step. */
  private static final double FAR = 40;

  private Exponentials() {}

  /**
   * e^−(p·t), for p·t not negative: Taylor's series to the ninth power at a 64th of the exponent,
   * squared six times. Within 5·10⁻¹⁴ of the result down to e^−8, and within 10⁻¹⁶ beyond.
   */
  static void decay(double[] p, double[] t, double[] r) {
    for (int i = 0; i < ROWS; i++) {
      double y = Math.min(FAR, p[i] * t[i]) * (-1.0 / 64);
      double e = 1 + y * (1.0 / 9);
      e = 1 + y * (1.0 / 8) * e;
      e = 1 + y * (1.0 / 7) * e;
      e = 1 + y * (1.0 / 6) * e;
      e = 1 + y * (1.0 / 5) * e;
      e = 1 + y * (1.0 / 4) * e;
      e = 1 + y * (1.0 / 3) * e;
      e = 1 + y * (1.0 / 2) * e;
      e = 1 + y * e;
      r[i] = e;
    }
    for (int i = 0; i < ROWS; i++) {
      double e2 = r[i] * r[i];
      double e4 = e2 * e2;
      double e8 = e4 * e4;
      double e16 = e8 * e8;
      double e32 = e16 * e16;
      r[i] = e32 * e32;
    }
  }

  /**
   * ln(x): 16 times that of the 16th root, by the series of the inverse hyperbolic tangent. Within
   * 10⁻¹² from a 30th to 30, a rough figure far beyond, NaN for what has no logarithm.
   */
  static void log(double[] x, double[] r) {
    for (int i = 0; i < ROWS; i++) {
      r[i] = Math.sqrt(Math.sqrt(Math.sqrt(Math.sqrt(x[i]))));
    }
    for (int i = 0; i < ROWS; i++) {
      double z = (r[i] - 1) / (r[i] + 1);
      double s = z * z;
      double sum = 1.0 / 9 + s * (1.0 / 11);
      sum = 1.0 / 7 + s * sum;
      sum = 1.0 / 5 + s * sum;
      sum = 1.0 / 3 + s * sum;
      r[i] = 32 * z * (1 + s * sum);
    }
  }
}
