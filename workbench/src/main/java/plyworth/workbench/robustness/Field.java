package plyworth.workbench.robustness;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.ranking.RankedCandidate;

/**
 * The candidates whose chances are drawn: some that are named, and with them the best at typical
 * figures under the weighting and under weights drawn likewise, the first of each before the second
 * of each, up to {@link #MOST}.
 *
 * @param paths their paths, those that were let in last behind
 * @param whole whether it holds every candidate that is ranked at typical figures
 */
record Field(List<Long> paths, boolean whole) {

  /** Most candidates in a field. */
  static final int MOST = 1000;

  /** Weights drawn besides the weighting. */
  private static final int WEIGHTS = 15;

  /** Copies the list. */
  Field {
    paths = List.copyOf(paths);
  }

  /**
   * The field of a ranking.
   *
   * @param named candidates that are in it whatever they are worth
   * @param doubt what is known of the weights
   * @param seed the same weights are drawn for the same seed
   */
  static Field of(Ranked ranked, List<Long> named, Doubt doubt, long seed) {
    Contest contest = Contest.of(ranked);
    List<List<Long>> lists = new ArrayList<>();
    lists.add(best(contest));
    WeightSampler sampler = new WeightSampler(contest.weights(), doubt);
    SplittableRandom random = new SplittableRandom(~seed);
    for (int i = 0; doubt != Doubt.EXACT && i < WEIGHTS; i++) {
      lists.add(best(contest.weighing(sampler.draw(random))));
    }
    Set<Long> paths = new LinkedHashSet<>(named);
    IntStream.range(0, MOST)
        .forEach(
            rank ->
                lists.stream()
                    .filter(list -> rank < list.size() && paths.size() < MOST)
                    .forEach(list -> paths.add(list.get(rank))));
    List<Long> all = lists.get(0);
    return new Field(List.copyOf(paths), all.size() < MOST && paths.containsAll(all));
  }

  private static List<Long> best(Contest contest) {
    return contest.ranker().rank(contest.model(), MOST).best().stream()
        .map(RankedCandidate::path)
        .toList();
  }

  /** How many were let in last: the last tenth. */
  int late() {
    return paths.size() / 10;
  }
}
