package plyworth.workbench.ranking;

import java.util.function.LongFunction;
import java.util.function.Supplier;
import plyworth.workbench.engine.search.BoundedSearch;
import plyworth.workbench.engine.search.SearchEffort;
import plyworth.workbench.engine.search.SearchSettings;
import plyworth.workbench.engine.table.Progress;
import plyworth.workbench.engine.table.Tabulation;

/**
 * Finds the best by a search, for graphs whose table does not fit. The answer is that of a {@link
 * Ranker}, but nothing is counted and nothing is kept.
 */
public final class SearchRanker implements ExactRanker {

  private final Tabulation tabulation;
  private final ExactScores exact;
  private final Progress progress;
  private final SearchSettings settings;

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
    this.tabulation = tabulation;
    this.exact = exact;
    this.progress = progress;
    this.settings = settings;
  }

  @Override
  public Ranking refine(ValueModel model, int k) {
    return search(model, () -> new BestK(k));
  }

  @Override
  public Ranking bestOfEach(ValueModel model, int k, LongFunction<?> kind) {
    return search(model, () -> new BestOfEach(k, kind));
  }

  private Ranking search(ValueModel model, Supplier<Shortlist> empty) {
    SearchGoal goal = new SearchGoal(model, empty, exact);
    SearchEffort effort = BoundedSearch.run(tabulation, goal, progress, settings);
    return Ranking.searched(model, goal.best(), effort);
  }
}
