package plyworth.workbench.engine.search;

import java.util.concurrent.atomic.AtomicReference;
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
  private final SumColumns sums;
  private Regions regions;

  /**
   * Gets ready to work out what completions can add, once it is asked for.
   *
   * @param tabulation the candidates and the plugins that score them
   */
  public SearchSpace(Tabulation tabulation, SearchSettings settings) {
    this.tabulation = tabulation;
    this.settings = settings;
    sums = new SumColumns(tabulation);
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
    AtomicReference<Search> begun = new AtomicReference<>();
    tabulation.watched(
        () -> {
          begun.set(search(goal, progress));
          begun.get().run(hopefuls);
        });
    return begun.get().effort((System.nanoTime() - start) * 1e-9);
  }

  Tabulation tabulation() {
    return tabulation;
  }

  SearchSettings settings() {
    return settings;
  }

  private Search search(Goal goal, Progress progress) {
    SumBound bound = SumBound.of(tabulation, sums, goal);
    return bound.everything()
        ? new SumSearch(this, bound, goal, progress)
        : new RegionSearch(this, bound, goal, progress);
  }

  /** Worked out when first asked for: where everything adds up nobody asks. */
  synchronized Regions regions() {
    if (regions == null) {
      regions = new Regions(tabulation, settings.bundles());
    }
    return regions;
  }
}
