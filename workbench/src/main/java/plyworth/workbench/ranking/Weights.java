package plyworth.workbench.ranking;

import java.util.Arrays;

/** Sums of weighted values, added up in the order of the criteria everywhere. */
final class Weights {

  private Weights() {}

  /** The criteria with weight. */
  static int[] counting(ValueModel model) {
    int[] counting = new int[model.criteria().size()];
    int count = 0;
    for (int c = 0; c < counting.length; c++) {
      if (model.criteria().get(c).counts()) {
        counting[count++] = c;
      }
    }
    return Arrays.copyOf(counting, count);
  }

  /** Adds weighted values, one to each sum. */
  static void add(double weight, double[] values, double[] sums) {
    for (int i = 0; i < values.length; i++) {
      sums[i] += weight * values[i];
    }
  }
}
