package plyworth.workbench.robustness;

import java.util.Arrays;

/**
 * Who comes first, among the first three and among the first ten; candidates that are level share
 * the ranks that they take together.
 */
final class Places {

  /** Values that differ by less come from rounding: these candidates share their ranks. */
  static final double LEVEL = 1e-12;

  /** How many the first few are. */
  static final int FEW = 10;

  private final double[] sums;
  private final int[] few;

  private Places(double[] sums, int[] few) {
    this.sums = sums;
    this.few = few;
  }

  /**
   * The places of candidates.
   *
   * @param sums their values; negative infinity when not ranked
   */
  static Places of(double[] sums) {
    double floor = floor(sums) - 2 * LEVEL;
    int[] few = new int[Math.min(FEW, sums.length)];
    int count = 0;
    for (int i = 0; i < sums.length; i++) {
      if (sums[i] >= floor && sums[i] > Double.NEGATIVE_INFINITY) {
        few = count == few.length ? Arrays.copyOf(few, 2 * count) : few;
        few[count++] = i;
      }
    }
    return new Places(sums, Arrays.copyOf(few, count));
  }

  /** The tenth value, or the last where there are fewer. */
  private static double floor(double[] sums) {
    double[] highest = new double[FEW];
    Arrays.fill(highest, Double.NEGATIVE_INFINITY);
    for (double sum : sums) {
      if (sum > highest[FEW - 1]) {
        int at = FEW - 1;
        while (at > 0 && highest[at - 1] < sum) {
          highest[at] = highest[at - 1];
          at--;
        }
        highest[at] = sum;
      }
    }
    return highest[FEW - 1];
  }

  /** The candidates that may be among the first ten, in the order of their numbers. */
  int[] few() {
    return few;
  }

  /** A candidate that nobody is ahead of; -1 when none is ranked. */
  int leader() {
    int leader = -1;
    for (int i : few) {
      leader = leader < 0 || sums[i] > sums[leader] ? i : leader;
    }
    return leader;
  }

  /** The share of a candidate in the ranks from the first to {@code last}, at most the tenth. */
  double within(int candidate, int last) {
    double own = sums[candidate];
    if (own == Double.NEGATIVE_INFINITY) {
      return 0;
    }
    int before = 0;
    int level = 0;
    for (int i : few) {
      if (Math.abs(sums[i] - own) <= LEVEL) {
        level++;
      } else if (sums[i] > own) {
        before++;
      }
    }
    return level == 0 ? 0 : Math.max(0, Math.min(1, (double) (last - before) / level));
  }
}
