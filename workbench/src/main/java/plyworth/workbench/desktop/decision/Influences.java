package plyworth.workbench.desktop.decision;

import java.util.ArrayList;
import java.util.List;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.chart.ChartTable;
import plyworth.workbench.chart.Html;
import plyworth.workbench.chart.ShareBars;
import plyworth.workbench.desktop.session.CandidateName;
import plyworth.workbench.desktop.word.InputWords;
import plyworth.workbench.desktop.word.UnitText;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.host.Digits;
import plyworth.workbench.robustness.Influence;
import plyworth.workbench.robustness.Sensitivity;
import plyworth.workbench.robustness.UncertainInput;

/**
 * What uncertain inputs do to a figure, in words.
 *
 * @param ranked names the inputs
 * @param found what was found out
 */
record Influences(Ranked ranked, Sensitivity found) {

  private static final int MOST = 12;

  /** Inputs of a smaller total index are not drawn. */
  private static final double DRAWN = 0.005;

  private List<Influence> listed() {
    return found.influences().stream()
        .filter(influence -> influence.total().share() >= DRAWN)
        .limit(MOST)
        .toList();
  }

  private String name(Influence influence) {
    return InputWords.of(ranked, influence.input().id()).toString();
  }

  /** A bar for each input that matters, the largest first. */
  ShareBars bars() {
    List<ShareBars.Bar> bars = new ArrayList<>();
    for (Influence influence : listed()) {
      double alone = Math.min(influence.first().share(), influence.total().share());
      bars.add(
          new ShareBars.Bar(
              bars.size() + 1 + "  " + name(influence),
              tip(influence),
              List.of(alone, influence.total().share() - alone),
              Double.NaN,
              CandidateName.percent(influence.total().share(), 0)
                  + " ("
                  + interval(influence.total())
                  + ")"));
    }
    return new ShareBars(
        Words.of("sensitivity.axis"),
        List.of(Words.of("sensitivity.alone"), Words.of("sensitivity.together")),
        bars);
  }

  private String tip(Influence influence) {
    return "<html><body style='width:320px'><b>"
        + Html.escaped(name(influence))
        + "</b><br>"
        + Html.escaped(
            Words.of(
                "sensitivity.tip",
                CandidateName.percent(influence.first().share(), 0),
                interval(influence.first()),
                CandidateName.percent(influence.total().share(), 0),
                interval(influence.total()),
                range(influence)))
        + "</body></html>";
  }

  private static String interval(Influence.Index index) {
    return CandidateName.percent(Math.max(0, index.low()), 0)
        + " – "
        + CandidateName.percent(Math.max(0, index.high()), 0);
  }

  private String range(Influence influence) {
    UncertainInput input = influence.input();
    String unit = UnitText.of(InputWords.of(ranked, input.id()).unit());
    return Digits.sensible(input.range().low())
        + " – "
        + Digits.sensible(input.range().high())
        + (unit.isEmpty() ? "" : " " + unit);
  }

  /** The same as a table. */
  ChartTable table() {
    List<ChartTable.Column> columns =
        List.of(
            ChartTable.Column.words(Words.of("turn.input")),
            ChartTable.Column.figures(Words.of("sensitivity.alone")),
            ChartTable.Column.figures("95 %"),
            ChartTable.Column.figures(Words.of("sensitivity.in-all")),
            ChartTable.Column.figures("95 %"),
            ChartTable.Column.figures(Words.of("sensitivity.range")));
    List<List<String>> rows = new ArrayList<>();
    for (Influence influence : listed()) {
      rows.add(
          List.of(
              name(influence),
              CandidateName.percent(influence.first().share(), 1),
              interval(influence.first()),
              CandidateName.percent(influence.total().share(), 1),
              interval(influence.total()),
              range(influence)));
    }
    return new ChartTable(columns, rows);
  }

  /** What is shown, how sure it is, and what it took. */
  String note() {
    if (!found.varies()) {
      return Words.of("sensitivity.still", found.influences().size());
    }
    String said =
        Words.of(
            "sensitivity.note",
            Digits.sensible(found.mean()),
            Digits.sensible(found.deviation()),
            listed().size(),
            found.influences().size() - listed().size(),
            CandidateName.percent(found.alone(), 0),
            found.worlds());
    String unknown =
        found.unknown() > 0 ? " " + Words.of("sensitivity.unknown", found.unknown()) : "";
    return found.held().isEmpty()
        ? said + unknown
        : said
            + unknown
            + " "
            + Words.of(
                "sensitivity.held", String.join(", ", found.held().stream().sorted().toList()));
  }
}
