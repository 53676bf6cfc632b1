package plyworth.workbench.engine.table;

import java.util.Arrays;
import plyworth.shared.scoring.Join;

/**
 * Joins one outer state with columns of inner states, row by row what {@link Join#join} gives.
 *
 * <p>Every kernel is a plain loop over whole columns from row 0 on; as soon as columns are read and
 * written from different rows on, the compiler no longer turns the loop into vector instructions.
 */
final class ColumnJoin {

  private ColumnJoin() {}

  /**
   * Joins all parts.
   *
   * @param outer the outer state
   * @param inner inner states, component by row
   * @param result receives the joined states, component by row; other arrays than those of {@code
   *     inner}
   * @param count number of rows
   */
  static void join(
      StateLayout layout, double[] outer, double[][] inner, double[][] result, int count) {
    parts(layout, 0, layout.parts(), outer, inner, result, count);
  }

  /** Joins the parts of a plugin alone; see the other. */
  static void join(
      StateLayout layout,
      int plugin,
      double[] outer,
      double[][] inner,
      double[][] result,
      int count) {
    int first = layout.firstPart(plugin);
    parts(layout, first, layout.firstPart(plugin + 1), outer, inner, result, count);
  }

  private static void parts(
      StateLayout layout,
      int from,
      int to,
      double[] outer,
      double[][] inner,
      double[][] result,
      int count) {
    for (int part = from; part < to; part++) {
      join(layout.join(part), layout.offset(part), outer, inner, result, count);
    }
  }

  /** Joins the part that begins at component {@code at}. */
  static void join(
      Join join, int at, double[] outer, double[][] inner, double[][] result, int count) {
    double o = outer[at];
    double[] i = inner[at];
    double[] r = result[at];
    switch (join) {
      case SUM -> sum(o, i, r, count);
      case MAX -> max(o, i, r, count);
      case MIN -> min(o, i, r, count);
      case INNERMOST -> innermost(o, i, r, count);
      case OUTERMOST -> outermost(o, i, r, count);
      case BITS -> union(o, i, r, count);
      case AFFINE -> AffineColumns.join(at, outer, inner, result, count);
      case BENDING -> BendingColumns.join(at, outer, inner, result, count);
      case HEAT -> HeatColumns.join(at, outer, inner, result, count);
    }
  }

  private static void sum(double o, double[] i, double[] r, int count) {
    for (int j = 0; j < count; j++) {
      r[j] = o + i[j];
    }
  }

  private static void max(double o, double[] i, double[] r, int count) {
    for (int j = 0; j < count; j++) {
      r[j] = Math.max(o, i[j]);
    }
  }

  private static void min(double o, double[] i, double[] r, int count) {
    for (int j = 0; j < count; j++) {
      r[j] = Math.min(o, i[j]);
    }
  }

  private static void innermost(double o, double[] i, double[] r, int count) {
    for (int j = 0; j < count; j++) {
      double x = i[j];
      r[j] = x == Double.NEGATIVE_INFINITY ? o : x;
    }
  }

  private static void outermost(double o, double[] i, double[] r, int count) {
    if (o == Double.NEGATIVE_INFINITY) {
      System.arraycopy(i, 0, r, 0, count);
    } else {
      Arrays.fill(r, 0, count, o);
    }
  }

  private static void union(double o, double[] i, double[] r, int count) {
    if (o == 0) {
      System.arraycopy(i, 0, r, 0, count);
      return;
    }
    long bits = (long) o;
    for (int j = 0; j < count; j++) {
      double x = i[j];
      r[j] = Double.isNaN(o + x) ? Double.NaN : bits | (long) x;
    }
  }
}
