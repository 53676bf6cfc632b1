package plyworth.plugins.machinability;

/**
 * The two slowest rates p at which the seal interfaces of a tile approach the jaws: roots of the
 * denominator of a {@link SealStack} at −p, 1/s.
 *
 * <p>The sum of 1/p⁸ over all roots puts the first within some 10⁻⁶; what it leaves of the sum of
 * 1/p⁴ puts the second within a few percent. Newton's method, for the second with the first factor
 * divided out, does the rest.
 */
final class HeatingRates {

  private static final int ROWS = SeriesColumns.ROWS;
  private static final int STEPS_FIRST = 2;
  private static final int STEPS_SECOND = 3;

  final double[] p1 = new double[ROWS];
  final double[] p2 = new double[ROWS];

  private final double[][] second = new double[4][ROWS];
  private final double[] fourthSum = new double[ROWS];
  private final double[] eighthSum = new double[ROWS];
  private final double[] value = new double[ROWS];
  private final double[] slope = new double[ROWS];

  /**
   * Finds the rates.
   *
   * @param w denominators at −p, as series in p with the constant term 1
   */
  void find(SeriesColumns w) {
    square(w);
    sums(second[0], second[1], second[2], second[3], fourthSum, eighthSum);
    first(eighthSum, p1);
    for (int step = 0; step < STEPS_FIRST; step++) {
      w.at(p1, value, slope);
      newton(value, slope, p1);
    }
    second(fourthSum, p1, p2);
    for (int step = 0; step < STEPS_SECOND; step++) {
      w.at(p2, value, slope);
      newtonBeyond(value, slope, p1, p2);
    }
  }

  /**
   * The series whose roots are the squares: w(p)·w(−p), a series in p² (Graeffe's method). Of eight
   * powers it keeps four.
   */
  private void square(SeriesColumns w) {
    low(w.power(1), w.power(2), w.power(3), w.power(4), second[0], second[1]);
    high(w.power(2), w.power(4), w.power(6), w.power(8), second[2], second[3]);
    odd(w.power(1), w.power(3), w.power(5), w.power(7), second[2], second[3]);
  }

  private static void low(
      double[] w1, double[] w2, double[] w3, double[] w4, double[] v1, double[] v2) {
    for (int i = 0; i < ROWS; i++) {
      v1[i] = 2 * w2[i] - w1[i] * w1[i];
      v2[i] = 2 * (w4[i] - w1[i] * w3[i]) + w2[i] * w2[i];
    }
  }

  private static void high(
      double[] w2, double[] w4, double[] w6, double[] w8, double[] v3, double[] v4) {
    for (int i = 0; i < ROWS; i++) {
      v3[i] = 2 * (w6[i] + w2[i] * w4[i]);
      v4[i] = 2 * (w8[i] + w2[i] * w6[i]) + w4[i] * w4[i];
    }
  }

  private static void odd(
      double[] w1, double[] w3, double[] w5, double[] w7, double[] v3, double[] v4) {
    for (int i = 0; i < ROWS; i++) {
      v3[i] -= 2 * w1[i] * w5[i] + w3[i] * w3[i];
      v4[i] -= 2 * (w1[i] * w7[i] + w3[i] * w5[i]);
    }
  }

  /** Squares the roots twice more; the first coefficient is minus the sum of their inverses. */
  private static void sums(
      double[] v1, double[] v2, double[] v3, double[] v4, double[] fourth, double[] eighth) {
    for (int i = 0; i < ROWS; i++) {
      double u1 = 2 * v2[i] - v1[i] * v1[i];
      double u2 = 2 * (v4[i] - v1[i] * v3[i]) + v2[i] * v2[i];
      fourth[i] = -u1;
      eighth[i] = u1 * u1 - 2 * u2;
    }
  }

  private static void first(double[] eighth, double[] p) {
    for (int i = 0; i < ROWS; i++) {
      p[i] = 1 / Math.sqrt(Math.sqrt(Math.sqrt(eighth[i])));
    }
  }

  private static void second(double[] fourth, double[] first, double[] p) {
    for (int i = 0; i < ROWS; i++) {
      double square = first[i] * first[i];
      p[i] = 1 / Math.sqrt(Math.sqrt(fourth[i] - 1 / (square * square)));
    }
  }

  private static void newton(double[] value, double[] slope, double[] p) {
    for (int i = 0; i < ROWS; i++) {
      p[i] -= value[i] / slope[i];
    }
  }

  /** Newton's step for w(p)/(1 − p/first). */
  private static void newtonBeyond(double[] value, double[] slope, double[] first, double[] p) {
    for (int i = 0; i < ROWS; i++) {
      double apart = p[i] - first[i];
      p[i] -= value[i] * apart / (slope[i] * apart - value[i]);
    }
  }
}
