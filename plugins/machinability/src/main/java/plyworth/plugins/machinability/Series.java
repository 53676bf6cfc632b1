package plyworth.plugins.machinability;

import plyworth.shared.scoring.Join;

/** Power series in the Laplace variable, cut after the power that {@link Join#HEAT} keeps. */
final class Series {

  /** Highest power kept. */
  static final int ORDER = (Join.HEAT.size() - 1) / 4;

  private Series() {}

  /** The series 1. */
  static double[] one() {
    double[] one = new double[ORDER + 1];
    one[0] = 1;
    return one;
  }

  /** a·b + c·d. */
  static double[] products(double[] a, double[] b, double[] c, double[] d) {
    double[] sum = new double[ORDER + 1];
    for (int k = 0; k <= ORDER; k++) {
      double ak = a[k];
      double ck = c[k];
      for (int n = 0; n <= ORDER - k; n++) {
        sum[n + k] += ak * b[n] + ck * d[n];
      }
    }
    return sum;
  }
}
