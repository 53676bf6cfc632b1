package plyworth.workbench.desktop.candidate;

import java.util.ArrayList;
import java.util.List;
import javax.swing.table.AbstractTableModel;
import plyworth.shared.quantity.Range;
import plyworth.shared.scoring.Criterion;
import plyworth.shared.scoring.Outcome;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.desktop.session.Detail;
import plyworth.workbench.desktop.word.CriterionWords;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.host.BoundCriterion;
import plyworth.workbench.host.Digits;
import plyworth.workbench.ranking.Valuation;
import plyworth.workbench.ranking.Weighed;

/** One row for each criterion: figure, range and today's figure, and which of the two is better. */
final class FigureRows extends AbstractTableModel {

  private static final long serialVersionUID = 1L;
  private static final List<String> HEADER =
      List.of("criterion", "unit", "candidate", "range", "today", "against");
  private static final int UNIT = 1;
  private static final int TODAY = 4;
  private static final int AGAINST = 5;

  /**
   * A row.
   *
   * @param cells what stands in it
   * @param weighed whether its criterion has weight
   * @param tips what is shown when the pointer rests on the candidate's figure, and on today's
   */
  private record Row(List<String> cells, boolean weighed, String tip, String tipOfToday) {}

  private final transient List<Row> rows = new ArrayList<>();

  FigureRows(Detail detail) {
    List<Weighed> criteria = detail.ranked().ranking().model().criteria();
    for (int c = 0; c < criteria.size(); c++) {
      rows.add(row(detail, criteria.get(c), c));
    }
  }

  private static Row row(Detail detail, Weighed weighed, int c) {
    Ranked ranked = detail.ranked();
    BoundCriterion criterion = weighed.criterion();
    Outcome own = detail.sheet().outcomes().get(c);
    Outcome today = ranked.baseline().outcomes().get(c);
    String ownFigure = CriterionWords.figure(ranked, criterion, own.orUnknown());
    String todaysFigure = CriterionWords.figure(ranked, criterion, today.orUnknown());
    List<String> cells =
        List.of(
            CriterionWords.title(ranked, criterion),
            CriterionWords.unit(criterion),
            ownFigure,
            range(detail, criterion),
            todaysFigure,
            detail.structure().equals(ranked.study().baseline())
                ? ""
                : against(
                    criterion.criterion().direction(),
                    ownFigure.equals(todaysFigure),
                    detail.sheet().valuation().parts().get(c),
                    ranked.baseline().valuation().parts().get(c)));
    return new Row(
        cells, weighed.counts(), tip(ranked, criterion, own), tip(ranked, criterion, today));
  }

  private static String tip(Ranked ranked, BoundCriterion criterion, Outcome outcome) {
    return CriterionWords.help(
        ranked, criterion, CriterionWords.absence(ranked, criterion, outcome));
  }

  private static String range(Detail detail, BoundCriterion criterion) {
    if (detail.ranges().isEmpty()) {
      return "…";
    }
    Range range = detail.ranges().getOrDefault(criterion.id(), Range.UNKNOWN);
    if (!range.known() || !criterion.criterion().classes().isEmpty()) {
      return "";
    }
    String low = Digits.sensible(range.low());
    String high = Digits.sensible(range.high());
    return low.equals(high) ? low : low + " – " + high;
  }

  /**
   * Better, worse or the same; empty when one of the two is unknown. What reads the same is the
   * same: nobody can follow a difference that no digit shows.
   */
  private static String against(
      Criterion.Direction direction,
      boolean readsTheSame,
      Valuation.Part own,
      Valuation.Part today) {
    if (!own.known() || !today.known()) {
      return "";
    }
    if (readsTheSame) {
      return Words.of("figures.same");
    }
    int sign =
        switch (direction) {
          case HIGHER -> Double.compare(own.low(), today.low());
          case LOWER -> Double.compare(today.low(), own.low());
          case BAND -> Double.compare(own.valueLow(), today.valueLow());
        };
    return Words.of(sign > 0 ? "figures.better" : sign < 0 ? "figures.worse" : "figures.same");
  }

  boolean weighed(int row) {
    return rows.get(row).weighed();
  }

  boolean isText(int column) {
    return column <= UNIT || column == AGAINST;
  }

  /** Condition, formula and, where there is no figure, why. */
  String tip(int row, int column) {
    return column == TODAY ? rows.get(row).tipOfToday() : rows.get(row).tip();
  }

  @Override
  public int getRowCount() {
    return rows.size();
  }

  @Override
  public int getColumnCount() {
    return HEADER.size();
  }

  @Override
  public String getColumnName(int column) {
    return Words.of("figures." + HEADER.get(column));
  }

  @Override
  public Object getValueAt(int row, int column) {
    return rows.get(row).cells().get(column);
  }
}
