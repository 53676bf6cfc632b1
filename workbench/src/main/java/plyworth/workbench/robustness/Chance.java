package plyworth.workbench.robustness;

import java.util.List;

/**
 * How a candidate fares while weights and inputs are uncertain (stochastic multicriteria
 * acceptability analysis, Lahdelma and Salminen, Operations Research 49(3), 2001).
 *
 * @param path path number
 * @param first share of draws in which it comes first: the rank acceptability of rank 1
 * @param firstError standard error of {@code first}
 * @param amongThree share of draws in which it is among the first three
 * @param amongTen share of draws in which it is among the first ten
 * @param unranked share of draws in which it is blocked, excluded or cannot be judged
 * @param centralWeights mean of the weights that put it first, one for each criterion; empty when
 *     none did
 * @param confidence share of the draws of inputs in which it comes first under its central weights;
 *     NaN when it has none
 */
public record Chance(
    long path,
    double first,
    double firstError,
    double amongThree,
    double amongTen,
    double unranked,
    List<Double> centralWeights,
    double confidence) {

  /** Copies the weights. */
  public Chance {
    centralWeights = List.copyOf(centralWeights);
  }
}
