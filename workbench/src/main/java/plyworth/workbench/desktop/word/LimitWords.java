package plyworth.workbench.desktop.word;

import plyworth.shared.study.Limit;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.host.BoundCriterion;
import plyworth.workbench.host.Digits;
import plyworth.workbench.ranking.Weighed;

/** How a limit is written on screen. */
public final class LimitWords {

  private LimitWords() {}

  /** The limit in words; its criterion by id when no plugin at hand knows it. */
  public static String of(Ranked ranked, Limit limit) {
    return ranked.ranking().model().criteria().stream()
        .map(Weighed::criterion)
        .filter(c -> c.id().equals(limit.criterion()))
        .findFirst()
        .map(c -> sentence(limit, CriterionWords.title(ranked, c), ending(ranked, c, limit)))
        .orElseGet(() -> sentence(limit, limit.criterion(), Digits.sensible(limit.figure())));
  }

  /** What the criterion of a limit is called; its id when no plugin at hand knows it. */
  public static String criterion(Ranked ranked, Limit limit) {
    return ranked.ranking().model().criteria().stream()
        .map(Weighed::criterion)
        .filter(c -> c.id().equals(limit.criterion()))
        .findFirst()
        .map(c -> CriterionWords.title(ranked, c))
        .orElse(limit.criterion());
  }

  private static String ending(Ranked ranked, BoundCriterion criterion, Limit limit) {
    String figure = CriterionWords.figure(ranked, criterion, limit.figure());
    return (figure + " " + CriterionWords.unit(criterion)).strip();
  }

  private static String sentence(Limit limit, String criterion, String figure) {
    boolean most = limit.bound() == Limit.Bound.AT_MOST;
    return Words.of(most ? "limits.at-most" : "limits.at-least", criterion, figure, limit.reason())
        .strip();
  }
}
