package plyworth.workbench.desktop.word;

import java.util.stream.Collectors;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.TodayReview;
import plyworth.workbench.host.Digits;

/** Whether the ranking is calibrated by measurements of today's pack, and by which. */
public final class CalibrationWords {

  private CalibrationWords() {}

  /** In a few words, for the foot of the window. */
  public static String brief(TodayReview review) {
    if (review.lines().isEmpty()) {
      return Words.of("calibration.none");
    }
    int correcting = review.correcting().size();
    return correcting == 0
        ? Words.of("calibration.nothing-corrected")
        : Words.of("calibration.by-count", correcting);
  }

  /** In full, with every measurement that corrects something. */
  public static String said(Ranked ranked, TodayReview review) {
    if (review.lines().isEmpty()) {
      return Words.of("calibration.none");
    }
    if (review.correcting().isEmpty()) {
      return Words.of("calibration.nothing-corrected") + " " + Words.of("calibration.why-nothing");
    }
    String by =
        review.correcting().stream()
            .map(line -> by(ranked, line))
            .collect(Collectors.joining("; "));
    String calibrated = Words.of("calibration.by", by, corrected(ranked, review));
    String rest =
        review.correcting().size() == review.lines().size()
            ? ""
            : " " + Words.of("calibration.why-nothing");
    String striking =
        review.lines().stream().anyMatch(TodayReview.Line::wantsNote)
            ? " " + Words.of("calibration.striking")
            : "";
    return calibrated + rest + striking;
  }

  private static String corrected(Ranked ranked, TodayReview review) {
    return review.calibrated().stream()
        .flatMap(id -> ranked.scored().compiled().prepared().bound().criterion(id).stream())
        .map(criterion -> CriterionWords.title(ranked, criterion))
        .collect(Collectors.joining(", "));
  }

  private static String by(Ranked ranked, TodayReview.Line line) {
    String title =
        line.criterion()
            .map(criterion -> CriterionWords.title(ranked, criterion))
            .orElse(line.measurement().figure());
    String date = line.measurement().date();
    return Words.of(
        date.isEmpty() ? "calibration.one" : "calibration.one-dated",
        title,
        Digits.sensible(line.ratio()),
        line.measurement().method(),
        date);
  }
}
