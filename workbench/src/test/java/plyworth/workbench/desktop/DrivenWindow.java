package plyworth.workbench.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Container;
import java.awt.GraphicsEnvironment;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.Robot;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import java.util.concurrent.FutureTask;
import javax.imageio.ImageIO;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.Assumptions;
import plyworth.workbench.host.PluginCatalog;

/** A real window, driven by mouse and keyboard. Skips the test where there is no display. */
final class DrivenWindow implements AutoCloseable {

  private static final long LIMIT_NANOS = 60_000_000_000L;
  private static final int PAUSE_MS = 25;

  private final Robot robot;
  private WorkbenchFrame frame;

  private DrivenWindow() throws Exception {
    robot = new Robot();
    robot.setAutoDelay(10);
  }

  static DrivenWindow on(Path study, Appearance appearance) throws Exception {
    Assumptions.assumeFalse(GraphicsEnvironment.isHeadless(), "there is no display");
    DrivenWindow window = new DrivenWindow();
    PluginCatalog catalog = PluginCatalog.load(Path.of("target/plyworth/plugins"));
    window.frame = window.onEventThread(() -> Desktop.show(study, catalog, appearance));
    return window;
  }

  <T> T onEventThread(Callable<T> work) throws Exception {
    FutureTask<T> task = new FutureTask<>(work);
    SwingUtilities.invokeLater(task);
    return task.get();
  }

  /** Waits until something is true on the event thread. */
  void await(String what, Callable<Boolean> condition) throws Exception {
    long start = System.nanoTime();
    while (!onEventThread(condition)) {
      assertThat(System.nanoTime() - start).as("waited for " + what).isLessThan(LIMIT_NANOS);
      Thread.sleep(PAUSE_MS);
    }
  }

  WorkbenchFrame frame() {
    return frame;
  }

  <T extends Component> T find(String name, Class<T> type) throws Exception {
    return onEventThread(() -> type.cast(search(frame, name)));
  }

  private static Component search(Container container, String name) {
    for (Component child : container.getComponents()) {
      if (name.equals(child.getName())) {
        return child;
      }
      Component found = child instanceof Container inner ? search(inner, name) : null;
      if (found != null) {
        return found;
      }
    }
    return null;
  }

  /** Clicks at a point of a component. */
  void click(Component component, int x, int y) throws Exception {
    Point at = onEventThread(component::getLocationOnScreen);
    robot.mouseMove(at.x + x, at.y + y);
    robot.mousePress(InputEvent.BUTTON1_DOWN_MASK);
    robot.mouseRelease(InputEvent.BUTTON1_DOWN_MASK);
    robot.waitForIdle();
  }

  /** Types one key with the menu key of the system held. */
  void shortcut(int key) {
    robot.keyPress(KeyEvent.VK_CONTROL);
    type(key);
    robot.keyRelease(KeyEvent.VK_CONTROL);
    robot.waitForIdle();
  }

  void type(int key) {
    robot.keyPress(key);
    robot.keyRelease(key);
    robot.waitForIdle();
  }

  /** Leaves a picture of the window for people to look at. */
  void picture(String name) throws Exception {
    robot.waitForIdle();
    Rectangle bounds = onEventThread(frame::getBounds);
    File file = Files.createDirectories(Path.of("target/screens")).resolve(name + ".png").toFile();
    ImageIO.write(robot.createScreenCapture(bounds), "png", file);
  }

  @Override
  public void close() {
    SwingUtilities.invokeLater(frame::dispose);
  }
}
