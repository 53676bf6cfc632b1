package plyworth.workbench.desktop.part;

import java.awt.KeyboardFocusManager;
import java.util.Collections;
import javax.swing.JTable;
import javax.swing.KeyStroke;
import javax.swing.table.TableColumn;
import javax.swing.table.TableModel;

/** A table that fills the width there is, and scrolls to the side rather than cut a column. */
public class WideTable extends JTable {

  private static final long serialVersionUID = 1L;

  /** What a column says that nobody told a least width. */
  private static final int UNSAID = new TableColumn().getMinWidth();

  /**
   * A table.
   *
   * @param model its rows; null for none yet
   */
  public WideTable(TableModel model) {
    super(model);
    letTabLeave(this);
  }

  /**
   * Lets Tab lead on from a table rather than from cell to cell, and Enter answer the dialog that
   * it stands in.
   */
  public static void letTabLeave(JTable table) {
    table.setFocusTraversalKeys(KeyboardFocusManager.FORWARD_TRAVERSAL_KEYS, null);
    table.setFocusTraversalKeys(KeyboardFocusManager.BACKWARD_TRAVERSAL_KEYS, null);
    table
        .getInputMap(WHEN_ANCESTOR_OF_FOCUSED_COMPONENT)
        .put(KeyStroke.getKeyStroke("ENTER"), "none");
  }

  @Override
  public boolean getScrollableTracksViewportWidth() {
    return getParent() == null || least() < getParent().getWidth();
  }

  /** Columns that may be narrower than they would like say so by a least width. */
  private int least() {
    return Collections.list(getColumnModel().getColumns()).stream()
        .mapToInt(c -> c.getMinWidth() > UNSAID ? c.getMinWidth() : c.getPreferredWidth())
        .sum();
  }
}
