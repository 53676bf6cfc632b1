package plyworth.workbench.desktop.decision;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import plyworth.workbench.analysis.Labels;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.chart.ChartTable;
import plyworth.workbench.chart.StabilityStrips;
import plyworth.workbench.desktop.session.CandidateName;
import plyworth.workbench.desktop.word.CriterionWords;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.robustness.LeaderStability;
import plyworth.workbench.robustness.Rivals;
import plyworth.workbench.robustness.Stakeholders;
import plyworth.workbench.robustness.WeightInterval;

/**
 * What a few exact rankings say of how sure a ranking is.
 *
 * @param ranked the ranking
 * @param intervals how far each weight may move
 * @param stakeholders the weightings side by side
 * @param names what the candidates that are spoken of are called, by path number
 */
record Stability(
    Ranked ranked,
    List<WeightInterval> intervals,
    Stakeholders stakeholders,
    Map<Long, String> names) {

  /** How many of the best of each weighting are looked at. */
  static final int DEPTH = 5;

  /** Finds out. */
  static Stability of(Ranked ranked) {
    List<WeightInterval> intervals = LeaderStability.of(ranked);
    Stakeholders stakeholders = Stakeholders.of(ranked, DEPTH);
    Map<Long, String> names = new HashMap<>();
    Rivals.of(ranked, intervals, stakeholders)
        .forEach(path -> names.put(path, CandidateName.of(ranked, path)));
    return new Stability(ranked, intervals, stakeholders, names);
  }

  /** The candidates that may come first. */
  List<Long> rivals() {
    return Rivals.of(ranked, intervals, stakeholders);
  }

  String name(long path) {
    return names.get(path);
  }

  /** The strips. */
  StabilityStrips strips() {
    List<StabilityStrips.Row> rows = new ArrayList<>();
    for (WeightInterval interval : intervals) {
      rows.add(
          new StabilityStrips.Row(
              title(interval),
              said(interval),
              Math.min(1, interval.weight()),
              interval.lower().weight(),
              interval.upper().weight(),
              interval.lower().overtaker().isPresent()
                  ? Words.of("stability.below", who(interval.lower().overtaker()))
                  : "",
              interval.upper().overtaker().isPresent()
                  ? Words.of("stability.above", who(interval.upper().overtaker()))
                  : ""));
    }
    return new StabilityStrips(rows);
  }

  private String title(WeightInterval interval) {
    return CriterionWords.title(
        ranked, ranked.ranking().model().criteria().get(interval.criterion()).criterion());
  }

  private static String said(WeightInterval interval) {
    String now = CandidateName.percent(interval.weight(), 1);
    if (!interval.lower().defined()) {
      return Words.of("stability.alone", now);
    }
    String said =
        Words.of(
            "stability.interval",
            now,
            CandidateName.percent(interval.lower().weight(), 1),
            CandidateName.percent(interval.upper().weight(), 1));
    return interval.tied() ? said + Words.of("stability.tied") : said;
  }

  private String who(OptionalLong overtaker) {
    return overtaker.isPresent() ? name(overtaker.getAsLong()) : "";
  }

  private String inFull(OptionalLong overtaker) {
    return overtaker.isPresent()
        ? who(overtaker) + "  " + Labels.brief(ranked.structure(overtaker.getAsLong()))
        : "";
  }

  /** The same as a table. */
  ChartTable table() {
    List<ChartTable.Column> columns =
        List.of(
            ChartTable.Column.words(Words.of("stability.criterion")),
            ChartTable.Column.figures(Words.of("stability.now")),
            ChartTable.Column.figures(Words.of("stability.from")),
            ChartTable.Column.figures(Words.of("stability.to")),
            ChartTable.Column.words(Words.of("stability.leads-below")),
            ChartTable.Column.words(Words.of("stability.leads-above")));
    List<List<String>> rows = new ArrayList<>();
    for (WeightInterval interval : intervals) {
      rows.add(
          List.of(
              title(interval),
              CandidateName.percent(interval.weight(), 2),
              CandidateName.percent(interval.lower().weight(), 2),
              CandidateName.percent(interval.upper().weight(), 2),
              inFull(interval.lower().overtaker()),
              inFull(interval.upper().overtaker())));
    }
    return new ChartTable(columns, rows);
  }

  /** What a row of the strips is about, for a tooltip: who leads beyond its ends. */
  String tip(int row) {
    WeightInterval interval = intervals.get(row);
    StringBuilder html = new StringBuilder("<html><body style='width:360px'><b>");
    html.append(plyworth.workbench.chart.Html.escaped(title(interval))).append("</b>: ");
    html.append(plyworth.workbench.chart.Html.escaped(said(interval)));
    if (interval.lower().overtaker().isPresent()) {
      html.append("<br>").append(end("stability.leads-below", interval.lower().overtaker()));
    }
    if (interval.upper().overtaker().isPresent()) {
      html.append("<br>").append(end("stability.leads-above", interval.upper().overtaker()));
    }
    return html.append("</body></html>").toString();
  }

  private String end(String key, OptionalLong overtaker) {
    return plyworth.workbench.chart.Html.escaped(Words.of(key) + ": " + inFull(overtaker));
  }
}
