package plyworth.workbench.engine.table;

import java.util.Arrays;
import plyworth.shared.scoring.Join;

/** {@link plyworth.shared.scoring.Join#HEAT} over columns: products of power series, cut short. */
final class HeatColumns {

  /** Highest power kept. */
  private static final int ORDER = (Join.HEAT.size() - 1) / 4;

  private static final int LONGEST = Suffixes.LONGEST;
  private static final double[] ZEROS = new double[LONGEST];
  private static final double[] ONES = new double[LONGEST];

  static {
    Arrays.fill(ONES, 1);
  }

  private HeatColumns() {}

  static void join(int at, double[] outer, double[][] inner, double[][] result, int count) {
    for (int n = 0; n <= ORDER; n++) {
      for (int k = 0; k <= n; k++) {
        double oa = k == 0 ? 1 : outer[a(at, k)];
        double ob = outer[b(at, k)];
        double oc = k == 0 ? 0 : outer[c(at, k)];
        double od = k == 0 ? 1 : outer[d(at, k)];
        int m = n - k;
        double[] ia = m == 0 ? ONES : inner[a(at, m)];
        double[] ib = inner[b(at, m)];
        double[] ic = m == 0 ? ZEROS : inner[c(at, m)];
        double[] id = m == 0 ? ONES : inner[d(at, m)];
        boolean first = k == 0;
        add(first, oa, ib, ob, id, result[b(at, n)], count);
        if (n > 0) {
          add(first, oa, ia, ob, ic, result[a(at, n)], count);
          add(first, oc, ia, od, ic, result[c(at, n)], count);
          add(first, oc, ib, od, id, result[d(at, n)], count);
        }
      }
    }
  }

  private static int a(int at, int power) {
    return at + power - 1;
  }

  private static int b(int at, int power) {
    return at + ORDER + power;
  }

  private static int c(int at, int power) {
    return at + 2 * ORDER + power;
  }

  private static int d(int at, int power) {
    return at + 3 * ORDER + power;
  }

  private static void set(double p, double[] x, double q, double[] y, double[] r, int count) {
    for (int j = 0; j < count; j++) {
      r[j] = p * x[j] + q * y[j];
    }
  }

  private static void add(double p, double[] x, double q, double[] y, double[] r, int count) {
    for (int j = 0; j < count; j++) {
      r[j] += p * x[j] + q * y[j];
    }
  }

  private static void add(
      boolean first, double p, double[] x, double q, double[] y, double[] r, int count) {
    if (first) {
      set(p, x, q, y, r, count);
    } else {
      add(p, x, q, y, r, count);
    }
  }
}
