package plyworth.workbench.desktop.session;

import java.util.List;
import java.util.Locale;
import java.util.OptionalLong;
import java.util.stream.LongStream;
import plyworth.shared.structure.Structure;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.ranking.RankedCandidate;

/** What candidates are called in a ranking. */
public final class CandidateName {

  private CandidateName() {}

  /**
   * Its rank, today's, or that it has none. Counts through the table where it is not among the best
   * listed.
   */
  public static String of(Ranked ranked, Structure structure) {
    OptionalLong path = ranked.scored().compiled().paths().pathOf(structure);
    if (structure.equals(ranked.study().baseline())) {
      return Words.of("name.today");
    }
    return path.isPresent() ? of(ranked, path.getAsLong()) : Words.of("name.off-list");
  }

  /** The same of the selected structure, whose rank is known. */
  public static String of(Detail detail) {
    if (detail.structure().equals(detail.ranked().study().baseline())) {
      return Words.of("name.today");
    }
    return detail.rank().isPresent()
        ? Words.of("name.rank", detail.rank().getAsLong())
        : Words.of(detail.sheet().onOffer() ? "name.unranked" : "name.off-list");
  }

  /**
   * Its rank, or that it has none. Counts through the table where it is not among the best listed.
   */
  public static String of(Ranked ranked, long path) {
    List<RankedCandidate> best = ranked.best();
    OptionalLong listed =
        LongStream.range(0, best.size()).filter(i -> best.get((int) i).path() == path).findFirst();
    OptionalLong rank =
        listed.isPresent()
            ? OptionalLong.of(listed.getAsLong() + 1)
            : ranked.ranking().isCounted() ? ranked.ranking().rankOf(path) : OptionalLong.empty();
    return rank.isPresent() ? Words.of("name.rank", rank.getAsLong()) : Words.of("name.unranked");
  }

  /** A share in per cent; a dash where it is unknown. */
  public static String percent(double share, int digits) {
    return Double.isNaN(share)
        ? "–"
        : String.format(Locale.ROOT, "%." + digits + "f %%", 100 * share);
  }
}
