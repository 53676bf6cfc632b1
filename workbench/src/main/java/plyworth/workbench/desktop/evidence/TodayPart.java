package plyworth.workbench.desktop.evidence;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import plyworth.shared.scoring.Measurement;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.TodayReview;
import plyworth.workbench.chart.ChartTable;
import plyworth.workbench.desktop.session.Session;
import plyworth.workbench.desktop.word.CalibrationWords;
import plyworth.workbench.desktop.word.CriterionWords;
import plyworth.workbench.desktop.word.UnitText;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.host.Digits;

/** What was measured on today's pack, beside what is predicted, and what that corrects. */
final class TodayPart {

  private final ReadingList list =
      new ReadingList("today", () -> ask(-1), this::ask, this::remove, row -> {});
  private Session session;

  JComponent component() {
    return list.component();
  }

  /** What the keyboard begins with. */
  JComponent first() {
    return list.first();
  }

  private void ask(int row) {
    session
        .ranked()
        .ifPresent(
            ranked -> {
              TodaySubject subject = new TodaySubject(session, ranked, row);
              ReadingDialog.ask(
                  SwingUtilities.getWindowAncestor(list.component()),
                  "today.title",
                  subject,
                  subject.before());
            });
  }

  private void remove(int row) {
    session.change(
        () -> Words.of("edit.measurement.removed"), study -> TodaySubject.without(study, row));
  }

  void show(Session now) {
    session = now;
    List<Measurement> measured = now.study().orElseThrow().measurements();
    Optional<Ranked> ranked = now.ranked();
    list.canAdd(ranked.isPresent());
    TodayReview review = now.today();
    boolean known =
        ranked.isPresent()
            && review.lines().stream().map(TodayReview.Line::measurement).toList().equals(measured);
    List<List<String>> rows =
        IntStream.range(0, measured.size())
            .mapToObj(
                i -> known ? row(ranked.get(), review.lines().get(i)) : waiting(measured.get(i)))
            .toList();
    list.show(new ChartTable(columns(), rows), said(measured, known, ranked, review));
  }

  private static String said(
      List<Measurement> measured, boolean known, Optional<Ranked> ranked, TodayReview review) {
    if (measured.isEmpty()) {
      return Words.of("today.none");
    }
    return known
        ? CalibrationWords.said(ranked.orElseThrow(), review)
        : Words.of("candidate.waiting");
  }

  private static List<ChartTable.Column> columns() {
    return List.of(
        ChartTable.Column.words(Words.of("today.column.figure")),
        ChartTable.Column.figures(Words.of("measured.column.measured")),
        ChartTable.Column.words(Words.of("measured.column.unit")),
        ChartTable.Column.figures(Words.of("measured.column.predicted")),
        ChartTable.Column.figures(Words.of("measured.column.ratio")),
        ChartTable.Column.figures(Words.of("today.column.calibrated")),
        ChartTable.Column.words(Words.of("today.column.corrects")),
        ChartTable.Column.words(Words.of("measured.column.how")));
  }

  private static List<String> row(Ranked ranked, TodayReview.Line line) {
    Measurement measurement = line.measurement();
    String ratio = ReadingWords.ratio(line.ratio());
    return List.of(
        line.criterion()
            .map(criterion -> CriterionWords.title(ranked, criterion))
            .orElse(measurement.figure()),
        ReadingWords.figure(measurement),
        UnitText.of(measurement.unit()),
        Digits.sensible(line.predicted()),
        line.wantsNote() ? ratio + " ▲" : ratio,
        line.corrects().isEmpty() ? "–" : Digits.sensible(line.calibrated()),
        line.corrects().isEmpty()
            ? Words.of("today.corrects.nothing")
            : Words.of("today.corrects", line.corrects().size()),
        ReadingWords.how(measurement));
  }

  private static List<String> waiting(Measurement measurement) {
    return List.of(
        measurement.figure(),
        ReadingWords.figure(measurement),
        UnitText.of(measurement.unit()),
        "…",
        "…",
        "…",
        "…",
        ReadingWords.how(measurement));
  }
}
