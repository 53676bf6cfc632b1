package plyworth.workbench.desktop.part;

import com.formdev.flatlaf.util.UIScale;
import java.awt.Dimension;
import javax.swing.JDialog;

/**
 * Makes dialogs as large as they would be in letters of any size, and no larger than the screen.
 */
public final class DialogSize {

  private static final int MARGIN = 60;

  private DialogSize() {}

  /** A size in normal letters as it is in those in force, within the screen. */
  public static Dimension within(JDialog dialog, Dimension normal) {
    Dimension wanted = UIScale.scale(normal);
    Dimension screen = dialog.getToolkit().getScreenSize();
    return new Dimension(
        Math.min(wanted.width, screen.width - MARGIN),
        Math.min(wanted.height, screen.height - MARGIN));
  }
}
