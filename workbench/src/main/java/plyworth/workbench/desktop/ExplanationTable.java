package plyworth.workbench.desktop;

import java.awt.Dimension;
import java.awt.event.MouseWheelListener;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.SwingConstants;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.DefaultTableModel;
import plyworth.shared.scoring.Explanation;
import plyworth.workbench.host.BoundPlugin;
import plyworth.workbench.host.Digits;
import plyworth.workbench.host.Sentences;

/** A table of an explanation: as high as its rows, scrolling to the side where it is wider. */
final class ExplanationTable {

  private static final int WIDEST = 240;
  private static final int SCROLL_BAR = 14;

  private ExplanationTable() {}

  static JComponent of(BoundPlugin plugin, Explanation.Table data) {
    JTable table = new JTable(model(plugin, data));
    table.setDefaultRenderer(Object.class, new CellRenderer());
    table.setAutoResizeMode(JTable.AUTO_RESIZE_OFF);
    table
        .getAccessibleContext()
        .setAccessibleName(
            Sentences.of(plugin.plugin(), data.title(), Language.inForce().locale()));
    int width = Columns.fit(table, WIDEST);
    JScrollPane scroll =
        new JScrollPane(
            table,
            JScrollPane.VERTICAL_SCROLLBAR_NEVER,
            JScrollPane.HORIZONTAL_SCROLLBAR_AS_NEEDED);
    int height =
        table.getTableHeader().getPreferredSize().height
            + table.getRowHeight() * table.getRowCount()
            + SCROLL_BAR;
    scroll.setPreferredSize(new Dimension(width, height));
    letTheWheelThrough(scroll);
    return scroll;
  }

  /** The wheel turns the whole explanation, not the table under the pointer. */
  private static void letTheWheelThrough(JScrollPane scroll) {
    for (MouseWheelListener listener : scroll.getMouseWheelListeners()) {
      scroll.removeMouseWheelListener(listener);
    }
  }

  private static DefaultTableModel model(BoundPlugin plugin, Explanation.Table data) {
    Object[] header =
        data.columns().stream()
            .map(c -> Sentences.of(plugin.plugin(), c, Language.inForce().locale()))
            .toArray();
    DefaultTableModel model =
        new DefaultTableModel(header, 0) {
          private static final long serialVersionUID = 1L;

          @Override
          public boolean isCellEditable(int row, int column) {
            return false;
          }
        };
    for (List<Object> row : data.rows()) {
      model.addRow(row.toArray());
    }
    return model;
  }

  /** Numbers right-aligned with sensible digits; long texts in a tooltip as well. */
  private static final class CellRenderer extends DefaultTableCellRenderer {

    private static final long serialVersionUID = 1L;

    @Override
    protected void setValue(Object value) {
      boolean number = value instanceof Double;
      setHorizontalAlignment(number ? SwingConstants.RIGHT : SwingConstants.LEFT);
      String text = number ? Digits.sensible((Double) value) : UnitText.of(String.valueOf(value));
      setText(text);
      setToolTipText(text);
    }
  }
}
