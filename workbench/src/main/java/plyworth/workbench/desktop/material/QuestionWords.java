package plyworth.workbench.desktop.material;

import java.util.ArrayList;
import java.util.List;
import plyworth.shared.material.Sourced;
import plyworth.workbench.analysis.Labels;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.chart.ChartTable;
import plyworth.workbench.desktop.word.MaterialNames;
import plyworth.workbench.desktop.word.PropertyNames;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.host.Digits;
import plyworth.workbench.host.Scale;
import plyworth.workbench.robustness.turn.Duel;
import plyworth.workbench.robustness.turn.OpenQuestions;

/**
 * What is worth measuring, in words.
 *
 * @param ranked the ranking that is asked about
 * @param open what was found
 */
record QuestionWords(Ranked ranked, OpenQuestions open) {

  /** Who leads, and whom it is set against. */
  String head() {
    List<String> lines = new ArrayList<>();
    lines.add(Words.of("questions.leads", ranked.study().weighting(), Labels.brief(open.leader())));
    for (int i = 0; i < open.rivals().size(); i++) {
      lines.add(Words.of("questions.rival", i + 1, Labels.brief(open.rivals().get(i))));
    }
    lines.add(found());
    return String.join("\n", lines);
  }

  private String found() {
    long turning = open.questions().stream().filter(OpenQuestions.Question::turns).count();
    String found =
        open.rivals().isEmpty()
            ? Words.of("questions.alone")
            : open.questions().isEmpty()
                ? Words.of("questions.none")
                : Words.of("questions.some", turning, open.questions().size());
    return open.complete() ? found : Words.of("questions.stopped") + " " + found;
  }

  /** What is not known comes first, then figures by what they can do. */
  ChartTable table() {
    List<List<String>> rows = new ArrayList<>();
    for (OpenQuestions.Unknown unknown : open.unknown()) {
      rows.add(
          List.of(
              subject(unknown.material(), unknown.property()),
              Digits.sensible(Double.NaN),
              Words.of("questions.unknown"),
              Words.of("questions.no-origin")));
    }
    open.questions().forEach(question -> rows.add(row(question)));
    return new ChartTable(
        List.of(
            ChartTable.Column.words(Words.of("questions.subject")),
            ChartTable.Column.words(Words.of("questions.figure")),
            ChartTable.Column.words(Words.of("questions.effect")),
            ChartTable.Column.words(Words.of("questions.origin"))),
        rows);
  }

  private List<String> row(OpenQuestions.Question question) {
    Sourced origin = question.origin();
    String figure =
        MaterialPage.figures(origin.range(), Scale.of(question.property().unit(), false));
    boolean single = question.property().points().size() == 1;
    return List.of(
        subject(question.material(), question.property().id()),
        single ? figure : Words.of("questions.first", figure),
        effect(question),
        MaterialRows.said(origin));
  }

  private String effect(OpenQuestions.Question question) {
    int rival = 1 + open.rivals().indexOf(question.rival());
    if (question.least() <= -Duel.OUT) {
      return Words.of("questions.drops", rival);
    }
    return Words.of(
        question.turns() ? "questions.overtakes" : "questions.shrinks",
        rival,
        Digits.sensible(question.lead()),
        Digits.sensible(question.least()));
  }

  /** Material and property that a row of the table is about. */
  OpenQuestions.Unknown subject(int row) {
    int unknown = open.unknown().size();
    if (row < unknown) {
      return open.unknown().get(row);
    }
    OpenQuestions.Question question = open.questions().get(row - unknown);
    return new OpenQuestions.Unknown(question.material(), question.property().id());
  }

  private String subject(String material, String property) {
    String name = MaterialNames.of(ranked.study().materialsAtHand().require(material));
    return Words.of("questions.of", name, PropertyNames.of(property));
  }

  /** All of it as plain text, to be mailed. */
  String text() {
    StringBuilder text = new StringBuilder(ranked.study().title()).append("\n\n");
    text.append(head()).append("\n\n");
    int number = 1;
    for (List<String> row : table().rows()) {
      text.append(
          Words.of("questions.line", number++, row.get(0), row.get(1), row.get(2), row.get(3)));
      text.append('\n');
    }
    return text.append('\n')
        .append(Words.of("questions.note"))
        .append('\n')
        .append(Words.of("caution"))
        .append('\n')
        .toString();
  }
}
