package plyworth.plugins.barrier.course;

import java.util.function.DoubleUnaryOperator;

/** Integrals of smooth functions. */
final class Quadrature {

  private static final int PANELS = 64;

  private static final double NEAR = Math.sqrt(5 - 2 * Math.sqrt(10.0 / 7)) / 3;
  private static final double FAR = Math.sqrt(5 + 2 * Math.sqrt(10.0 / 7)) / 3;
  private static final double WEIGHT_NEAR = (322 + 13 * Math.sqrt(70)) / 900;
  private static final double WEIGHT_FAR = (322 - 13 * Math.sqrt(70)) / 900;
  private static final double WEIGHT_MIDDLE = 128.0 / 225;

  private Quadrature() {}

  /**
   * The integral of {@code f} from a to b: Gauss and Legendre, five points in each of 64 panels.
   */
  static double integral(DoubleUnaryOperator f, double a, double b) {
    double half = (b - a) / (2 * PANELS);
    double sum = 0;
    for (int i = 0; i < PANELS; i++) {
      double middle = a + (2 * i + 1) * half;
      sum +=
          WEIGHT_MIDDLE * f.applyAsDouble(middle)
              + WEIGHT_NEAR * pair(f, middle, NEAR * half)
              + WEIGHT_FAR * pair(f, middle, FAR * half);
    }
    return sum * half;
  }

  private static double pair(DoubleUnaryOperator f, double middle, double off) {
    return f.applyAsDouble(middle - off) + f.applyAsDouble(middle + off);
  }
}
