package plyworth.workbench.engine.table;

/** From double to float without losing on which side of a short number a figure lies. */
public final class Narrowing {

  /** The bits of a double that a float has no room for. */
  private static final long LOST = (1L << 29) - 1;

  /** The bit of a double that becomes the last of a float. */
  private static final long LAST = 1L << 29;

  /** 2¹²⁸: below it the cut-off figure is a finite float. */
  private static final double LEAST_TOO_LARGE = 0x1p128;

  private Narrowing() {}

  /**
   * Rounds to odd: what a float can hold stays as it is, everything else becomes the neighbouring
   * float whose last bit is 1.
   *
   * <p>So a float with an even last bit, as short numbers have, is met only by figures that are
   * exactly equal to it, and comparing with such a limit or class needs no second look (rounding to
   * odd as known from double-rounding proofs; from memory).
   */
  public static float toOdd(double figure) {
    double size = Math.abs(figure);
    if (size >= Float.MIN_NORMAL && size < LEAST_TOO_LARGE) {
      long bits = Double.doubleToRawLongBits(figure);
      long lost = bits & LOST;
      return (float) Double.longBitsToDouble((bits ^ lost) | ((lost + LOST) & LAST));
    }
    return rarely(figure);
  }

  /**
   * The same for the first figures of a column.
   *
   * @return whether some are unknown
   */
  static boolean toOdd(double[] figures, int count, float[] narrow) {
    int unknown = 0;
    for (int k = 0; k < count; k++) {
      float figure = toOdd(figures[k]);
      narrow[k] = figure;
      unknown += figure == figure ? 0 : 1;
    }
    return unknown > 0;
  }

  private static float rarely(double figure) {
    float nearest = (float) figure;
    if (nearest == figure || Double.isNaN(figure)) {
      return nearest;
    }
    if (Float.isInfinite(nearest)) {
      return Math.copySign(Float.MAX_VALUE, nearest);
    }
    int bits = Float.floatToRawIntBits(nearest);
    if ((bits & 1) != 0) {
      return nearest;
    }
    boolean fartherFromZero = Math.abs(figure) > Math.abs((double) nearest);
    return Float.intBitsToFloat(fartherFromZero ? bits + 1 : bits - 1);
  }

  /** The largest float that is not above the figure. */
  static float down(double figure) {
    float nearest = (float) figure;
    return nearest > figure ? Math.nextDown(nearest) : nearest;
  }

  /** The smallest float that is not below the figure. */
  public static float up(double figure) {
    float nearest = (float) figure;
    return nearest < figure ? Math.nextUp(nearest) : nearest;
  }
}
