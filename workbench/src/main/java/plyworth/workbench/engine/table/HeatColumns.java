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

  /** Adds the products of an outer and an inner power that are both above 0, two by two. */
  private static void middle(int at, int n, double[] o, double[][] i, double[][] r, int count) {
    int a = at + A;
    int b = at + B;
    int c = at + C;
    int d = at + D;
    int k = 1;
    for (; k < n - 1; k += 2) {
      int m = n - k;
      add(o, a + k, b + k, i[a + m], i[c + m], i[a + m - 1], i[c + m - 1], r[a + n], count);
      add(o, a + k, b + k, i[b + m], i[d + m], i[b + m - 1], i[d + m - 1], r[b + n], count);
      add(o, c + k, d + k, i[a + m], i[c + m], i[a + m - 1], i[c + m - 1], r[c + n], count);
      add(o, c + k, d + k, i[b + m], i[d + m], i[b + m - 1], i[d + m - 1], r[d + n], count);
    }
    if (k < n) {
      int m = n - k;
      add(o[a + k], i[a + m], o[b + k], i[c + m], r[a + n], count);
      add(o[a + k], i[b + m], o[b + k], i[d + m], r[b + n], count);
      add(o[c + k], i[a + m], o[d + k], i[c + m], r[c + n], count);
      add(o[c + k], i[b + m], o[d + k], i[d + m], r[d + n], count);
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

  /** Adds what two outer powers make, that at {@code p} and {@code q} and the next of each. */
  private static void add(
      double[] o,
      int p,
      int q,
      double[] x,
      double[] y,
      double[] xNext,
      double[] yNext,
      double[] r,
      int count) {
    double p0 = o[p];
    double q0 = o[q];
    double p1 = o[p + 1];
    double q1 = o[q + 1];
    for (int j = 0; j < count; j++) {
      r[j] = r[j] + (p0 * x[j] + q0 * y[j]) + (p1 * xNext[j] + q1 * yNext[j]);
    }
  }

  private static void add(double p, double[] x, double q, double[] y, double[] r, int count) {
    for (int j = 0; j < count; j++) {
      r[j] += p * x[j] + q * y[j];
    }
  }
}
