package plyworth.workbench.ranking;

/**
 * Scores single candidates in full, for the few that the columns of a table cannot decide. Safe
 * from several threads.
 */
@FunctionalInterface
public interface ExactScores {

  /**
   * The figures of a candidate, one for each criterion of the table in order; NaN when unknown or
   * not applicable.
   */
  double[] figures(long path);
}
