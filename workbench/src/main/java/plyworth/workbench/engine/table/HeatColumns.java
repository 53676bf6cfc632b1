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

  static void join(
      int at, double[] outer, double[][] inner, int from, double[][] result, int to, int count) {
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
        add(first, oa, ib, ob, id, from, result[b(at, n)], to, count);
        if (n > 0) {
          add(first, oa, ia, ob, ic, from, result[a(at, n)], to, count);
          add(first, oc, ia, od, ic, from, result[c(at, n)], to, count);
          add(first, oc, ib, od, id, from, result[d(at, n)], to, count);
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

  private static void add(
      boolean first,
      double p,
      double[] x,
      double q,
      double[] y,
      int from,
      double[] r,
      int to,
      int count) {
    if (first) {
      for (int j = 0; j < count; j++) {
        r[to + j] = p * x[from + j] + q * y[from + j];
      }
    } else {
      for (int j = 0; j < count; j++) {
        r[to + j] += p * x[from + j] + q * y[from + j];
      }
    }
  }
}
