package plyworth.workbench.ranking;

import java.util.Arrays;

/** An order in which bounds are looked at. */
final class Promising {

  /** Bits of a key that tell which bound it is; the others are the first of the bound. */
  private static final long PLACE = (1L << 24) - 1;

  private Promising() {}

  /** The places of bounds that reach a floor, the highest first but for the last few digits. */
  static int[] first(double[] bounds, double floor) {
    long[] keys = new long[bounds.length];
    int count = 0;
    for (int i = 0; i < bounds.length; i++) {
      keys[count] = Double.doubleToRawLongBits(bounds[i]) & ~PLACE | PLACE - i;
      count += bounds[i] >= floor ? 1 : 0;
    }
    Arrays.sort(keys, 0, count);
    int[] places = new int[count];
    for (int i = 0; i < count; i++) {
      places[i] = (int) (PLACE - (keys[count - 1 - i] & PLACE));
    }
    return places;
  }
}
