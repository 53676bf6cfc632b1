package plyworth.workbench.engine.search;

/**
 * How a search trades its own work against scoring. Nothing here changes what is found.
 *
 * @param few a region of at most this many candidates is scored rather than opened
 * @param bundles bundles of what can follow a kind; more bound tighter and cost more
 * @param budget bytes that what waits may take; beyond it the search goes depth-first
 */
public record SearchSettings(int few, int bundles, long budget) {

  /** What proved quick on studies of millions of candidates. */
  public static SearchSettings standard(long budget) {
    return new SearchSettings(64, 8, budget);
  }
}
