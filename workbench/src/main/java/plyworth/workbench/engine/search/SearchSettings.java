package plyworth.workbench.engine.search;

/**
 * How a search trades its own work against scoring. Nothing here changes what is found.
 *
 * @param few a prefix with at most this many completions is scored rather than opened
 * @param bundles bundles of completions per node; more bound tighter and cost more
 * @param budget bytes that waiting prefixes may take; beyond it the search goes depth-first
 */
public record SearchSettings(int few, int bundles, long budget) {

  /** What proved quick on studies of millions of candidates. */
  public static SearchSettings standard(long budget) {
    return new SearchSettings(256, 4, budget);
  }
}
