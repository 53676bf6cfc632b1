package plyworth.workbench.desktop.ranking;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.event.MouseEvent;
import java.util.List;
import javax.swing.JTable;
import javax.swing.RowSorter;
import javax.swing.SwingConstants;
import javax.swing.table.DefaultTableCellRenderer;
import javax.swing.table.JTableHeader;
import javax.swing.table.TableCellRenderer;
import plyworth.shared.structure.Structure;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.desktop.part.FileDrop;
import plyworth.workbench.desktop.part.WideTable;

/** A table of {@link RankingRows}, sorted by a click on a heading. */
final class RankingTable extends WideTable {

  private static final long serialVersionUID = 1L;

  RankingTable() {
    super(RankingRows.none());
    FileDrop.onto(this);
    setDefaultRenderer(RankingRows.Cell.class, new CellRenderer());
  }

  /** Headings of several lines: the highest decides. */
  @Override
  protected JTableHeader createDefaultTableHeader() {
    return new JTableHeader(columnModel) {
      private static final long serialVersionUID = 1L;

      @Override
      public String getToolTipText(MouseEvent event) {
        int column = columnAtPoint(event.getPoint());
        return column < 0 ? null : rows().headTip(convertColumnIndexToModel(column));
      }

      @Override
      public Dimension getPreferredSize() {
        Dimension size = super.getPreferredSize();
        for (int c = 0; c < columnModel.getColumnCount(); c++) {
          Object text = columnModel.getColumn(c).getHeaderValue();
          Component heading =
              getDefaultRenderer().getTableCellRendererComponent(table, text, false, false, -1, c);
          size.height = Math.max(size.height, heading.getPreferredSize().height);
        }
        return size;
      }
    };
  }

  private RankingRows rows() {
    return (RankingRows) getModel();
  }

  /** Shows a ranking; the order of a heading that was clicked stays. */
  void fill(Ranked ranked) {
    RankingRows rows = RankingRows.of(ranked);
    List<? extends RowSorter.SortKey> keys = getRowSorter().getSortKeys();
    boolean fits = rows.getColumnCount() == getModel().getColumnCount();
    setModel(rows);
    getRowSorter().setSortKeys(fits ? keys : null);
  }

  Structure structure(int viewRow) {
    return rows().structure(convertRowIndexToModel(viewRow));
  }

  /** Selects a structure where it is listed. */
  void mark(Structure structure) {
    int at = getSelectedRow();
    if (at >= 0 && structure(at).equals(structure)) {
      return;
    }
    int row = rows().indexOf(structure);
    if (row < 0) {
      clearSelection();
    } else {
      int view = convertRowIndexToView(row);
      setRowSelectionInterval(view, view);
      scrollRectToVisible(getCellRect(view, 0, true));
    }
  }

  @Override
  public String getToolTipText(MouseEvent event) {
    int row = rowAtPoint(event.getPoint());
    int column = columnAtPoint(event.getPoint());
    return row < 0 || column < 0
        ? null
        : rows().tip(convertRowIndexToModel(row), convertColumnIndexToModel(column));
  }

  /** Figures right-aligned, today's structure in bold. */
  private static final class CellRenderer extends DefaultTableCellRenderer
      implements TableCellRenderer {

    private static final long serialVersionUID = 1L;

    @Override
    public Component getTableCellRendererComponent(
        JTable table, Object value, boolean selected, boolean focused, int row, int column) {
      super.getTableCellRendererComponent(table, value, selected, focused, row, column);
      RankingRows rows = (RankingRows) table.getModel();
      setHorizontalAlignment(
          rows.isText(table.convertColumnIndexToModel(column))
              ? SwingConstants.LEFT
              : SwingConstants.RIGHT);
      boolean today = table.convertRowIndexToModel(row) == 0;
      setFont(today ? table.getFont().deriveFont(Font.BOLD) : table.getFont());
      return this;
    }
  }
}
