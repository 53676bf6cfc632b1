package plyworth.workbench.ranking;

import java.util.List;

/**
 * How a candidate fares under many weights.
 *
 * @param path path number of the candidate
 * @param first share of the weights under which it comes first, 0 to 1; level candidates share
 *     their ranks
 * @param among share of the weights under which it is among the first few, counted likewise
 * @param centralWeights mean of the weights that put it first, one for each criterion of the value
 *     model; empty when none do
 */
public record RankShare(long path, double first, double among, List<Double> centralWeights) {

  /** Copies the weights. */
  public RankShare {
    centralWeights = List.copyOf(centralWeights);
  }
}
