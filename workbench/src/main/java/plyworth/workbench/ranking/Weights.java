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

  /** Adds weighted values, one to each sum, as far as there are both. */
  static void add(double weight, double[] values, double[] sums) {
    int count = Math.min(values.length, sums.length);
    for (int i = 0; i < count; i++) {
      sums[i] += weight * values[i];
    }
  }

  /**
   * Eight sums at once, side by side in the processor.
   *
   * @param values by criterion, those of the first sum at a place, of the others after it
   */
  static void sumEight(double[] weights, double[][] values, int at, double[] sums, int to) {
    double a = 0;
    double b = 0;
    double c = 0;
    double d = 0;
    double e = 0;
    double f = 0;
    double g = 0;
    double h = 0;
    for (int i = 0; i < weights.length; i++) {
      double weight = weights[i];
      double[] own = values[i];
      a += weight * own[at];
      b += weight * own[at + 1];
      c += weight * own[at + 2];
      d += weight * own[at + 3];
      e += weight * own[at + 4];
      f += weight * own[at + 5];
      g += weight * own[at + 6];
      h += weight * own[at + 7];
    }
    sums[to] = a;
    sums[to + 1] = b;
    sums[to + 2] = c;
    sums[to + 3] = d;
    sums[to + 4] = e;
    sums[to + 5] = f;
    sums[to + 6] = g;
    sums[to + 7] = h;
  }
}
