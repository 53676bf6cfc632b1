package plyworth.workbench.robustness;

import java.util.BitSet;

/**
 * What one draw of weights and inputs says.
 *
 * @param weights one for each criterion; they add up to 1
 * @param few the candidates among the first ten, level ones included
 * @param first the share of each in the first rank
 * @param three in the first three
 * @param ten in the first ten
 * @param unranked the candidates that are not ranked
 * @param rivals the candidates that may come first under other weights
 * @param world what these rivals are worth, in their order
 */
record Sample(
    double[] weights,
    int[] few,
    double[] first,
    double[] three,
    double[] ten,
    BitSet unranked,
    int[] rivals,
    World world) {

  /**
   * A draw.
   *
   * @param span between what the weights lie that may be asked about afterwards
   */
  static Sample of(double[] weights, WeightSpan span, World world) {
    Places places = Places.of(world.sums(weights));
    int[] few = places.few();
    double[][] shares = new double[3][few.length];
    for (int i = 0; i < few.length; i++) {
      shares[0][i] = places.within(few[i], 1);
      shares[1][i] = places.within(few[i], 3);
      shares[2][i] = places.within(few[i], Places.FEW);
    }
    BitSet unranked = new BitSet();
    for (int i = 0; i < world.ranked().length; i++) {
      unranked.set(i, !world.ranked()[i]);
    }
    int[] rivals = span.rivals(world, places.leader());
    return new Sample(
        weights, few, shares[0], shares[1], shares[2], unranked, rivals, world.only(rivals));
  }
}
