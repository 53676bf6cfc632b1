package plyworth.workbench.ranking;

import java.util.stream.IntStream;

/** Sums of weighted values, added up in the order of the criteria everywhere. */
final class Weights {

  private Weights() {}

  /** The criteria with weight. */
  static int[] counting(ValueModel model) {
    return IntStream.range(0, model.criteria().size())
        .filter(c -> model.criteria().get(c).counts())
        .toArray();
  }

  /**
   * For each zone Σ weight · value.
   *
   * @param values criterion by zone
   */
  static double[] sums(ValueModel model, double[][] values) {
    double[] sums = new double[values.length == 0 ? 1 : values[0].length];
    for (int c : counting(model)) {
      double weight = model.criteria().get(c).weight();
      for (int z = 0; z < sums.length; z++) {
        sums[z] += weight * values[c][z];
      }
    }
    return sums;
  }
}
