package plyworth.workbench.engine.search;

import plyworth.workbench.engine.table.Chunk;

/** What a search looks for: the best few under some measure of worth. */
public interface Goal {

  /**
   * The most that a candidate can be worth whose figures lie between two ends.
   *
   * @param low lower ends, one for each criterion; NaN when nothing is known of the figure
   * @param high upper ends
   * @return −∞ when no such candidate is of interest
   */
  double atMost(double[] low, double[] high);

  /** Whether a candidate from {@code path} on that is worth at most {@code value} is wanted. */
  boolean admits(double value, long path);

  /**
   * Looks at a candidate before the search, to know what the others have to reach. The search comes
   * upon it again.
   *
   * @param path its path number
   * @param scored its figures, in the only row
   */
  void expect(long path, Chunk scored);

  /**
   * Takes candidates that are scored.
   *
   * @param path path number of the first row
   */
  void take(long path, Chunk scored);
}
