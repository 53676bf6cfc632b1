package plyworth.workbench.command;

import java.util.Locale;
import java.util.OptionalLong;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.ranking.RankedCandidate;

/** Ranks among all candidates, for people. */
final class RankText {

  private RankText() {}

  /** The rank of a candidate; a dash where ranks were not counted. */
  static String of(Ranked ranked, RankedCandidate candidate) {
    int place = ranked.best().indexOf(candidate);
    return place >= 0 ? Integer.toString(place + 1) : of(rank(ranked, candidate.path()));
  }

  private static String of(OptionalLong rank) {
    return rank.isPresent() ? String.format(Locale.ROOT, "%,d", rank.getAsLong()) : "–";
  }

  /** The rank of a path; empty where ranks were not counted. */
  static OptionalLong rank(Ranked ranked, long path) {
    return ranked.ranking().isCounted() ? ranked.ranking().rankOf(path) : OptionalLong.empty();
  }
}
