package plyworth.workbench.desktop.decision;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalLong;
import plyworth.workbench.analysis.Labels;
import plyworth.workbench.chart.ChartTable;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.robustness.Stakeholders;

/** The weightings of a study side by side, in words. */
final class StakeholderRows {

  private StakeholderRows() {}

  /** Rank and value of each candidate with each weighting, and the most that any of them loses. */
  static ChartTable table(Stability stability) {
    Stakeholders stakeholders = stability.stakeholders();
    List<ChartTable.Column> columns = new ArrayList<>();
    columns.add(ChartTable.Column.words(Words.of("stakeholders.candidate")));
    columns.add(ChartTable.Column.figures(Words.of("stakeholders.lost")));
    stakeholders.weightings().forEach(name -> columns.add(ChartTable.Column.figures(name)));
    List<List<String>> rows = new ArrayList<>();
    for (Stakeholders.Standing standing : stakeholders.standings()) {
      List<String> row = new ArrayList<>();
      row.add(
          stability.name(standing.path())
              + "  "
              + Labels.brief(stability.ranked().structure(standing.path())));
      row.add(value(standing.greatestLoss()));
      for (int s = 0; s < standing.values().size(); s++) {
        row.add(
            Words.of(
                "stakeholders.rank",
                rank(standing.ranks().get(s)),
                value(standing.values().get(s))));
      }
      rows.add(row);
    }
    return new ChartTable(columns, rows);
  }

  /** Whom all could live with. */
  static String note(Stability stability) {
    Stakeholders stakeholders = stability.stakeholders();
    if (stakeholders.weightings().size() < 2) {
      return Words.of("stakeholders.one");
    }
    StringBuilder said =
        new StringBuilder(
            Words.of("stakeholders.note", stakeholders.depth(), stakeholders.agreed().size()));
    stakeholders.standings().stream()
        .filter(s -> stakeholders.leastRegret().equals(OptionalLong.of(s.path())))
        .forEach(
            s ->
                said.append(' ')
                    .append(
                        Words.of(
                            "stakeholders.least-regret",
                            stability.name(s.path()),
                            value(s.greatestLoss()))));
    stakeholders
        .weightless()
        .forEach(name -> said.append(' ').append(Words.of("stakeholders.weightless", name)));
    return said.toString();
  }

  private static String value(double value) {
    return String.format(Locale.ROOT, "%.3f", value);
  }

  private static String rank(OptionalLong rank) {
    return rank.isPresent() ? String.format(Locale.ROOT, "%,d", rank.getAsLong()) : "–";
  }
}
