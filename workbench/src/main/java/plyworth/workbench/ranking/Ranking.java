package plyworth.workbench.ranking;

import java.util.List;
import java.util.OptionalLong;
import plyworth.workbench.engine.table.CandidateTable;

/** The best candidates of a table under a value model, and how all of them stand. */
public final class Ranking {

  private final ValueModel model;
  private final List<RankedCandidate> best;
  private final GroupCounts counts;
  private final CandidateTable table;
  private final RankCounter counter;

  Ranking(
      ValueModel model,
      List<RankedCandidate> best,
      GroupCounts counts,
      CandidateTable table,
      RankCounter counter) {
    this.model = model;
    this.best = List.copyOf(best);
    this.counts = counts;
    this.table = table;
    this.counter = counter;
  }

  /** Ranks a table once; to rank it again and again, keep a {@link Ranker}. */
  public static Ranking of(CandidateTable table, ValueModel model, int k, ExactScores exact) {
    return new Ranker(table, exact).rank(model, k);
  }

  /** The value model it was ranked by. */
  public ValueModel model() {
    return model;
  }

  /** The best, highest value first, on equal values the lower path number. */
  public List<RankedCandidate> best() {
    return best;
  }

  /** How many candidates stand in each group. */
  public GroupCounts counts() {
    return counts;
  }

  /** Whether every candidate was there to be ranked. */
  public boolean complete() {
    return table.complete();
  }

  /**
   * The rank of a candidate by the values of the table, 1 for the best; empty when it is not ranked
   * or not in the table. Counts through the table.
   */
  public OptionalLong rankOf(long path) {
    return counter.rankOf(path);
  }

  /** How many ranked candidates are worth more than a value. Counts through the table. */
  public long worthMoreThan(double value) {
    return counter.before(value, 0);
  }
}
