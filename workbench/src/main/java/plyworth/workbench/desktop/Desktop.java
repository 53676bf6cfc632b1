package plyworth.workbench.desktop;

import java.nio.file.Path;
import javax.swing.SwingUtilities;
import plyworth.workbench.host.PluginCatalog;

/** Opens the window. */
public final class Desktop {

  private Desktop() {}

  /** Opens the window on a study file. */
  public static void open(Path study, PluginCatalog catalog) {
    SwingUtilities.invokeLater(() -> show(study, catalog, Appearance.LIGHT));
  }

  /** Builds and shows the window; on the event thread. */
  static WorkbenchFrame show(Path study, PluginCatalog catalog, Appearance appearance) {
    appearance.apply();
    WorkbenchFrame frame = new WorkbenchFrame(new Session(catalog));
    frame.setVisible(true);
    frame.open(study);
    return frame;
  }
}
