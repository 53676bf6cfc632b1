package plyworth.workbench.desktop.material;

import java.awt.Component;
import java.util.ArrayList;
import java.util.List;
import plyworth.shared.material.Property;
import plyworth.shared.scoring.Measurement;
import plyworth.shared.study.MaterialResult;
import plyworth.shared.study.Study;
import plyworth.workbench.chart.ChartTable;
import plyworth.workbench.desktop.session.ReadFile;
import plyworth.workbench.desktop.session.Session;
import plyworth.workbench.desktop.word.MaterialNames;
import plyworth.workbench.desktop.word.PropertyNames;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.host.Digits;
import plyworth.workbench.host.Scale;
import plyworth.workbench.robustness.turn.AnswerReview;

/** Reads a list that a laboratory filled in, and takes it over after a preview. */
final class AnswersFile {

  private final Component owner;
  private final ReadFile files;

  /**
   * Files of answers.
   *
   * @param owner what the questions stand over
   */
  AnswersFile(Component owner) {
    this.owner = owner;
    files = new ReadFile(owner);
  }

  /** Asks for a file, shows what it would change, and takes it over as one edit. */
  void read(Session session) {
    Study study = session.study().orElseThrow();
    files.csv(
        session,
        (text, name) -> AnswerReview.read(text, name, study, session.installed()),
        review -> preview(session, review));
  }

  private void preview(Session session, AnswerReview review) {
    String said =
        Words.of("questions.answers-said", review.changes().size(), review.refused().size());
    new PreviewDialog(owner, said, table(review), review.refused(), () -> take(session, review))
        .open();
  }

  private static void take(Session session, AnswerReview review) {
    List<MaterialResult> readings =
        review.changes().stream().map(AnswerReview.Change::result).toList();
    session.reckonWith(
        () -> Words.of("edit.answers", readings.size()),
        study -> study.with(study.results().and(readings)));
  }

  private static ChartTable table(AnswerReview review) {
    List<List<String>> rows = new ArrayList<>();
    review.changes().forEach(change -> rows.add(row(change, review.study())));
    return new ChartTable(
        List.of(
            ChartTable.Column.words(Words.of("materials.material")),
            ChartTable.Column.words(Words.of("materials.property")),
            ChartTable.Column.words(Words.of("preview.now")),
            ChartTable.Column.words(Words.of("questions.reading")),
            ChartTable.Column.words(Words.of("preview.then")),
            ChartTable.Column.words(Words.of("questions.method"))),
        rows);
  }

  private static List<String> row(AnswerReview.Change change, Study study) {
    MaterialResult result = change.result();
    Measurement reading = result.reading();
    Scale scale =
        Scale.of(
            study
                .materialsAtHand()
                .require(result.material())
                .property(result.property())
                .map(Property::unit)
                .orElse(reading.unit()),
            false);
    return List.of(
        MaterialNames.of(study.materialsBefore().require(result.material())),
        PropertyNames.of(result.property()),
        MaterialPage.figures(change.before(), scale),
        Words.of(
                "questions.within",
                Digits.sensible(reading.value()),
                scale.symbol(),
                Digits.sensible(reading.spread()))
            .strip(),
        MaterialPage.figures(change.after(), scale),
        reading.method());
  }
}
