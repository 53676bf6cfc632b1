package plyworth.workbench.ranking;

import java.util.function.LongFunction;

/** Finds the best candidates of one study, exactly, under one value model after another. */
public interface ExactRanker {

  /**
   * Ranks.
   *
   * @param k how many of the best to list
   */
  Ranking refine(ValueModel model, int k);

  /**
   * Ranks, and lists the best candidate of each kind alone, so that many alike do not fill the
   * list.
   *
   * @param k how many kinds to list, at least one
   * @param kind the kind of a candidate by its path; kinds are compared by {@code equals}
   */
  Ranking bestOfEach(ValueModel model, int k, LongFunction<?> kind);
}
