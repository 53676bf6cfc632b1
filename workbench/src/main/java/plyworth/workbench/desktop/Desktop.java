package plyworth.workbench.desktop;

import java.awt.GraphicsEnvironment;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.SwingUtilities;
import plyworth.workbench.desktop.session.ReadStudy;
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

  /**
   * Opens the window on a study file. The file is read while the look is put on, and its candidates
   * are scored while the window is built.
   */
  public static void open(Path study, PluginCatalog catalog) {
    Remembered remembered = new Remembered(UserFolder.here());
    SwingUtilities.invokeLater(() -> putOn(remembered));
    Optional<ReadStudy> read = read(study, catalog, remembered);
    SwingUtilities.invokeLater(() -> show(study, read, catalog, remembered));
  }

  /** What cannot be read is left to the window, which says why. */
  private static Optional<ReadStudy> read(
      Path study, PluginCatalog catalog, Remembered remembered) {
    try {
      return Optional.of(ReadStudy.of(study, catalog, remembered.unsaved()));
    } catch (RuntimeException e) {
      return Optional.empty();
    }
  }

  /** Builds and shows the window; on the event thread. */
  static WorkbenchFrame show(Path study, PluginCatalog catalog, Remembered remembered) {
    putOn(remembered);
    return show(study, Optional.empty(), catalog, remembered);
  }

  private static void putOn(Remembered remembered) {
    remembered.language().speak();
    remembered.textSize().take();
    remembered.appearance().apply();
  }

  private static WorkbenchFrame show(
      Path study, Optional<ReadStudy> read, PluginCatalog catalog, Remembered remembered) {
    Session session = new Session(catalog, remembered.unsaved());
    read.ifPresent(session::show);
    WorkbenchFrame frame = new WorkbenchFrame(session, remembered);
    frame.setVisible(true);
    read.ifPresentOrElse(frame::offer, () -> frame.open(study));
    SwingUtilities.invokeLater(() -> frame.offerNeverSaved(study));
    return frame;
  }
}
