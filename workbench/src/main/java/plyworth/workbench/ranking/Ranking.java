package plyworth.workbench.ranking;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import plyworth.workbench.engine.search.SearchEffort;
import plyworth.workbench.engine.table.CandidateTable;

/**
 * The best candidates under a value model, and how all of them stand when they were counted. What
 * was searched rather than tabulated is not counted.
 */
public final class Ranking {

  private final ValueModel model;
  private final List<RankedCandidate> best;
  private final Optional<RankCounter> counter;
  private final Optional<SearchEffort> search;

  private Ranking(
      ValueModel model,
      List<RankedCandidate> best,
      Optional<RankCounter> counter,
      Optional<SearchEffort> search) {
    this.model = model;
    this.best = List.copyOf(best);
    this.counter = counter;
    this.search = search;
  }

  static Ranking counted(ValueModel model, List<RankedCandidate> best, RankCounter counter) {
    return new Ranking(model, best, Optional.of(counter), Optional.empty());
  }

  static Ranking searched(ValueModel model, List<RankedCandidate> best, SearchEffort effort) {
    return new Ranking(model, best, Optional.empty(), Optional.of(effort));
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

  /** What the search for the best took; empty when they were found in a table. */
  public Optional<SearchEffort> search() {
    return search;
  }

  /** Whether every candidate was looked at, so that counts and ranks are known. */
  public boolean isCounted() {
    return counter.isPresent();
  }

  /**
   * How many candidates stand in each group.
   *
   * @throws IllegalStateException when they were not counted
   */
  public GroupCounts counts() {
    return counter().counts();
  }

  /** Whether every candidate was there to be ranked; a search that was cancelled is not whole. */
  public boolean complete() {
    return counter.map(RankCounter::complete).or(() -> search.map(SearchEffort::complete)).get();
  }

  /**
   * The rank of a candidate by the values of the table, 1 for the best; empty when it is not ranked
   * or not in the table. Counts through the table.
   *
   * @throws IllegalStateException when the candidates were not counted
   */
  public OptionalLong rankOf(long path) {
    return counter().rankOf(path);
  }

  /**
   * How many ranked candidates are worth more than a value. Counts through the table.
   *
   * @throws IllegalStateException when the candidates were not counted
   */
  public long worthMoreThan(double value) {
    return counter().before(value, 0);
  }

  /**
   * How many candidates of a run of path numbers are ranked; those that were not scored are not.
   *
   * @param from the first path number
   * @param to the path number after the last
   * @throws IllegalStateException when the candidates were not counted
   */
  public long rankedBetween(long from, long to) {
    return counter().rankedBetween(from, to);
  }

  private RankCounter counter() {
    return counter.orElseThrow(
        () -> new IllegalStateException("the candidates were searched, not counted"));
  }
}
