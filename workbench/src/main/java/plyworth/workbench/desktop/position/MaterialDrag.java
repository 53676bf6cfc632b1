package plyworth.workbench.desktop.position;

import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;
import javax.swing.JComponent;
import javax.swing.JList;
import javax.swing.TransferHandler;
import plyworth.shared.material.Material;

/** Lets materials be dragged out of a list. */
final class MaterialDrag extends TransferHandler {

  private static final long serialVersionUID = 1L;

  /** What is dragged: a {@link Material} of this window. */
  static final DataFlavor MATERIAL = new DataFlavor(Material.class, "material");

  @Override
  public int getSourceActions(JComponent list) {
    return COPY;
  }

  @Override
  protected Transferable createTransferable(JComponent list) {
    Object marked = ((JList<?>) list).getSelectedValue();
    return marked instanceof Material material ? new Dragged(material) : null;
  }

  /** A material on its way. */
  private record Dragged(Material material) implements Transferable {

    @Override
    public DataFlavor[] getTransferDataFlavors() {
      return new DataFlavor[] {MATERIAL};
    }

    @Override
    public boolean isDataFlavorSupported(DataFlavor flavor) {
      return MATERIAL.equals(flavor);
    }

    @Override
    public Object getTransferData(DataFlavor flavor) throws UnsupportedFlavorException {
      if (!isDataFlavorSupported(flavor)) {
        throw new UnsupportedFlavorException(flavor);
      }
      return material;
    }
  }
}
