package plyworth.workbench.engine.search;

import java.util.function.IntToLongFunction;
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

  /**
   * The same, with some criteria left out of what the candidate is worth. They can exclude it all
   * the same.
   *
   * @param without for each criterion whether it is left out
   */
  double atMost(double[] low, double[] high, boolean[] without);

  /** Whether a criterion counts for what a candidate is worth. */
  boolean counts(int criterion);

  /** Whether a candidate can be excluded by its figures. */
  boolean excludes();

  /**
   * A line over what a criterion is worth, share of the whole included.
   *
   * @param low the least figure that is met
   * @param high the greatest
   */
  Line above(int criterion, double low, double high);

  /** Whether a candidate from {@code path} on that is worth at most {@code value} is wanted. */
  boolean admits(double value, long path);

  /**
   * Looks at candidates before the search, to know what the others have to reach. The search comes
   * upon them again.
   *
   * @param path path number of each row
   * @param scored their figures
   */
  void expect(IntToLongFunction path, Chunk scored);

  /**
   * Takes candidates that are scored.
   *
   * @param path path number of each row
   */
  void take(IntToLongFunction path, Chunk scored);
}
