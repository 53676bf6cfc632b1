package plyworth.workbench.desktop;

import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Font;
import java.awt.event.MouseEvent;
import java.util.ArrayList;
import java.util.List;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.SwingConstants;
import javax.swing.table.AbstractTableModel;
import javax.swing.table.DefaultTableCellRenderer;
import plyworth.shared.quantity.Range;
import plyworth.shared.scoring.Outcome;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.host.BoundCriterion;
import plyworth.workbench.host.Digits;
import plyworth.workbench.ranking.Weighed;

/** Every figure of a structure with its range, beside today's. */
final class FiguresPanel {

  private final JPanel panel = new JPanel(new BorderLayout());
  private final JLabel note = new JLabel();
  private final JTable table =
      new JTable() {
        private static final long serialVersionUID = 1L;

        @Override
        public String getToolTipText(MouseEvent event) {
          int row = rowAtPoint(event.getPoint());
          return row >= 0 && getModel() instanceof Rows rows ? rows.tips.get(row) : null;
        }
      };

  FiguresPanel() {
    table.setName("figures");
    table.setFillsViewportHeight(true);
    table.getAccessibleContext().setAccessibleName(Words.of("candidate.tab.figures"));
    note.setBorder(BorderFactory.createEmptyBorder(6, 8, 6, 8));
    note.putClientProperty("FlatLaf.styleClass", "small");
    panel.add(new JScrollPane(table), BorderLayout.CENTER);
    panel.add(note, BorderLayout.SOUTH);
  }

  JComponent component() {
    return panel;
  }

  void show(Ranked ranked, Detail detail) {
    Rows rows = new Rows(ranked, detail);
    table.setModel(rows);
    note.setText("<html>" + Html.escaped(Words.of("figures.range-note", Detail.DRAWS)) + "</html>");
    int[] widths = {190, 80, 110, 80, 100};
    for (int c = 0; c < widths.length; c++) {
      table.getColumnModel().getColumn(c).setPreferredWidth(widths[c]);
      table.getColumnModel().getColumn(c).setCellRenderer(new Cell(rows, c));
    }
  }

  /** Right-aligned numbers; what has weight in bold. */
  private static final class Cell extends DefaultTableCellRenderer {

    private static final long serialVersionUID = 1L;

    private final transient Rows rows;

    Cell(Rows rows, int column) {
      this.rows = rows;
      setHorizontalAlignment(
          column == 0 || column == 4 ? SwingConstants.LEFT : SwingConstants.RIGHT);
    }

    @Override
    public Component getTableCellRendererComponent(
        JTable table, Object value, boolean selected, boolean focused, int row, int column) {
      Component cell =
          super.getTableCellRendererComponent(table, value, selected, focused, row, column);
      cell.setFont(rows.weighed.get(row) ? table.getFont().deriveFont(Font.BOLD) : table.getFont());
      return cell;
    }
  }

  private static final class Rows extends AbstractTableModel {

    private static final long serialVersionUID = 1L;
    private static final String[] HEADER = {"criterion", "candidate", "range", "today", "unit"};

    private final List<List<String>> cells = new ArrayList<>();
    private final List<String> tips = new ArrayList<>();
    private final List<Boolean> weighed = new ArrayList<>();

    Rows(Ranked ranked, Detail detail) {
      List<Weighed> criteria = ranked.ranking().model().criteria();
      for (int c = 0; c < criteria.size(); c++) {
        add(ranked, detail, criteria.get(c), c);
      }
    }

    private void add(Ranked ranked, Detail detail, Weighed criterion, int c) {
      BoundCriterion bound = criterion.criterion();
      double figure = detail.sheet().valuation().parts().get(c).low();
      double today = ranked.baseline().valuation().parts().get(c).low();
      cells.add(
          List.of(
              CriterionWords.title(ranked, bound),
              CriterionWords.figure(ranked, bound, figure),
              range(detail.ranges().getOrDefault(bound.id(), Range.UNKNOWN), bound),
              CriterionWords.figure(ranked, bound, today),
              CriterionWords.unit(bound)));
      tips.add(tip(ranked, bound, detail.sheet().outcomes().get(c)));
      weighed.add(criterion.counts());
    }

    private static String range(Range range, BoundCriterion criterion) {
      return range.known() && criterion.criterion().classes().isEmpty()
          ? Digits.sensible(range.low()) + " – " + Digits.sensible(range.high())
          : "";
    }

    private static String tip(Ranked ranked, BoundCriterion criterion, Outcome outcome) {
      String why = "";
      if (outcome instanceof Outcome.DataMissing data) {
        why = Words.of("figures.missing", data.subject(), data.property());
      } else if (outcome instanceof Outcome.NotApplicable not) {
        why = CriterionWords.sentence(ranked, criterion, not.why());
      }
      String help = CriterionWords.help(ranked, criterion);
      return why.isEmpty() ? help : help.replace("</body>", "<br><b>" + why + "</b></body>");
    }

    @Override
    public int getRowCount() {
      return cells.size();
    }

    @Override
    public int getColumnCount() {
      return HEADER.length;
    }

    @Override
    public String getColumnName(int column) {
      return Words.of("figures." + HEADER[column]);
    }

    @Override
    public Object getValueAt(int row, int column) {
      return cells.get(row).get(column);
    }
  }
}
