package plyworth.workbench.desktop.part;

import javax.swing.table.AbstractTableModel;
import plyworth.workbench.chart.ChartTable;

/** The rows of a table that stands for a chart. */
final class ChartRows extends AbstractTableModel {

  private static final long serialVersionUID = 1L;

  private final transient ChartTable table;

  ChartRows(ChartTable table) {
    this.table = table;
  }

  boolean figures(int column) {
    return table.columns().get(column).figures();
  }

  @Override
  public int getRowCount() {
    return table.rows().size();
  }

  @Override
  public int getColumnCount() {
    return table.columns().size();
  }

  @Override
  public String getColumnName(int column) {
    return table.columns().get(column).title();
  }

  @Override
  public Object getValueAt(int row, int column) {
    return table.rows().get(row).get(column);
  }
}
