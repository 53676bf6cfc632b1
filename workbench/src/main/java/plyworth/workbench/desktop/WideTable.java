package plyworth.workbench.desktop;

import javax.swing.JTable;
import javax.swing.table.TableModel;

/** A table that fills the width there is, and scrolls to the side rather than cut a column. */
class WideTable extends JTable {

  private static final long serialVersionUID = 1L;

  /**
   * A table.
   *
   * @param model its rows; null for none yet
   */
  WideTable(TableModel model) {
    super(model);
  }

  @Override
  public boolean getScrollableTracksViewportWidth() {
    return getParent() == null || getPreferredSize().width < getParent().getWidth();
  }
}
