package plyworth.workbench.desktop.part;

import java.awt.Component;
import javax.swing.JTable;
import javax.swing.SwingConstants;
import javax.swing.table.DefaultTableCellRenderer;
import plyworth.workbench.chart.Html;

/**
 * Cells of a {@link ChartRows}, of one line or several: figures right-aligned, long texts in a
 * tooltip as well.
 */
final class ChartCells extends DefaultTableCellRenderer {

  private static final long serialVersionUID = 1L;

  @Override
  public Component getTableCellRendererComponent(
      JTable table, Object value, boolean selected, boolean focused, int row, int column) {
    super.getTableCellRendererComponent(table, value, selected, focused, row, column);
    boolean figures =
        table.getModel() instanceof ChartRows rows
            && rows.figures(table.convertColumnIndexToModel(column));
    setHorizontalAlignment(figures ? SwingConstants.RIGHT : SwingConstants.LEFT);
    String text = value.toString();
    setText(text.indexOf('\n') < 0 ? text : inLines(text, figures));
    setToolTipText(text.isEmpty() ? null : text.replace('\n', ' '));
    return this;
  }

  private static String inLines(String text, boolean figures) {
    return "<html><div align='"
        + (figures ? "right" : "left")
        + "'>"
        + Html.escaped(text).replace("\n", "<br>")
        + "</div></html>";
  }
}
