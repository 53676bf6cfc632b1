package plyworth.workbench.desktop;

import java.awt.GraphicsEnvironment;
import java.nio.file.Path;
import javax.swing.SwingUtilities;
import plyworth.workbench.desktop.session.Remembered;
import plyworth.workbench.desktop.session.Session;
import plyworth.workbench.desktop.session.UserFolder;
import plyworth.workbench.host.PluginCatalog;

/** Opens the window. */
public final class Desktop {

  private Desktop() {}

  /** Whether there is a display to open a window on. */
  public static boolean available() {
    return !GraphicsEnvironment.isHeadless();
  }

  /** Opens the window on a study file. */
  public static void open(Path study, PluginCatalog catalog) {
    SwingUtilities.invokeLater(() -> show(study, catalog, new Remembered(UserFolder.here())));
  }

  /** Builds and shows the window; on the event thread. */
  static WorkbenchFrame show(Path study, PluginCatalog catalog, Remembered remembered) {
    remembered.language().speak();
    remembered.textSize().take();
    remembered.appearance().apply();
    WorkbenchFrame frame =
        new WorkbenchFrame(new Session(catalog, remembered.unsaved()), remembered);
    frame.dress(remembered.appearance());
    frame.setVisible(true);
    frame.open(study);
    SwingUtilities.invokeLater(() -> frame.offerNeverSaved(study));
    return frame;
  }
}
