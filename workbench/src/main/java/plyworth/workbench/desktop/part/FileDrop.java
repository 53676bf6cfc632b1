package plyworth.workbench.desktop.part;

import java.awt.datatransfer.Clipboard;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.io.File;
import java.io.IOException;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import javax.swing.TransferHandler;

/** Opens a study file that is dropped on the window; copying works as before. */
public final class FileDrop extends TransferHandler {

  private static final long serialVersionUID = 1L;

  private final transient TransferHandler before;

  private FileDrop(TransferHandler before) {
    this.before = before;
  }

  /** Lets a component take a study file. */
  public static void onto(JComponent target) {
    if (!(target.getTransferHandler() instanceof FileDrop)) {
      target.setTransferHandler(new FileDrop(target.getTransferHandler()));
    }
  }

  @Override
  public void exportToClipboard(JComponent from, Clipboard clipboard, int action) {
    if (before != null) {
      before.exportToClipboard(from, clipboard, action);
    }
  }

  @Override
  public boolean canImport(TransferSupport support) {
    return support.isDataFlavorSupported(DataFlavor.javaFileListFlavor);
  }

  @Override
  public boolean importData(TransferSupport support) {
    try {
      List<?> files =
          (List<?>) support.getTransferable().getTransferData(DataFlavor.javaFileListFlavor);
      boolean one = files.size() == 1 && files.get(0) instanceof File;
      if (one
          && SwingUtilities.getWindowAncestor(support.getComponent()) instanceof FileTaker taker) {
        SwingUtilities.invokeLater(() -> taker.openAfterAsking(((File) files.get(0)).toPath()));
        return true;
      }
      return false;
    } catch (UnsupportedFlavorException | IOException e) {
      return false;
    }
  }
}
