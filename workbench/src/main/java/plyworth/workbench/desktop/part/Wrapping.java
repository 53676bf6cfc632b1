package plyworth.workbench.desktop.part;

import java.awt.Component;
import java.awt.Font;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import javax.swing.BorderFactory;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.event.ChangeEvent;
import javax.swing.event.ListSelectionEvent;
import javax.swing.event.TableColumnModelEvent;
import javax.swing.event.TableColumnModelListener;
import javax.swing.table.TableCellRenderer;
import plyworth.workbench.desktop.word.UnitText;

/**
 * Breaks the words of table cells into as many lines as their column takes; rows grow with them.
 */
public final class Wrapping implements TableCellRenderer, TableColumnModelListener {

  private final JTable table;
  private final IntPredicate wrapped;
  private final IntPredicate bold;
  private final JTextArea text = new JTextArea();
  private List<Integer> fitted = List.of();

  /**
   * Breaks cells of a table.
   *
   * @param wrapped which columns are broken
   * @param bold which rows are written in bold
   */
  public Wrapping(JTable table, IntPredicate wrapped, IntPredicate bold) {
    this.table = table;
    this.wrapped = wrapped;
    this.bold = bold;
    text.setLineWrap(true);
    text.setWrapStyleWord(true);
    text.setBorder(BorderFactory.createEmptyBorder(2, 6, 2, 8));
  }

  /** Follows the columns of the table, after its model has changed. */
  public void follow() {
    table.getColumnModel().removeColumnModelListener(this);
    table.getColumnModel().addColumnModelListener(this);
    for (int c = 0; c < table.getColumnCount(); c++) {
      if (wrapped.test(c)) {
        table.getColumnModel().getColumn(c).setCellRenderer(this);
      }
    }
    fit();
  }

  private List<Integer> widths() {
    return IntStream.range(0, table.getColumnCount())
        .filter(wrapped)
        .mapToObj(this::width)
        .toList();
  }

  private void fit() {
    fitted = widths();
    for (int row = 0; row < table.getRowCount(); row++) {
      int height = table.getRowHeight();
      for (int c = 0; c < table.getColumnCount(); c++) {
        if (wrapped.test(c)) {
          fill(table.getValueAt(row, c), row, width(c));
          height = Math.max(height, text.getPreferredSize().height + 1);
        }
      }
      if (table.getRowHeight(row) != height) {
        table.setRowHeight(row, height);
      }
    }
  }

  private int width(int column) {
    return table.getColumnModel().getColumn(column).getWidth()
        - table.getColumnModel().getColumnMargin();
  }

  private void fill(Object value, int row, int width) {
    text.setFont(bold.test(row) ? table.getFont().deriveFont(Font.BOLD) : table.getFont());
    text.setText(UnitText.of(String.valueOf(value)));
    text.setSize(width, Short.MAX_VALUE);
  }

  @Override
  public Component getTableCellRendererComponent(
      JTable shown, Object value, boolean selected, boolean focused, int row, int column) {
    fill(value, row, width(column));
    text.setOpaque(selected);
    text.setForeground(selected ? shown.getSelectionForeground() : shown.getForeground());
    text.setBackground(selected ? shown.getSelectionBackground() : shown.getBackground());
    text.getAccessibleContext().setAccessibleName(text.getText());
    return text;
  }

  @Override
  public void columnMarginChanged(ChangeEvent event) {
    if (!widths().equals(fitted)) {
      fit();
    }
  }

  @Override
  public void columnAdded(TableColumnModelEvent event) {}

  @Override
  public void columnRemoved(TableColumnModelEvent event) {}

  @Override
  public void columnMoved(TableColumnModelEvent event) {}

  @Override
  public void columnSelectionChanged(ListSelectionEvent event) {}
}
