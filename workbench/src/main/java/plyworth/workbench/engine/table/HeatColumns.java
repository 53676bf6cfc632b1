package plyworth.workbench.engine.table;

import plyworth.shared.scoring.Join;

/** {@link plyworth.shared.scoring.Join#HEAT} over columns: products of power series, cut short. */
final class HeatColumns {

  /** Highest power kept. */
  private static final int ORDER = (Join.HEAT.size() - 1) / 4;

  private static final int A = -1;
  private static final int B = ORDER;
  private static final int C = 2 * ORDER;
  private static final int D = 3 * ORDER;

  private HeatColumns() {}

  static void join(int at, double[] o, double[][] i, double[][] r, int count) {
    double b0 = o[at + B];
    double[] ib0 = i[at + B];
    sum(b0, ib0, r[at + B], count);
    for (int n = 1; n <= ORDER; n++) {
      int a = at + A + n;
      int b = at + B + n;
      int c = at + C + n;
      int d = at + D + n;
      ends(o[a], i[a], b0, i[c], r[a], count);
      ends(o[b], i[b], o[a], ib0, b0, i[d], r[b], count);
      sum(o[c], i[c], r[c], count);
      ends(o[d], i[d], o[c], ib0, r[d], count);
      middle(at, n, o, i, r, count);
    }
  }

  /** Adds the products of an outer and an inner power that are both above 0. */
  private static void middle(int at, int n, double[] o, double[][] i, double[][] r, int count) {
    for (int k = 1; k < n; k++) {
      double[] ia = i[at + A + n - k];
      double[] ib = i[at + B + n - k];
      double[] ic = i[at + C + n - k];
      double[] id = i[at + D + n - k];
      add(o[at + A + k], ia, o[at + B + k], ic, r[at + A + n], count);
      add(o[at + A + k], ib, o[at + B + k], id, r[at + B + n], count);
      add(o[at + C + k], ia, o[at + D + k], ic, r[at + C + n], count);
      add(o[at + C + k], ib, o[at + D + k], id, r[at + D + n], count);
    }
  }

  private static void sum(double o, double[] i, double[] r, int count) {
    for (int j = 0; j < count; j++) {
      r[j] = o + i[j];
    }
  }

  private static void ends(double o, double[] i, double p, double[] x, double[] r, int count) {
    for (int j = 0; j < count; j++) {
      r[j] = o + i[j] + p * x[j];
    }
  }

  private static void ends(
      double o, double[] i, double p, double[] x, double q, double[] y, double[] r, int count) {
    for (int j = 0; j < count; j++) {
      r[j] = o + i[j] + p * x[j] + q * y[j];
    }
  }

  private static void add(double p, double[] x, double q, double[] y, double[] r, int count) {
    for (int j = 0; j < count; j++) {
      r[j] += p * x[j] + q * y[j];
    }
  }
}
