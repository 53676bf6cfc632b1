package plyworth.plugins.machinability;

import java.util.Arrays;

/**
 * Power series in the Laplace variable, one to a row, power by power in columns.
 *
 * <p>Every pass is a plain loop over all rows of a tile, which the compiler turns into vector
 * instructions: no calls, no branches, always the same number of rows. Rows never touch each other,
 * so one that is NaN stays alone.
 */
final class SeriesColumns {

  /** Rows of a tile: few enough for the nearest caches, enough to pay for starting a pass. */
  static final int ROWS = 128;

  private static final int ORDER = Series.ORDER;

  private final double[][] powers = new double[ORDER + 1][ROWS];

  /** The series 1 in every row. */
  static SeriesColumns one() {
    SeriesColumns one = new SeriesColumns();
    Arrays.fill(one.powers[0], 1);
    return one;
  }

  /** The column of the n-th power. */
  double[] power(int n) {
    return powers[n];
  }

  /** Becomes a + factor·b. */
  void sum(SeriesColumns a, double factor, SeriesColumns b) {
    for (int n = 0; n <= ORDER; n++) {
      sum(a.powers[n], factor, b.powers[n], powers[n]);
    }
  }

  /** Becomes a·b − less. */
  void product(SeriesColumns a, SeriesColumns b, double less) {
    double[][] x = a.powers;
    double[][] y = b.powers;
    start(x[0], y[0], less, powers[0]);
    for (int n = 1; n <= ORDER; n++) {
      start(x[0], y[n], x[1], y[n - 1], powers[n]);
    }
    addProduct(a, b, 2);
  }

  /** Adds a·b. */
  void addProduct(SeriesColumns a, SeriesColumns b) {
    addProduct(a, b, 0);
  }

  /**
   * Adds the products with the powers of a from an even one on, two of the products that make a
   * power at a time, and for two powers at once.
   */
  private void addProduct(SeriesColumns a, SeriesColumns b, int first) {
    double[][] x = a.powers;
    double[][] y = b.powers;
    for (int n = first; n <= ORDER; n += 2) {
      int k = first;
      for (; k < n && n < ORDER; k += 2) {
        add(x[k], x[k + 1], y[n - k - 1], y[n - k], y[n - k + 1], powers[n], powers[n + 1]);
      }
      for (; k < n; k += 2) {
        add(x[k], y[n - k], x[k + 1], y[n - k - 1], powers[n]);
      }
      add(x[n], y[0], powers[n]);
      if (n < ORDER) {
        add(x[n], y[1], x[n + 1], y[0], powers[n + 1]);
      }
    }
  }

  /** Becomes f(−p)·scale, a series in p. */
  void reflect(SeriesColumns f, double[] scale) {
    for (int n = 0; n <= ORDER; n += 2) {
      multiply(f.powers[n], scale, powers[n]);
    }
    for (int n = 1; n <= ORDER; n += 2) {
      multiplyNegative(f.powers[n], scale, powers[n]);
    }
  }

  /** Value and slope at {@code x}, by Horner's rule, four powers to a pass. */
  void at(double[] x, double[] value, double[] slope) {
    System.arraycopy(powers[ORDER], 0, value, 0, ROWS);
    Arrays.fill(slope, 0);
    for (int n = ORDER - 4; n >= 0; n -= 4) {
      horner(x, powers[n + 3], powers[n + 2], powers[n + 1], powers[n], value, slope);
    }
  }

  /** Value at {@code x}. */
  void at(double[] x, double[] value) {
    System.arraycopy(powers[ORDER], 0, value, 0, ROWS);
    for (int n = ORDER - 4; n >= 0; n -= 4) {
      horner(x, powers[n + 3], powers[n + 2], powers[n + 1], powers[n], value);
    }
  }

  private static void sum(double[] a, double factor, double[] b, double[] r) {
    for (int i = 0; i < ROWS; i++) {
      r[i] = a[i] + factor * b[i];
    }
  }

  private static void add(double[] a, double[] b, double[] r) {
    for (int i = 0; i < ROWS; i++) {
      r[i] += a[i] * b[i];
    }
  }

  private static void add(double[] a, double[] b, double[] c, double[] d, double[] r) {
    for (int i = 0; i < ROWS; i++) {
      r[i] += a[i] * b[i] + c[i] * d[i];
    }
  }

  private static void add(
      double[] x,
      double[] xNext,
      double[] yBefore,
      double[] y,
      double[] yNext,
      double[] r,
      double[] rNext) {
    for (int i = 0; i < ROWS; i++) {
      double a = x[i];
      double b = xNext[i];
      double c = y[i];
      r[i] += a * c + b * yBefore[i];
      rNext[i] += a * yNext[i] + b * c;
    }
  }

  private static void start(double[] a, double[] b, double less, double[] r) {
    for (int i = 0; i < ROWS; i++) {
      r[i] = a[i] * b[i] - less;
    }
  }

  private static void start(double[] a, double[] b, double[] c, double[] d, double[] r) {
    for (int i = 0; i < ROWS; i++) {
      r[i] = a[i] * b[i] + c[i] * d[i];
    }
  }

  private static void multiply(double[] a, double[] b, double[] r) {
    for (int i = 0; i < ROWS; i++) {
      r[i] = a[i] * b[i];
    }
  }

  private static void multiplyNegative(double[] a, double[] b, double[] r) {
    for (int i = 0; i < ROWS; i++) {
      r[i] = -a[i] * b[i];
    }
  }

  private static void horner(
      double[] x,
      double[] w3,
      double[] w2,
      double[] w1,
      double[] w0,
      double[] value,
      double[] slope) {
    for (int i = 0; i < ROWS; i++) {
      double v4 = value[i];
      double v3 = v4 * x[i] + w3[i];
      double v2 = v3 * x[i] + w2[i];
      double v1 = v2 * x[i] + w1[i];
      double s = (((slope[i] * x[i] + v4) * x[i] + v3) * x[i] + v2) * x[i] + v1;
      slope[i] = s;
      value[i] = v1 * x[i] + w0[i];
    }
  }

  private static void horner(
      double[] x, double[] w3, double[] w2, double[] w1, double[] w0, double[] value) {
    for (int i = 0; i < ROWS; i++) {
      value[i] = (((value[i] * x[i] + w3[i]) * x[i] + w2[i]) * x[i] + w1[i]) * x[i] + w0[i];
    }
  }
}
