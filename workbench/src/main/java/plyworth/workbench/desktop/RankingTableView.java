package plyworth.workbench.desktop;

import java.awt.BorderLayout;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.ListSelectionModel;
import javax.swing.SwingConstants;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import plyworth.shared.structure.Structure;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.ranking.RankedCandidate;
import plyworth.workbench.ranking.Valuation;
import plyworth.workbench.ranking.Weighed;

/** The ranking as a table: the twin of the chart, with every weighted figure. */
final class RankingTableView implements View {

  private final JTable table = new JTable();
  private final JPanel panel = new JPanel(new BorderLayout());
  private Session session;
  private Ranked shown;
  private boolean showing;

  RankingTableView() {
    table.setName("ranking-table");
    table.setSelectionMode(ListSelectionModel.SINGLE_SELECTION);
    table.setFillsViewportHeight(true);
    table.setAutoResizeMode(JTable.AUTO_RESIZE_OFF);
    table.getAccessibleContext().setAccessibleName(Words.of("view.table"));
    table
        .getSelectionModel()
        .addListSelectionListener(
            event -> {
              if (!showing && !event.getValueIsAdjusting() && table.getSelectedRow() >= 0) {
                session.select(((Rows) table.getModel()).structures.get(table.getSelectedRow()));
              }
            });
    panel.add(new JScrollPane(table), BorderLayout.CENTER);
  }

  @Override
  public JComponent component() {
    return panel;
  }

  @Override
  public void show(Session now) {
    session = now;
    showing = true;
    now.ranked().filter(ranked -> ranked != shown).ifPresent(this::fill);
    if (table.getModel() instanceof Rows rows) {
      int row = now.selected().map(rows.structures::indexOf).orElse(-1);
      if (row >= 0 && row != table.getSelectedRow()) {
        table.setRowSelectionInterval(row, row);
      } else if (row < 0) {
        table.clearSelection();
      }
    }
    showing = false;
  }

  private void fill(Ranked ranked) {
    shown = ranked;
    table.setModel(new Rows(ranked));
    DefaultTableCellRenderer right = new DefaultTableCellRenderer();
    right.setHorizontalAlignment(SwingConstants.RIGHT);
    int last = table.getColumnCount() - 1;
    for (int c = 0; c < last; c++) {
      table.getColumnModel().getColumn(c).setCellRenderer(right);
      table.getColumnModel().getColumn(c).setPreferredWidth(c < 2 ? 64 : 130);
    }
    table.getColumnModel().getColumn(last).setPreferredWidth(900);
  }

  /** The rows of one ranking; the last is today's structure. */
  private static final class Rows extends AbstractTableModel {

    private static final long serialVersionUID = 1L;

    private final transient List<Structure> structures = new ArrayList<>();
    private final List<List<String>> cells = new ArrayList<>();
    private final List<String> header = new ArrayList<>();

    Rows(Ranked ranked) {
      List<Weighed> criteria = ranked.ranking().model().criteria();
      int[] counting =
          IntStream.range(0, criteria.size()).filter(c -> criteria.get(c).counts()).toArray();
      header.add(Words.of("table.rank"));
      header.add(Words.of("table.value"));
      for (int c : counting) {
        String unit = CriterionWords.unit(criteria.get(c).criterion());
        header.add(
            CriterionWords.title(ranked, criteria.get(c).criterion())
                + (unit.isEmpty() ? "" : ", " + unit));
      }
      header.add(Words.of("table.structure"));
      int rank = 1;
      for (RankedCandidate candidate : ranked.best()) {
        add(
            ranked,
            Integer.toString(rank++),
            ranked.structure(candidate.path()),
            candidate.valuation(),
            counting);
      }
      add(
          ranked,
          Words.of("table.today"),
          ranked.baseline().structure(),
          ranked.baseline().valuation(),
          counting);
    }

    private void add(
        Ranked ranked, String rank, Structure structure, Valuation valuation, int[] counting) {
      List<String> row = new ArrayList<>();
      row.add(rank);
      row.add(String.format(Locale.ROOT, "%.3f", valuation.value()));
      for (int c : counting) {
        row.add(
            CriterionWords.figure(
                ranked,
                ranked.ranking().model().criteria().get(c).criterion(),
                valuation.parts().get(c).low()));
      }
      row.add(structure.toString());
      cells.add(row);
      structures.add(structure);
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
    public Object getValueAt(int row, int column) {
      return cells.get(row).get(column);
    }
  }
}
