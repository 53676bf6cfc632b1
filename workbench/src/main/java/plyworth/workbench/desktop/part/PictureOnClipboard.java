package plyworth.workbench.desktop.part;

import java.awt.Image;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.datatransfer.UnsupportedFlavorException;

/** A picture that other programs can paste. */
record PictureOnClipboard(Image picture) implements Transferable {

  @Override
  public DataFlavor[] getTransferDataFlavors() {
    return new DataFlavor[] {DataFlavor.imageFlavor};
  }

  @Override
  public boolean isDataFlavorSupported(DataFlavor flavour) {
    return DataFlavor.imageFlavor.equals(flavour);
  }

  @Override
  public Object getTransferData(DataFlavor flavour) throws UnsupportedFlavorException {
    if (!isDataFlavorSupported(flavour)) {
      throw new UnsupportedFlavorException(flavour);
    }
    return picture;
  }
}
