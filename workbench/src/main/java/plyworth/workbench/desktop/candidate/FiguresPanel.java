package plyworth.workbench.desktop.candidate;

import com.formdev.flatlaf.util.UIScale;
import java.awt.BorderLayout;
import java.awt.Component;
import java.awt.Font;
import java.awt.event.MouseEvent;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.SwingConstants;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.TableColumn;
import plyworth.workbench.desktop.part.Columns;
import plyworth.workbench.desktop.part.FileDrop;
import plyworth.workbench.desktop.part.StackPanel;
import plyworth.workbench.desktop.part.WideTable;
import plyworth.workbench.desktop.part.Wrapping;
import plyworth.workbench.desktop.session.Detail;
import plyworth.workbench.desktop.word.Words;

/** Every figure of a structure with its range, beside today's. */
final class FiguresPanel {

  private static final int NARROWEST = 100;

  private final JPanel panel = new JPanel(new BorderLayout());
  private final JTextArea note =
      StackPanel.words(Words.of("figures.range-note", Detail.DRAWS), Font.PLAIN);
  private final JTable table =
      new WideTable(null) {
        private static final long serialVersionUID = 1L;

        @Override
        public String getToolTipText(MouseEvent event) {
          int row = rowAtPoint(event.getPoint());
          int column = columnAtPoint(event.getPoint());
          return row >= 0 && getModel() instanceof FigureRows rows ? rows.tip(row, column) : null;
        }
      };

  private final Wrapping names =
      new Wrapping(
          table, column -> column == 0, row -> ((FigureRows) table.getModel()).weighed(row));

  FiguresPanel() {
    table.setName("figures");
    FileDrop.onto(table);
    table.setFillsViewportHeight(true);
    table.putClientProperty("FlatLaf.styleClass", "medium");
    table.setDefaultRenderer(Object.class, new CellRenderer());
    table.getAccessibleContext().setAccessibleName(Words.of("candidate.figures.name"));
    panel.add(new JScrollPane(table), BorderLayout.CENTER);
    panel.add(StackPanel.note(note), BorderLayout.SOUTH);
  }

  JComponent component() {
    return panel;
  }

  /** What the keyboard works on. */
  JComponent target() {
    return table;
  }

  void show(Detail detail) {
    int row = table.getSelectedRow();
    table.setModel(new FigureRows(detail));
    Columns.fit(table);
    TableColumn name = table.getColumnModel().getColumn(0);
    name.setMinWidth(UIScale.scale(NARROWEST));
    name.setPreferredWidth(UIScale.scale(NARROWEST));
    for (int c = 1; c < table.getColumnCount(); c++) {
      TableColumn column = table.getColumnModel().getColumn(c);
      column.setMinWidth(column.getPreferredWidth());
      column.setMaxWidth(column.getPreferredWidth());
    }
    names.follow();
    if (row >= 0 && row < table.getRowCount()) {
      table.setRowSelectionInterval(row, row);
    }
  }

  /** Figures right-aligned; what has weight in bold. */
  private static final class CellRenderer extends DefaultTableCellRenderer {

    private static final long serialVersionUID = 1L;

    @Override
    public Component getTableCellRendererComponent(
        JTable table, Object value, boolean selected, boolean focused, int row, int column) {
      super.getTableCellRendererComponent(table, value, selected, focused, row, column);
      FigureRows rows = (FigureRows) table.getModel();
      setHorizontalAlignment(rows.isText(column) ? SwingConstants.LEFT : SwingConstants.RIGHT);
      setFont(rows.weighed(row) ? table.getFont().deriveFont(Font.BOLD) : table.getFont());
      return this;
    }
  }
}
