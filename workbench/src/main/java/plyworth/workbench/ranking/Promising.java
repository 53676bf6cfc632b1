package plyworth.workbench.ranking;

import java.util.Arrays;

/** An order in which bounds are looked at. */
final class Promising {

  /** Steps in which bounds are told apart: sorting them exactly would take longer than it saves. */
  private static final int STEPS = 256;

  private Promising() {}

  /**
   * The places of bounds that reach a floor, the highest first but for small differences; where
   * they are level, the first place first.
   */
  static int[] first(double[] bounds, double floor) {
    int[] reaching = reaching(bounds, floor);
    double highest = Double.NEGATIVE_INFINITY;
    double lowest = Double.POSITIVE_INFINITY;
    for (int place : reaching) {
      highest = Math.max(highest, bounds[place]);
      lowest = Math.min(lowest, bounds[place]);
    }
    return highest > lowest ? sorted(bounds, reaching, highest, highest - lowest) : reaching;
  }

  private static int[] reaching(double[] bounds, double floor) {
    int[] reaching = new int[bounds.length];
    int count = 0;
    for (int i = 0; i < bounds.length; i++) {
      reaching[count] = i;
      count += bounds[i] >= floor ? 1 : 0;
    }
    return Arrays.copyOf(reaching, count);
  }

  private static int[] sorted(double[] bounds, int[] places, double highest, double range) {
    int[] at = new int[STEPS + 1];
    for (int place : places) {
      at[step(bounds[place], highest, range) + 1]++;
    }
    Arrays.parallelPrefix(at, Integer::sum);
    int[] sorted = new int[places.length];
    for (int place : places) {
      sorted[at[step(bounds[place], highest, range)]++] = place;
    }
    return sorted;
  }

  private static int step(double bound, double highest, double range) {
    return (int) ((highest - bound) / range * (STEPS - 1));
  }
}
