package plyworth.workbench.desktop.session;

import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.host.Digits;
import plyworth.workbench.ranking.GroupCounts;

/** The line at the foot of the window. */
final class StatusText {

  private StatusText() {}

  static String of(Ranked ranked) {
    GroupCounts counts = ranked.ranking().counts();
    return Words.of(
        "status.ranked",
        counts.total(),
        counts.ranked(),
        counts.blocked(),
        counts.excluded(),
        counts.cannotBeJudged() + counts.open(),
        Digits.sensible(ranked.scored().seconds()));
  }
}
