package plyworth.workbench.desktop.position;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plyworth.shared.study.Limit;
import plyworth.workbench.analysis.Hindrance;
import plyworth.workbench.analysis.Labels;
import plyworth.workbench.analysis.LimitEffect;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.chart.ChartTable;
import plyworth.workbench.desktop.word.CriterionWords;
import plyworth.workbench.desktop.word.LimitWords;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.host.BoundCriterion;
import plyworth.workbench.ranking.LimitTally;

/** The limits of a study, and who drops out by one, as tables and in words. */
final class LimitTables {

  private static final int DIGITS = 4;

  private LimitTables() {}

  /**
   * The limits, each with what it does.
   *
   * @param tallies what they do; empty until it is known
   */
  static ChartTable limits(Ranked ranked, List<Limit> limits, Optional<List<LimitTally>> tallies) {
    List<ChartTable.Column> columns =
        List.of(
            ChartTable.Column.figures(Words.of("limits.dropped")),
            ChartTable.Column.figures(Words.of("limits.broken")),
            ChartTable.Column.figures(Words.of("limits.unknown")),
            ChartTable.Column.words(Words.of("limits.limit")));
    List<List<String>> rows = new ArrayList<>();
    for (Limit limit : limits) {
      Optional<LimitTally> tally =
          tallies.flatMap(all -> all.stream().filter(t -> t.limit().equals(limit)).findFirst());
      String none = tallies.isPresent() ? "–" : "…";
      rows.add(
          List.of(
              tally.map(t -> OptionWords.count(t.dropped())).orElse(none),
              tally.map(t -> OptionWords.count(t.broken())).orElse(none),
              tally.map(t -> OptionWords.count(t.unknown())).orElse(none),
              LimitWords.of(ranked, limit)));
    }
    return new ChartTable(columns, rows);
  }

  /** Who of the best drops out, and by which figure. */
  static ChartTable dropouts(Ranked ranked, LimitEffect effect) {
    BoundCriterion criterion = criterion(ranked, effect.limit());
    String unit = CriterionWords.unit(criterion);
    String title = CriterionWords.title(ranked, criterion);
    List<ChartTable.Column> columns =
        List.of(
            ChartTable.Column.figures(Words.of("limits.rank")),
            ChartTable.Column.figures(unit.isEmpty() ? title : title + " (" + unit + ")"),
            ChartTable.Column.words(Words.of("table.structure")));
    List<List<String>> rows = new ArrayList<>();
    for (LimitEffect.Dropout out : effect.dropouts()) {
      rows.add(
          List.of(
              Integer.toString(out.rank()),
              figure(ranked, criterion, effect.limit(), out.figure()),
              Labels.brief(ranked.structure(out.candidate().path()))));
    }
    return new ChartTable(columns, rows);
  }

  /**
   * One that breaks the limit has digits enough to show it, rounded to the side that is allowed.
   */
  private static String figure(
      Ranked ranked, BoundCriterion criterion, Limit limit, double figure) {
    if (Double.isNaN(figure)) {
      return Words.of("limits.not-judged");
    }
    boolean plain = limit.allows(figure) || !criterion.criterion().classes().isEmpty();
    return plain
        ? CriterionWords.figure(ranked, criterion, figure)
        : BigDecimal.valueOf(new Hindrance.BrokenLimit(limit, figure).relaxed(DIGITS))
            .stripTrailingZeros()
            .toPlainString();
  }

  private static BoundCriterion criterion(Ranked ranked, Limit limit) {
    int index = ranked.ranking().model().indexOf(limit.criterion()).orElseThrow();
    return ranked.ranking().model().criteria().get(index).criterion();
  }

  /** How many drop out of all and of the best, and whether today's structure would. */
  static String said(Ranked ranked, LimitEffect effect) {
    String all =
        effect
            .tally()
            .map(
                t ->
                    Words.of("limits.all", t.dropped(), effect.rankedWithout())
                        + (t.unknown() > 0 ? " " + Words.of("limits.all-unknown", t.unknown()) : "")
                        + (t.open() > 0 ? " " + Words.of("limits.all-open", t.open()) : ""))
            .orElse(Words.of("limits.uncounted"));
    String listed = Words.of("limits.of-listed", effect.dropouts().size(), effect.listed());
    return all + " " + listed + " " + today(ranked, effect.limit());
  }

  private static String today(Ranked ranked, Limit limit) {
    int index = ranked.ranking().model().indexOf(limit.criterion()).orElseThrow();
    double figure = ranked.baseline().outcomes().get(index).orUnknown();
    BoundCriterion criterion = criterion(ranked, limit);
    String written =
        (figure(ranked, criterion, limit, figure) + " " + CriterionWords.unit(criterion)).strip();
    return Words.of(limit.allows(figure) ? "limits.today-keeps" : "limits.today-breaks", written);
  }
}
