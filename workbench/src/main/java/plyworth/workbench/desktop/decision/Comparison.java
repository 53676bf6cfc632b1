package plyworth.workbench.desktop.decision;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import plyworth.shared.scoring.Criterion;
import plyworth.shared.structure.Structure;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.Sheet;
import plyworth.workbench.chart.ChartTable;
import plyworth.workbench.desktop.session.CandidateName;
import plyworth.workbench.desktop.word.CriterionWords;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.host.BoundCriterion;
import plyworth.workbench.host.Digits;
import plyworth.workbench.ranking.Valuation;
import plyworth.workbench.ranking.Weighed;

/**
 * Structures side by side with today's.
 *
 * @param ranked the ranking they stand in
 * @param columns today's structure, then the others
 */
record Comparison(Ranked ranked, List<Column> columns) {

  /** Letters of a title beyond which it is broken into two lines. */
  private static final int WIDE = 20;

  /**
   * A structure.
   *
   * @param name what it is called
   * @param sheet the structure, scored in full
   */
  record Column(String name, Sheet sheet) {}

  /** Copies the list. */
  Comparison {
    columns = List.copyOf(columns);
  }

  /** Scores structures beside today's. */
  static Comparison of(Ranked ranked, List<Structure> structures) {
    List<Column> columns = new ArrayList<>();
    columns.add(new Column(Words.of("compare.today"), ranked.baseline()));
    for (Structure structure : structures) {
      columns.add(new Column(CandidateName.of(ranked, structure), ranked.sheet(structure)));
    }
    return new Comparison(ranked, columns);
  }

  private Sheet today() {
    return columns.get(0).sheet();
  }

  /**
   * Every figure, and on a second line its difference from today's; what has weight stands first.
   */
  ChartTable table() {
    List<ChartTable.Column> heads = new ArrayList<>();
    heads.add(ChartTable.Column.words(Words.of("figures.criterion")));
    columns.forEach(column -> heads.add(ChartTable.Column.figures(column.name())));
    List<List<String>> rows = new ArrayList<>();
    rows.add(values());
    List<Weighed> criteria = ranked.ranking().model().criteria();
    for (boolean counts : new boolean[] {true, false}) {
      IntStream.range(0, criteria.size())
          .filter(c -> criteria.get(c).counts() == counts)
          .forEach(c -> rows.add(figures(criteria.get(c), c)));
    }
    return new ChartTable(heads, rows);
  }

  private List<String> values() {
    List<String> row = new ArrayList<>(List.of(Words.of("compare.value")));
    double before = today().valuation().value();
    for (int i = 0; i < columns.size(); i++) {
      double value = columns.get(i).sheet().valuation().value();
      String written = String.format(Locale.ROOT, "%.3f", value);
      String difference =
          signed(value - before, String.format(Locale.ROOT, "%.3f", value - before));
      row.add(i == 0 ? written : written + "\n" + difference);
    }
    return row;
  }

  private List<String> figures(Weighed weighed, int place) {
    BoundCriterion criterion = weighed.criterion();
    List<String> row = new ArrayList<>();
    String weight =
        weighed.counts()
            ? Words.of("compare.weight", CandidateName.percent(weighed.weight(), 0))
            : "";
    row.add(
        Stream.of(CriterionWords.unit(criterion), weight)
            .filter(part -> !part.isEmpty())
            .collect(
                Collectors.joining(
                    " · ", narrow(CriterionWords.title(ranked, criterion)) + "\n", "")));
    for (int i = 0; i < columns.size(); i++) {
      double figure = columns.get(i).sheet().outcomes().get(place).orUnknown();
      String written = CriterionWords.figure(ranked, criterion, figure);
      row.add(
          i == 0 ? written : written + "\n" + difference(criterion, columns.get(i).sheet(), place));
    }
    return row;
  }

  /** In two lines where one would leave too little width for three structures beside it. */
  private static String narrow(String title) {
    int at = title.length() > WIDE ? title.indexOf(' ', title.length() / 3) : -1;
    return at < 0 ? title : title.substring(0, at) + "\n" + title.substring(at + 1);
  }

  /** By how much it differs, and whether that is better; empty where one is unknown. */
  private String difference(BoundCriterion criterion, Sheet sheet, int place) {
    double own = sheet.outcomes().get(place).orUnknown();
    double before = today().outcomes().get(place).orUnknown();
    if (Double.isNaN(own) || Double.isNaN(before)) {
      return "";
    }
    if (CriterionWords.figure(ranked, criterion, own)
        .equals(CriterionWords.figure(ranked, criterion, before))) {
      return Words.of("figures.same");
    }
    String verdict = verdict(criterion.criterion(), sheet, place, own, before);
    return criterion.criterion().classes().isEmpty()
        ? signed(own - before, Digits.sensible(own - before)) + "\n" + verdict
        : verdict;
  }

  private String verdict(Criterion declared, Sheet sheet, int place, double own, double before) {
    Valuation.Part part = sheet.valuation().parts().get(place);
    Valuation.Part todays = today().valuation().parts().get(place);
    int sign =
        switch (declared.direction()) {
          case HIGHER -> Double.compare(own, before);
          case LOWER -> Double.compare(before, own);
          case BAND -> Double.compare(part.valueLow(), todays.valueLow());
        };
    return Words.of(sign > 0 ? "figures.better" : sign < 0 ? "figures.worse" : "figures.same");
  }

  private static String signed(double difference, String written) {
    return difference > 0 ? "+" + written : written.replace('-', '−');
  }
}
