package plyworth.workbench.desktop.ranking;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import javax.swing.table.AbstractTableModel;
import plyworth.shared.structure.Structure;
import plyworth.workbench.analysis.Labels;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.chart.Html;
import plyworth.workbench.desktop.word.CriterionWords;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.host.BoundCriterion;
import plyworth.workbench.ranking.RankedCandidate;
import plyworth.workbench.ranking.Valuation;
import plyworth.workbench.ranking.Weighed;

/** The rows of one ranking: today's structure, then the best. */
final class RankingRows extends AbstractTableModel {

  private static final long serialVersionUID = 1L;

  /** Columns before the first criterion. */
  private static final int FIGURES = 2;

  /**
   * What stands in a cell.
   *
   * @param text what is shown
   * @param order what it is sorted by
   */
  record Cell(String text, double order) implements Comparable<Cell> {
    @Override
    public int compareTo(Cell other) {
      int byOrder = Double.compare(order, other.order);
      return byOrder == 0 ? text.compareTo(other.text) : byOrder;
    }

    @Override
    public String toString() {
      return text;
    }
  }

  private final transient List<Structure> structures = new ArrayList<>();
  private final transient List<List<Cell>> cells = new ArrayList<>();
  private final List<String> header = new ArrayList<>();
  private final List<String> help = new ArrayList<>();
  private final List<String> headHelp = new ArrayList<>();

  private RankingRows() {}

  /** No rows yet; a model remembers the tables that show it, so each table has its own. */
  static RankingRows none() {
    return new RankingRows();
  }

  static RankingRows of(Ranked ranked) {
    RankingRows rows = new RankingRows();
    List<Weighed> criteria = ranked.ranking().model().criteria();
    int[] counting =
        IntStream.range(0, criteria.size()).filter(c -> criteria.get(c).counts()).toArray();
    rows.head(ranked, counting);
    rows.add(
        ranked,
        new Cell(Words.of("table.today"), 0),
        ranked.baseline().structure(),
        ranked.baseline().valuation(),
        counting);
    int rank = 1;
    for (RankedCandidate candidate : ranked.best()) {
      Cell number = new Cell(Integer.toString(rank), rank++);
      Structure structure = ranked.structure(candidate.path());
      rows.add(ranked, number, structure, candidate.valuation(), counting);
    }
    return rows;
  }

  private void head(Ranked ranked, int[] counting) {
    header.add(Words.of("table.rank"));
    header.add(Words.of("table.value"));
    help.addAll(List.of("", ""));
    for (int c : counting) {
      BoundCriterion criterion = ranked.ranking().model().criteria().get(c).criterion();
      String unit = CriterionWords.unit(criterion);
      String title = CriterionWords.title(ranked, criterion);
      header.add("<html><center>" + broken(title) + "<br>" + Html.escaped(unit));
      String unknown = Words.of("table.unknown");
      help.add(CriterionWords.help(ranked, criterion, unknown));
      headHelp.add(CriterionWords.help(ranked, criterion, ""));
    }
    header.add(Words.of("table.structure"));
    help.add("");
  }

  /** In two lines, broken at the gap nearest to the middle. */
  private static String broken(String title) {
    int before = title.lastIndexOf(' ', title.length() / 2);
    int after = title.indexOf(' ', title.length() / 2);
    boolean first = after < 0 || before >= 0 && title.length() - 1 - after < before;
    int at = first ? before : after;
    return at < 0
        ? Html.escaped(title)
        : Html.escaped(title.substring(0, at)) + "<br>" + Html.escaped(title.substring(at + 1));
  }

  private void add(
      Ranked ranked, Cell rank, Structure structure, Valuation valuation, int[] counting) {
    List<Cell> row = new ArrayList<>();
    row.add(rank);
    row.add(new Cell(String.format(Locale.ROOT, "%.3f", valuation.value()), valuation.value()));
    for (int c : counting) {
      double figure = valuation.parts().get(c).low();
      BoundCriterion criterion = ranked.ranking().model().criteria().get(c).criterion();
      row.add(new Cell(CriterionWords.figure(ranked, criterion, figure), figure));
    }
    row.add(new Cell(Labels.brief(structure), 0));
    cells.add(row);
    structures.add(structure);
  }

  Structure structure(int row) {
    return structures.get(row);
  }

  /** The row of a structure, the best before today's; -1 when it is not listed. */
  int indexOf(Structure structure) {
    return structures.lastIndexOf(structure);
  }

  boolean isText(int column) {
    return column == header.size() - 1;
  }

  /** The whole structure, or what an unknown figure means; null for none. */
  String tip(int row, int column) {
    if (isText(column)) {
      return structures.get(row).toString();
    }
    boolean unknown = Double.isNaN(cells.get(row).get(column).order());
    return unknown ? help.get(column) : null;
  }

  /** What the criterion of a column is and how it is computed; null where it is none. */
  String headTip(int column) {
    int place = column - FIGURES;
    return place < 0 || place >= headHelp.size() ? null : headHelp.get(place);
  }

  @Override
  public int getRowCount() {
    return cells.size();
  }

  @Override
  public int getColumnCount() {
    return header.size();
  }

  @Override
  public String getColumnName(int column) {
    return header.get(column);
  }

  @Override
  public Class<?> getColumnClass(int column) {
    return Cell.class;
  }

  @Override
  public Object getValueAt(int row, int column) {
    return cells.get(row).get(column);
  }
}
