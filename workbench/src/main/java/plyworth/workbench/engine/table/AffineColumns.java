package plyworth.workbench.engine.table;

/** {@link plyworth.shared.scoring.Join#AFFINE} over columns. */
final class AffineColumns {

  private AffineColumns() {}

  static void join(int at, double[] outer, double[][] inner, double[][] result, int count) {
    double oa = outer[at];
    double ob = outer[at + 1];
    double oc = outer[at + 2];
    double od = outer[at + 3];
    double[] a = inner[at];
    double[] b = inner[at + 1];
    area(oa, a, 0, result[at], count);
    area(oa, b, ob, result[at + 1], count);
    cost(inner[at + 2], oc, a, 0, result[at + 2], count);
    cost(inner[at + 3], oc, b, od, result[at + 3], count);
  }

  private static void area(double factor, double[] x, double added, double[] r, int count) {
    for (int j = 0; j < count; j++) {
      r[j] = factor * x[j] + added;
    }
  }

  private static void cost(
      double[] own, double factor, double[] x, double added, double[] r, int count) {
    for (int j = 0; j < count; j++) {
      r[j] = own[j] + factor * x[j] + added;
    }
  }
}
