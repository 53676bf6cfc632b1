package plyworth.workbench.desktop.candidate;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import java.awt.event.MouseWheelListener;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import javax.swing.JComponent;
import javax.swing.JScrollPane;
import javax.swing.JTable;
import javax.swing.SwingConstants;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.DefaultTableModel;
import javax.swing.table.TableColumn;
import plyworth.shared.scoring.Explanation;
import plyworth.workbench.desktop.part.Columns;
import plyworth.workbench.desktop.part.FileDrop;
import plyworth.workbench.desktop.part.WideTable;
import plyworth.workbench.desktop.part.Wrapping;
import plyworth.workbench.desktop.word.Language;
import plyworth.workbench.desktop.word.UnitText;
import plyworth.workbench.host.BoundPlugin;
import plyworth.workbench.host.Digits;
import plyworth.workbench.host.Sentences;

/** A table of an explanation: as high as its rows, scrolling to the side where it is wider. */
final class ExplanationTable {

  private static final int WIDEST = 240;
  private static final int ROOM = 6;
  private static final int SCROLL_BAR = 14;

  private ExplanationTable() {}

  static JComponent of(BoundPlugin plugin, Explanation.Table data) {
    JTable table = new JTable(model(plugin, data));
    WideTable.letTabLeave(table);
    FileDrop.onto(table);
    table.setDefaultRenderer(Object.class, new CellRenderer());
    table.setAutoResizeMode(JTable.AUTO_RESIZE_OFF);
    table
        .getAccessibleContext()
        .setAccessibleName(
            Sentences.of(plugin.plugin(), data.title(), Language.inForce().locale()));
    Columns.fit(table, UIScale.scale(WIDEST));
    int width = 0;
    for (int c = 0; c < table.getColumnCount(); c++) {
      TableColumn column = table.getColumnModel().getColumn(c);
      column.setPreferredWidth(column.getPreferredWidth() + (isText(data, c) ? ROOM : 0));
      column.setWidth(column.getPreferredWidth());
      width += column.getWidth();
    }
    new Wrapping(table, column -> isText(data, column), row -> false).follow();
    JScrollPane scroll =
        new JScrollPane(
            table,
            JScrollPane.VERTICAL_SCROLLBAR_NEVER,
            JScrollPane.HORIZONTAL_SCROLLBAR_AS_NEEDED);
    int height =
        table.getTableHeader().getPreferredSize().height
            + IntStream.range(0, table.getRowCount()).map(table::getRowHeight).sum()
            + SCROLL_BAR;
    scroll.setPreferredSize(new Dimension(width, height));
    letTheWheelThrough(scroll);
    return scroll;
  }

  private static boolean isText(Explanation.Table data, int column) {
    return data.rows().stream().allMatch(row -> row.get(column) instanceof String);
  }

  /** The wheel turns the whole explanation, not the table under the pointer. */
  private static void letTheWheelThrough(JScrollPane scroll) {
    for (MouseWheelListener listener : scroll.getMouseWheelListeners()) {
      scroll.removeMouseWheelListener(listener);
    }
  }

  private static DefaultTableModel model(BoundPlugin plugin, Explanation.Table data) {
    Locale locale = Language.inForce().locale();
    Object[] header =
        data.columns().stream()
            .map(c -> UnitText.of(Sentences.of(plugin.plugin(), c, locale)))
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
      model.addRow(
          row.stream()
              .map(
                  c -> c instanceof String word ? Sentences.word(plugin.plugin(), word, locale) : c)
              .toArray());
    }
    return model;
  }

  /** Numbers right-aligned with sensible digits. */
  private static final class CellRenderer extends DefaultTableCellRenderer {

    private static final long serialVersionUID = 1L;

    @Override
    protected void setValue(Object value) {
      boolean number = value instanceof Double;
      setHorizontalAlignment(number ? SwingConstants.RIGHT : SwingConstants.LEFT);
      String text = number ? Digits.sensible((Double) value) : UnitText.of(String.valueOf(value));
      setVerticalAlignment(SwingConstants.TOP);
      setText(text);
    }
  }
}
