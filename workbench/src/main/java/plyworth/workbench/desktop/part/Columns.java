package plyworth.workbench.desktop.part;

import java.awt.Component;
import javax.swing.JTable;
import javax.swing.table.TableColumn;

/** Makes the columns of a table as wide as what stands in them. */
public final class Columns {

  private static final int ROWS = 60;
  private static final int ROOM = 2;

  private Columns() {}

  /** Fits every column, however wide. */
  public static int fit(JTable table) {
    return fit(table, Integer.MAX_VALUE);
  }

  /**
   * Fits every column.
   *
   * @param widest no column gets wider for its cells, whose longer texts have to be broken into
   *     lines; a heading always has room
   * @return the width of all columns
   */
  public static int fit(JTable table, int widest) {
    int sum = 0;
    for (int c = 0; c < table.getColumnCount(); c++) {
      int width = 0;
      for (int r = 0; r < Math.min(ROWS, table.getRowCount()); r++) {
        Component cell = table.prepareRenderer(table.getCellRenderer(r, c), r, c);
        width = Math.max(width, cell.getPreferredSize().width);
      }
      width = Math.max(header(table, c), Math.min(widest, width)) + ROOM;
      table.getColumnModel().getColumn(c).setPreferredWidth(width);
      sum += width;
    }
    return sum;
  }

  private static int header(JTable table, int c) {
    TableColumn column = table.getColumnModel().getColumn(c);
    return table
        .getTableHeader()
        .getDefaultRenderer()
        .getTableCellRendererComponent(table, column.getHeaderValue(), false, false, -1, c)
        .getPreferredSize()
        .width;
  }
}
