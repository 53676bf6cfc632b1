package plyworth.workbench.engine.table;

/** {@link plyworth.shared.scoring.Join#BENDING} over columns. */
final class BendingColumns {

  private BendingColumns() {}

  static void join(
      int at, double[] outer, double[][] inner, int from, double[][] result, int to, int count) {
    double[] ea = inner[at];
    double[] share = result[at];
    if (outer[at] > 0) {
      stiffShare(outer[at], ea, from, share, to, count);
    } else {
      limpShare(outer[at], ea, from, share, to, count);
    }
    centroid(outer, at, inner[at + 1], from, share, result[at + 1], to, count);
    stiffness(outer, at, inner, from, result, to, count);
    add(outer[at + 3], inner[at + 3], from, result[at + 3], to, count);
    add(outer[at], ea, from, result[at], to, count);
  }

  /** The inner share of the tensile stiffness when the outer piece has some: never 0/0. */
  private static void stiffShare(
      double o, double[] ea, int from, double[] share, int to, int count) {
    for (int j = 0; j < count; j++) {
      share[to + j] = ea[from + j] / (o + ea[from + j]);
    }
  }

  private static void limpShare(
      double o, double[] ea, int from, double[] share, int to, int count) {
    for (int j = 0; j < count; j++) {
      double sum = o + ea[from + j];
      share[to + j] = sum > 0 ? ea[from + j] / sum : 0 * sum;
    }
  }

  private static void centroid(
      double[] outer, int at, double[] z, int from, double[] share, double[] r, int to, int count) {
    double zOuter = outer[at + 1];
    double thickness = outer[at + 3];
    for (int j = 0; j < count; j++) {
      r[to + j] = zOuter + share[to + j] * ((thickness + z[from + j]) - zOuter);
    }
  }

  private static void stiffness(
      double[] outer, int at, double[][] inner, int from, double[][] result, int to, int count) {
    double ea = outer[at];
    double zOuter = outer[at + 1];
    double own = outer[at + 2];
    double thickness = outer[at + 3];
    double[] z = inner[at + 1];
    double[] s = inner[at + 2];
    double[] share = result[at];
    double[] r = result[at + 2];
    for (int j = 0; j < count; j++) {
      double d = (thickness + z[from + j]) - zOuter;
      r[to + j] = own + s[from + j] + ea * share[to + j] * d * d;
    }
  }

  private static void add(double o, double[] i, int from, double[] r, int to, int count) {
    for (int j = 0; j < count; j++) {
      r[to + j] = o + i[from + j];
    }
  }
}
