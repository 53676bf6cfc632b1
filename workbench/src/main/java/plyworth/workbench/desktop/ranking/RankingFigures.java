package plyworth.workbench.desktop.ranking;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import plyworth.workbench.chart.ChartTable;
import plyworth.workbench.chart.RankingBars;
import plyworth.workbench.desktop.word.Words;

/** The bars of the ranking chart as a table: what each criterion contributes. */
final class RankingFigures {

  private RankingFigures() {}

  static ChartTable of(RankingBars bars) {
    List<ChartTable.Column> columns = new ArrayList<>();
    columns.add(ChartTable.Column.figures(Words.of("table.rank")));
    columns.add(ChartTable.Column.figures(Words.of("table.value")));
    bars.criteria().forEach(name -> columns.add(ChartTable.Column.figures(name)));
    columns.add(ChartTable.Column.words(Words.of("table.structure")));
    List<List<String>> rows = new ArrayList<>();
    for (RankingBars.Bar bar : bars.bars()) {
      List<String> row = new ArrayList<>(List.of(bar.name(), written(bar.value())));
      bar.contributions().forEach(contribution -> row.add(written(contribution)));
      row.add(bar.plies().stream().map(RankingBars.Ply::full).collect(Collectors.joining(" / ")));
      rows.add(row);
    }
    return new ChartTable(columns, rows);
  }

  private static String written(double value) {
    return String.format(Locale.ROOT, "%.3f", value);
  }
}
