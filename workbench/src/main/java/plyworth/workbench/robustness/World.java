package plyworth.workbench.robustness;

import java.util.Arrays;

/**
 * What some candidates are worth in one possible world.
 *
 * @param values criterion by candidate, 0 to 1, the unknown as 0; null for a criterion that cannot
 *     have weight
 * @param ranked whether each candidate is ranked there: neither blocked, nor excluded by a limit,
 *     nor beyond judgement
 */
record World(double[][] values, boolean[] ranked) {

  /** What each candidate is worth under some weights; negative infinity when it is not ranked. */
  double[] sums(double[] weights) {
    double[] sums = new double[ranked.length];
    for (int c = 0; c < weights.length; c++) {
      if (weights[c] > 0) {
        add(weights[c], values[c], sums);
      }
    }
    for (int i = 0; i < sums.length; i++) {
      sums[i] = ranked[i] ? sums[i] : Double.NEGATIVE_INFINITY;
    }
    return sums;
  }

  private static void add(double weight, double[] column, double[] sums) {
    for (int i = 0; i < sums.length; i++) {
      sums[i] += weight * column[i];
    }
  }

  /** Some of the candidates, in the order of their numbers. */
  World only(int[] candidates) {
    double[][] chosen = new double[values.length][];
    boolean[] there = new boolean[candidates.length];
    for (int c = 0; c < chosen.length; c++) {
      double[] column = values[c];
      chosen[c] =
          column == null ? null : Arrays.stream(candidates).mapToDouble(i -> column[i]).toArray();
    }
    for (int i = 0; i < there.length; i++) {
      there[i] = ranked[candidates[i]];
    }
    return new World(chosen, there);
  }
}
