package plyworth.workbench.desktop.evidence;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import plyworth.shared.scoring.Measurement;
import plyworth.shared.structure.Structure;
import plyworth.shared.study.CandidateResult;
import plyworth.workbench.analysis.Labels;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.ResultsReview;
import plyworth.workbench.chart.ChartTable;
import plyworth.workbench.desktop.part.Background;
import plyworth.workbench.desktop.session.Session;
import plyworth.workbench.desktop.word.CriterionWords;
import plyworth.workbench.desktop.word.Reason;
import plyworth.workbench.desktop.word.UnitText;
import plyworth.workbench.desktop.word.Words;

/** What laboratories and trials found of candidates, beside what is predicted of them. */
final class CandidateResultsPart {

  private final ReadingList list =
      new ReadingList(
          "candidate-results", () -> ask(-1), this::ask, this::remove, row -> select(row));
  private final Background work = new Background();
  private Session session;
  private Ranked asked;
  private List<CandidateResult> askedOf = List.of();
  private List<ResultsReview.Compared> compared = List.of();

  JComponent component() {
    return list.component();
  }

  private void ask(int row) {
    Optional<Structure> structure =
        row < 0 ? session.selection().structure() : Optional.of(results().get(row).structure());
    if (structure.isPresent() && session.ranked().isPresent()) {
      CandidateSubject subject =
          new CandidateSubject(session, session.ranked().get(), structure.get(), row);
      ReadingDialog.ask(
          SwingUtilities.getWindowAncestor(list.component()),
          "candidate-results.title",
          subject,
          subject.before());
    }
  }

  private List<CandidateResult> results() {
    return session.study().orElseThrow().results().candidates();
  }

  private void remove(int row) {
    session.change(
        () -> Words.of("edit.result.removed"),
        study -> CandidateSubject.with(study, Optional.empty(), row));
  }

  /** The measured candidate is shown beside. */
  private void select(int row) {
    if (row >= 0 && row < results().size()) {
      session.select(results().get(row).structure());
    }
  }

  /** Shows the readings; predictions follow, which take their time. */
  void show(Session now) {
    session = now;
    list.canAdd(now.ranked().isPresent() && now.selection().structure().isPresent());
    List<CandidateResult> results = results();
    now.ranked()
        .filter(ranked -> !results.isEmpty())
        .filter(ranked -> ranked.study().results().candidates().equals(results))
        .filter(ranked -> ranked != asked || !results.equals(askedOf))
        .ifPresent(ranked -> predict(ranked, results));
    fill();
  }

  private void predict(Ranked ranked, List<CandidateResult> results) {
    asked = ranked;
    askedOf = results;
    compared = List.of();
    work.run(
        stale -> ResultsReview.candidates(ranked.scored().compiled().prepared(), results),
        found -> {
          compared = found;
          fill();
        },
        reason -> list.say(Reason.of(reason)));
  }

  private void fill() {
    List<CandidateResult> results = results();
    boolean known = results.equals(askedOf) && compared.size() == results.size();
    List<List<String>> rows =
        IntStream.range(0, results.size())
            .mapToObj(
                i -> row(results.get(i), known ? Optional.of(compared.get(i)) : Optional.empty()))
            .toList();
    list.show(
        new ChartTable(columns(), rows),
        Words.of(rows.isEmpty() ? "candidate-results.none" : "candidate-results.note"));
  }

  private static List<ChartTable.Column> columns() {
    return List.of(
        ChartTable.Column.words(Words.of("candidate-results.column.figure")),
        ChartTable.Column.figures(Words.of("measured.column.measured")),
        ChartTable.Column.words(Words.of("measured.column.unit")),
        ChartTable.Column.figures(Words.of("measured.column.predicted")),
        ChartTable.Column.figures(Words.of("measured.column.ratio")),
        ChartTable.Column.words(Words.of("candidate-results.column.verdict")),
        ChartTable.Column.words(Words.of("measured.column.how")),
        ChartTable.Column.words(Words.of("candidate-results.column.structure")));
  }

  private List<String> row(CandidateResult result, Optional<ResultsReview.Compared> prediction) {
    Measurement reading = result.reading();
    return List.of(
        title(reading.figure()),
        ReadingWords.figure(reading),
        UnitText.of(reading.unit()),
        prediction.map(c -> ReadingWords.estimate(c.predicted())).orElse("…"),
        prediction.map(c -> ReadingWords.ratio(c.ratio())).orElse("…"),
        prediction.map(CandidateResultsPart::verdict).orElse("…"),
        ReadingWords.how(reading),
        Labels.brief(result.structure()));
  }

  private String title(String id) {
    return session
        .ranked()
        .flatMap(
            ranked ->
                ranked
                    .scored()
                    .compiled()
                    .prepared()
                    .bound()
                    .criterion(id)
                    .map(criterion -> CriterionWords.title(ranked, criterion)))
        .orElse(id);
  }

  private static String verdict(ResultsReview.Compared compared) {
    return compared
        .agrees()
        .map(agrees -> Words.of(agrees ? "candidate-results.within" : "candidate-results.outside"))
        .orElseGet(() -> Words.of("candidate-results.unpredicted"));
  }
}
