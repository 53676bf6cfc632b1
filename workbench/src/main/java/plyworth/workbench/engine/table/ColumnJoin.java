package plyworth.workbench.engine.table;

import plyworth.shared.scoring.Join;

/**
 * Joins one outer state with columns of inner states, row by row what {@link Join#join} gives.
 *
 * <p>Every kernel is a plain loop over one or a few columns, so that the compiler can turn it into
 * vector instructions.
 */
final class ColumnJoin {

  private ColumnJoin() {}

  /**
   * Joins all parts.
   *
   * @param outer the outer state
   * @param inner inner states, component by row, read from row {@code from}
   * @param result receives the joined states, component by row, from row {@code to}; other arrays
   *     than those of {@code inner}
   * @param count number of rows
   */
  static void join(
      StateLayout layout,
      double[] outer,
      double[][] inner,
      int from,
      double[][] result,
      int to,
      int count) {
    for (int part = 0; part < layout.parts(); part++) {
      join(layout.join(part), layout.offset(part), outer, inner, from, result, to, count);
    }
  }

  /** Joins the part that begins at component {@code at}. */
  static void join(
      Join join,
      int at,
      double[] outer,
      double[][] inner,
      int from,
      double[][] result,
      int to,
      int count) {
    double o = outer[at];
    double[] i = inner[at];
    double[] r = result[at];
    switch (join) {
      case SUM -> sum(o, i, from, r, to, count);
      case MAX -> max(o, i, from, r, to, count);
      case MIN -> min(o, i, from, r, to, count);
      case INNERMOST -> innermost(o, i, from, r, to, count);
      case OUTERMOST -> outermost(o, i, from, r, to, count);
      case BITS -> union(o, i, from, r, to, count);
      case AFFINE -> AffineColumns.join(at, outer, inner, from, result, to, count);
      case BENDING -> BendingColumns.join(at, outer, inner, from, result, to, count);
      case HEAT -> HeatColumns.join(at, outer, inner, from, result, to, count);
    }
  }

  private static void sum(double o, double[] i, int from, double[] r, int to, int count) {
    for (int j = 0; j < count; j++) {
      r[to + j] = o + i[from + j];
    }
  }

  private static void max(double o, double[] i, int from, double[] r, int to, int count) {
    for (int j = 0; j < count; j++) {
      r[to + j] = Math.max(o, i[from + j]);
    }
  }

  private static void min(double o, double[] i, int from, double[] r, int to, int count) {
    for (int j = 0; j < count; j++) {
      r[to + j] = Math.min(o, i[from + j]);
    }
  }

  private static void innermost(double o, double[] i, int from, double[] r, int to, int count) {
    for (int j = 0; j < count; j++) {
      double x = i[from + j];
      r[to + j] = x == Double.NEGATIVE_INFINITY ? o : x;
    }
  }

  private static void outermost(double o, double[] i, int from, double[] r, int to, int count) {
    if (o == Double.NEGATIVE_INFINITY) {
      System.arraycopy(i, from, r, to, count);
    } else {
      java.util.Arrays.fill(r, to, to + count, o);
    }
  }

  private static void union(double o, double[] i, int from, double[] r, int to, int count) {
    if (o == 0) {
      System.arraycopy(i, from, r, to, count);
      return;
    }
    long bits = (long) o;
    for (int j = 0; j < count; j++) {
      double x = i[from + j];
      r[to + j] = Double.isNaN(o + x) ? Double.NaN : bits | (long) x;
    }
  }
}
