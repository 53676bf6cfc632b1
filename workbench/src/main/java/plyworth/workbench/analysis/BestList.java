package plyworth.workbench.analysis;

import java.util.List;
import java.util.OptionalLong;
import java.util.stream.IntStream;
import plyworth.workbench.ranking.RankedCandidate;

/**
 * The candidates that are shown of a ranking, best first.
 *
 * @param eachKind whether it holds the best of each kind alone, so that gauge variants of one
 *     structure do not fill it
 * @param entries the candidates
 */
public record BestList(boolean eachKind, List<Entry> entries) {

  /**
   * A candidate.
   *
   * @param rank its rank among all; empty where ranks were not counted or a bounded figure leaves
   *     it open
   * @param candidate the candidate, with every figure in full
   */
  public record Entry(OptionalLong rank, RankedCandidate candidate) {}

  /** Copies the list. */
  public BestList {
    entries = List.copyOf(entries);
  }

  /** The best that are ranked, however alike; not more than the ranking lists. */
  public static BestList all(Ranked ranked, int n) {
    List<RankedCandidate> best = ranked.best();
    return new BestList(
        false,
        IntStream.range(0, Math.min(n, best.size()))
            .mapToObj(i -> new Entry(OptionalLong.of(i + 1), best.get(i)))
            .toList());
  }

  /** The best of each of the best few kinds. */
  public static BestList kinds(Ranked ranked, int n) {
    return new BestList(
        true,
        ranked.bestOfEach(n, ranked.kinds()::of).stream()
            .map(candidate -> new Entry(ranked.rankOf(candidate), candidate))
            .toList());
  }
}
