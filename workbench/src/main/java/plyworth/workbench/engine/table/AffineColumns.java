package plyworth.workbench.engine.table;

/** {@link plyworth.shared.scoring.Join#AFFINE} over columns. */
final class AffineColumns {

  private AffineColumns() {}

  static void join(
      int at, double[] outer, double[][] inner, int from, double[][] result, int to, int count) {
    double oa = outer[at];
    double ob = outer[at + 1];
    double oc = outer[at + 2];
    double od = outer[at + 3];
    double[] a = inner[at];
    double[] b = inner[at + 1];
    area(oa, a, 0, from, result[at], to, count);
    area(oa, b, ob, from, result[at + 1], to, count);
    cost(inner[at + 2], oc, a, 0, from, result[at + 2], to, count);
    cost(inner[at + 3], oc, b, od, from, result[at + 3], to, count);
  }

  private static void area(
      double factor, double[] x, double added, int from, double[] r, int to, int count) {
    for (int j = 0; j < count; j++) {
      r[to + j] = factor * x[from + j] + added;
    }
  }

  private static void cost(
      double[] own,
      double factor,
      double[] x,
      double added,
      int from,
      double[] r,
      int to,
      int count) {
    for (int j = 0; j < count; j++) {
      r[to + j] = own[from + j] + factor * x[from + j] + added;
    }
  }
}
