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
    for (int part = 0; part < layout.parts(); part++) {
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

  /**
   * Joins a part of one component, in place.
   *
   * @param outer the outer state
   * @param column inner states; receives the joined ones
   * @param from first row
   * @param to row after the last
   */
  static void within(Join join, double outer, double[] column, int from, int to) {
    switch (join) {
      case SUM -> add(outer, column, from, to);
      case MAX -> {
        for (int j = from; j < to; j++) {
          column[j] = Math.max(outer, column[j]);
        }
      }
      case MIN -> {
        for (int j = from; j < to; j++) {
          column[j] = Math.min(outer, column[j]);
        }
      }
      case INNERMOST -> fillAbsent(outer, column, from, to);
      case OUTERMOST -> {
        if (outer != Double.NEGATIVE_INFINITY) {
          Arrays.fill(column, from, to, outer);
        }
      }
      case BITS -> unite(outer, column, from, to);
      case AFFINE, BENDING, HEAT ->
          throw new IllegalArgumentException(join + " has several components");
    }
  }

  private static void add(double outer, double[] column, int from, int to) {
    if (outer != 0) {
      for (int j = from; j < to; j++) {
        column[j] += outer;
      }
    }
  }

  private static void fillAbsent(double outer, double[] column, int from, int to) {
    for (int j = from; j < to; j++) {
      column[j] = column[j] == Double.NEGATIVE_INFINITY ? outer : column[j];
    }
  }

  private static void unite(double outer, double[] column, int from, int to) {
    if (outer != 0) {
      long bits = (long) outer;
      for (int j = from; j < to; j++) {
        double x = column[j];
        column[j] = Double.isNaN(outer + x) ? Double.NaN : bits | (long) x;
      }
    }
  }
}
