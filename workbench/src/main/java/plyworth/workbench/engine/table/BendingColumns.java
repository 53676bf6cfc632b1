package plyworth.workbench.engine.table;

/** {@link plyworth.shared.scoring.Join#BENDING} over columns. */
final class BendingColumns {

  private BendingColumns() {}

  static void join(int at, double[] outer, double[][] inner, double[][] result, int count) {
    double[] ea = inner[at];
    double[] share = result[at];
    if (outer[at] > 0) {
      stiffShare(outer[at], ea, share, count);
    } else {
      limpShare(outer[at], ea, share, count);
    }
    centroid(outer, at, inner[at + 1], share, result[at + 1], count);
    stiffness(outer, at, inner, result, count);
    add(outer[at + 3], inner[at + 3], result[at + 3], count);
    add(outer[at], ea, result[at], count);
  }

  /** The inner share of the tensile stiffness when the outer piece has some: never 0/0. */
  private static void stiffShare(double o, double[] ea, double[] share, int count) {
    for (int j = 0; j < count; j++) {
      share[j] = ea[j] / (o + ea[j]);
    }
  }

  private static void limpShare(double o, double[] ea, double[] share, int count) {
    for (int j = 0; j < count; j++) {
      double sum = o + ea[j];
      share[j] = sum > 0 ? ea[j] / sum : 0 * sum;
    }
  }

  private static void centroid(
      double[] outer, int at, double[] z, double[] share, double[] r, int count) {
    double zOuter = outer[at + 1];
    double thickness = outer[at + 3];
    for (int j = 0; j < count; j++) {
      r[j] = zOuter + share[j] * ((thickness + z[j]) - zOuter);
    }
  }

  private static void stiffness(
      double[] outer, int at, double[][] inner, double[][] result, int count) {
    double ea = outer[at];
    double zOuter = outer[at + 1];
    double own = outer[at + 2];
    double thickness = outer[at + 3];
    double[] z = inner[at + 1];
    double[] s = inner[at + 2];
    double[] share = result[at];
    double[] r = result[at + 2];
    for (int j = 0; j < count; j++) {
      double d = (thickness + z[j]) - zOuter;
      r[j] = own + s[j] + ea * share[j] * d * d;
    }
  }

  private static void add(double o, double[] i, double[] r, int count) {
    for (int j = 0; j < count; j++) {
      r[j] = o + i[j];
    }
  }
}
