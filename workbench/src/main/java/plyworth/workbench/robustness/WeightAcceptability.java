package plyworth.workbench.robustness;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import plyworth.workbench.engine.table.Progress;
import plyworth.workbench.ranking.RankShare;

/**
 * How often each of all candidates comes first, and among the first few, while weights alone are
 * uncertain: figures stand at their typical values, the unknown at its worst (rank acceptability,
 * Lahdelma and Salminen, Operations Research 49(3), 2001).
 *
 * @param shares the candidates that are among the first few under some of the weights, the most
 *     often first before the others; the rest never are
 * @param doubt what is taken to be known of the weights
 * @param seed the draws repeat with the seed
 */
public record WeightAcceptability(List<RankShare> shares, Doubt doubt, long seed) {

  /** Number of draws. */
  public static final int DRAWS = 10_000;

  /** How many the first few are. */
  public static final int FEW = 10;

  /** Copies the list. */
  public WeightAcceptability {
    shares = List.copyOf(shares);
  }

  /**
   * Draws weights and ranks all candidates under each.
   *
   * @param contest a table of which some criterion counts
   * @param progress told how many draws are counted; may cancel
   * @throws java.util.concurrent.CancellationException when cancelled
   */
  public static WeightAcceptability of(Contest contest, Doubt doubt, long seed, Progress progress) {
    WeightSampler sampler = new WeightSampler(contest.weights(), doubt);
    SplittableRandom random = new SplittableRandom(seed);
    double[][] weights =
        Stream.generate(() -> sampler.draw(random)).limit(DRAWS).toArray(double[][]::new);
    List<RankShare> shares = contest.ranker().rankShares(contest.model(), weights, FEW, progress);
    return new WeightAcceptability(shares, doubt, seed);
  }

  /** The standard error of a share of the draws. */
  public double error(double share) {
    return Chances.error(share, DRAWS);
  }
}
