package plyworth.workbench.desktop;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.host.Digits;
import plyworth.workbench.ranking.GroupCounts;

/** The line at the foot of the window. */
final class StatusText {

  private StatusText() {}

  static String of(Ranked ranked, Set<String> leftOut) {
    List<String> sentences = new ArrayList<>();
    GroupCounts counts = ranked.ranking().counts();
    if (ranked.ranking().complete()) {
      sentences.add(
          Words.of(
              "status.ranked",
              counts.total(),
              counts.ranked(),
              counts.blocked(),
              counts.excluded(),
              counts.cannotBeJudged() + counts.open(),
              Digits.sensible(ranked.scored().seconds())));
    } else {
      sentences.add(
          Words.of(
              "status.partial",
              counts.total(),
              ranked.scored().table().total(),
              counts.ranked(),
              counts.blocked()));
    }
    if (ranked.best().isEmpty()) {
      sentences.add(Words.of("status.none-ranked"));
    }
    List<String> out = new ArrayList<>(leftOut);
    ranked.scored().faults().forEach(f -> out.add(f.name() + " (" + f.reason() + ")"));
    if (!out.isEmpty()) {
      sentences.add(Words.of("status.left-out", String.join(", ", out)));
    }
    return String.join("  ", sentences);
  }
}
