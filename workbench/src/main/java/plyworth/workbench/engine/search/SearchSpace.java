package plyworth.workbench.engine.search;

import plyworth.workbench.engine.table.Progress;
import plyworth.workbench.engine.table.Tabulation;

/**
 * The candidates of a study, ready to be searched again and again: what completions can still add,
 * and what plugins make of it, is worked out once, since it depends neither on weights nor on
 * limits.
 */
public final class SearchSpace {

  private final Tabulation tabulation;
  private final SearchSettings settings;
  private final Bundles bundles;
  private final KnownSpans known;

  /**
   * Works out what completions can add.
   *
   * @param tabulation the candidates and the plugins that score them
   */
  public SearchSpace(Tabulation tabulation, SearchSettings settings) {
    this.tabulation = tabulation;
    this.settings = settings;
    bundles =
        Bundles.of(
            tabulation.graph(),
            tabulation.contributions(),
            tabulation.layout(),
            settings.bundles());
    known = new KnownSpans(settings.bundles(), tabulation.plugins().criteria().size());
  }

  /**
   * Searches until the goal wants nothing that is left.
   *
   * @param hopefuls path numbers of candidates likely to be good; they are only shown to the goal
   *     first, and what is found doesn't depend on them
   * @param progress told how many candidates are settled; may cancel
   * @throws plyworth.workbench.engine.table.ScoringFault when a plugin throws, gives what cannot be
   *     or does not answer
   */
  public SearchEffort search(Goal goal, long[] hopefuls, Progress progress) {
    long start = System.nanoTime();
    BoundedSearch search = new BoundedSearch(tabulation, bundles, known, goal, progress, settings);
    tabulation.watched(() -> search.run(hopefuls));
    return search.effort((System.nanoTime() - start) * 1e-9);
  }
}
