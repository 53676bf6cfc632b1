package plyworth.workbench.ranking;

import java.util.Arrays;

/** Sums of weighted values, added up in the order of the criteria everywhere. */
final class Weights {

  /** As many sums as {@link #sumEight} adds up. */
  static final int EIGHT = 8;

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

  /** The weights of some criteria. */
  static double[] of(ValueModel model, int[] criteria) {
    return Arrays.stream(criteria).mapToDouble(c -> model.criteria().get(c).weight()).toArray();
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
  static void sumEight(double[] weights, float[][] values, int at, double[] sums) {
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
      float[] own = values[i];
      a += weight * own[at];
      b += weight * own[at + 1];
      c += weight * own[at + 2];
      d += weight * own[at + 3];
      e += weight * own[at + 4];
      f += weight * own[at + 5];
      g += weight * own[at + 6];
      h += weight * own[at + 7];
    }
    sums[0] = a;
    sums[1] = b;
    sums[2] = c;
    sums[3] = d;
    sums[4] = e;
    sums[5] = f;
    sums[6] = g;
    sums[7] = h;
  }
}
