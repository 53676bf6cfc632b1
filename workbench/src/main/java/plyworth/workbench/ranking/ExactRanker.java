package plyworth.workbench.ranking;

/** Finds the best candidates of one study, exactly, under one value model after another. */
public interface ExactRanker {

  /**
   * Ranks.
   *
   * @param k how many of the best to list
   */
  Ranking refine(ValueModel model, int k);
}
