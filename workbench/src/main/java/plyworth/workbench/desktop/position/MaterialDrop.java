package plyworth.workbench.desktop.position;

import java.awt.datatransfer.Clipboard;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.IOException;
import java.util.function.IntConsumer;
import javax.swing.DropMode;
import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.TransferHandler;
import plyworth.shared.material.Material;

/** Takes a material that is dropped on a row of a table; everything else goes on as before. */
final class MaterialDrop extends TransferHandler {

  private static final long serialVersionUID = 1L;

  private final transient TransferHandler before;
  private final transient IntConsumer dropped;

  private MaterialDrop(TransferHandler before, IntConsumer dropped) {
    this.before = before;
    this.dropped = dropped;
  }

  /**
   * Lets a table take materials.
   *
   * @param dropped told the row; the dragged material is the one that is marked
   */
  static void onto(JTable table, IntConsumer dropped) {
    table.setDropMode(DropMode.ON);
    table.setTransferHandler(new MaterialDrop(table.getTransferHandler(), dropped));
  }

  @Override
  public boolean canImport(TransferSupport support) {
    if (!support.isDataFlavorSupported(MaterialDrag.MATERIAL)) {
      return before.canImport(support);
    }
    return row(support) >= 0;
  }

  private static int row(TransferSupport support) {
    return support.isDrop() && support.getDropLocation() instanceof JTable.DropLocation place
        ? place.getRow()
        : -1;
  }

  @Override
  public boolean importData(TransferSupport support) {
    if (!support.isDataFlavorSupported(MaterialDrag.MATERIAL)) {
      return before.importData(support);
    }
    try {
      boolean ours =
          support.getTransferable().getTransferData(MaterialDrag.MATERIAL) instanceof Material;
      if (ours && row(support) >= 0) {
        dropped.accept(row(support));
        return true;
      }
      return false;
    } catch (UnsupportedFlavorException | IOException e) {
      return false;
    }
  }

  @Override
  public void exportToClipboard(JComponent from, Clipboard clipboard, int action) {
    before.exportToClipboard(from, clipboard, action);
  }
}
