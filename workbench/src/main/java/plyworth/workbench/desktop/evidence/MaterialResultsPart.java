package plyworth.workbench.desktop.evidence;

import java.awt.Font;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import plyworth.shared.material.Material;
import plyworth.shared.material.Property;
import plyworth.shared.scoring.Explanation;
import plyworth.shared.study.MaterialResult;
import plyworth.shared.study.Study;
import plyworth.workbench.analysis.ResultsReview;
import plyworth.workbench.chart.ChartTable;
import plyworth.workbench.desktop.candidate.ExplanationFigure;
import plyworth.workbench.desktop.part.StackPanel;
import plyworth.workbench.desktop.session.Session;
import plyworth.workbench.desktop.word.MaterialNames;
import plyworth.workbench.desktop.word.UnitText;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.host.Digits;

/** What laboratories found of materials, and how each reading moved the figure of the study. */
final class MaterialResultsPart {

  private final StackPanel panel = new StackPanel();
  private final ReadingList list =
      new ReadingList(
          "material-results", () -> ask(-1), this::ask, this::remove, row -> showFigure());
  private final JTextArea figures = StackPanel.words("", Font.PLAIN);
  private final StackPanel drawing = new StackPanel();
  private Session session;
  private List<ResultsReview.Moved> moved = List.of();
  private ResultsReview.Moved drawn;

  MaterialResultsPart() {
    figures.setName("estimate-figures");
    figures.setBorder(BorderFactory.createEmptyBorder(6, 10, 2, 10));
    panel.add(list.component());
    panel.add(figures);
    panel.add(drawing);
    draw(null);
  }

  JComponent component() {
    return panel;
  }

  private void ask(int row) {
    MaterialSubject subject = new MaterialSubject(session, row);
    ReadingDialog.ask(
        SwingUtilities.getWindowAncestor(panel),
        "material-results.title",
        subject,
        subject.before());
  }

  private void remove(int row) {
    session.change(
        () -> Words.of("edit.result.removed"),
        study -> MaterialSubject.with(study, Optional.empty(), row));
  }

  void show(Session now) {
    session = now;
    Study study = now.study().orElseThrow();
    List<MaterialResult> results = study.results().materials();
    moved = ResultsReview.materials(study);
    List<List<String>> rows =
        results.stream().map(result -> row(study, result, of(result).orElseThrow())).toList();
    list.show(
        new ChartTable(columns(), rows),
        Words.of(rows.isEmpty() ? "material-results.none" : "material-results.note"));
    showFigure();
  }

  private Optional<ResultsReview.Moved> of(MaterialResult result) {
    return moved.stream()
        .filter(m -> m.material().equals(result.material()))
        .filter(m -> m.property().equals(result.property()))
        .filter(m -> Double.compare(m.at(), result.at()) == 0)
        .findFirst();
  }

  private static List<ChartTable.Column> columns() {
    return List.of(
        ChartTable.Column.words(Words.of("material-results.column.figure")),
        ChartTable.Column.figures(Words.of("measured.column.measured")),
        ChartTable.Column.words(Words.of("measured.column.unit")),
        ChartTable.Column.figures(Words.of("material-results.column.before")),
        ChartTable.Column.figures(Words.of("material-results.column.after")),
        ChartTable.Column.words(Words.of("measured.column.how")));
  }

  private static List<String> row(Study study, MaterialResult result, ResultsReview.Moved moved) {
    return List.of(
        name(study, moved),
        ReadingWords.figure(result.reading()),
        UnitText.of(moved.unit()),
        ReadingWords.estimate(moved.before()),
        ReadingWords.estimate(moved.after()),
        ReadingWords.how(result.reading()));
  }

  private static String name(Study study, ResultsReview.Moved moved) {
    String material = MaterialNames.of(study.materialsBefore().require(moved.material()));
    String at =
        Double.isNaN(moved.at())
            ? ""
            : " " + Words.of("material-results.at", Digits.sensible(moved.at()));
    return material + "\n" + moved.property() + at;
  }

  /** The source of the figure that the study reckons with, which keeps the one it had. */
  private static String origin(Study study, ResultsReview.Moved result) {
    Material material = study.materialsAtHand().require(result.material());
    Property property = material.property(result.property()).orElseThrow();
    return property.points().stream()
        .filter(point -> property.points().size() == 1 || point.at() >= result.at())
        .findFirst()
        .orElse(property.points().get(property.points().size() - 1))
        .source();
  }

  private void showFigure() {
    if (session == null) {
      return;
    }
    List<MaterialResult> results = session.study().orElseThrow().results().materials();
    int row = list.chosen();
    ResultsReview.Moved wanted =
        IntStream.of(Math.max(0, row))
            .filter(i -> i < results.size())
            .mapToObj(results::get)
            .flatMap(result -> of(result).stream())
            .findFirst()
            .orElse(null);
    if (wanted == null || !wanted.equals(drawn)) {
      draw(wanted);
    }
  }

  private void draw(ResultsReview.Moved wanted) {
    drawn = wanted;
    drawing.removeAll();
    figures.setVisible(wanted != null);
    if (wanted != null) {
      String unit = UnitText.of(wanted.unit());
      figures.setText(
          Words.of(
              "estimate.figures",
              name(session.study().orElseThrow(), wanted).replace('\n', ' '),
              unit,
              ReadingWords.estimate(wanted.before()),
              wanted.readings().stream()
                  .map(ReadingWords::figure)
                  .reduce((a, b) -> a + "; " + b)
                  .orElse("–"),
              ReadingWords.estimate(wanted.after()),
              origin(session.study().orElseThrow(), wanted)));
      Explanation.Curves curves = EstimateCurves.of(wanted);
      drawing.add(
          ExplanationFigure.of(curves, text -> Words.of(text.key(), text.arguments().toArray())));
    }
    panel.revalidate();
  }

  /** Draws again, in the colours of the look and feel. */
  void redraw() {
    draw(drawn);
  }
}
