package plyworth.workbench.ranking;

import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.LongFunction;
import java.util.function.Supplier;
import plyworth.workbench.engine.search.SearchEffort;
import plyworth.workbench.engine.search.SearchSettings;
import plyworth.workbench.engine.search.SearchSpace;
import plyworth.workbench.engine.table.Progress;
import plyworth.workbench.engine.table.Tabulation;

/**
 * Finds the best by a search, for graphs whose table does not fit. The answer is that of a {@link
 * Ranker}, but nothing is counted. Of the last answer only its path numbers are kept, to begin the
 * next search with: after a small change of the weights most of them are still among the best.
 */
public final class SearchRanker implements ExactRanker {

  private static final long[] NONE = {};

  private final SearchSpace space;
  private final ExactScores exact;
  private final Progress progress;
  private final AtomicReference<long[]> best = new AtomicReference<>(NONE);
  private final AtomicReference<long[]> bestOfEach = new AtomicReference<>(NONE);

  /**
   * A ranker that searches.
   *
   * @param tabulation the candidates and the plugins that score them
   * @param exact full figures of single candidates
   * @param progress told how many candidates are settled; may cancel
   */
  public SearchRanker(Tabulation tabulation, ExactScores exact, Progress progress) {
    this(tabulation, exact, progress, SearchSettings.standard(tabulation.size().budget()));
  }

  /** The same with other settings. */
  SearchRanker(
      Tabulation tabulation, ExactScores exact, Progress progress, SearchSettings settings) {
    space = new SearchSpace(tabulation, settings);
    this.exact = exact;
    this.progress = progress;
  }

  @Override
  public Ranking refine(ValueModel model, int k) {
    return search(model, k, () -> new BestK(k), best);
  }

  @Override
  public Ranking bestOfEach(ValueModel model, int k, LongFunction<?> kind) {
    return search(model, k, () -> new BestOfEach(k, kind), bestOfEach);
  }

  private Ranking search(
      ValueModel model, int k, Supplier<Shortlist> empty, AtomicReference<long[]> last) {
    SearchGoal goal = new SearchGoal(model, k, empty, exact);
    SearchEffort effort = space.search(goal, last.get(), progress);
    List<RankedCandidate> found = goal.best();
    last.set(found.stream().mapToLong(RankedCandidate::path).toArray());
    return Ranking.searched(model, found, effort);
  }
}
