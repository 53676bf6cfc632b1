package plyworth.workbench.desktop;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.Rectangle;
import java.awt.Window;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Function;
import javax.swing.JButton;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JFileChooser;
import javax.swing.JLabel;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import javax.swing.JTable;
import javax.swing.RepaintManager;
import javax.swing.SwingUtilities;
import javax.swing.text.BadLocationException;
import javax.swing.text.JTextComponent;
import org.jfree.chart.ChartPanel;
import org.jfree.chart.title.TextTitle;
import plyworth.workbench.desktop.part.Appearance;
import plyworth.workbench.desktop.part.Page;
import plyworth.workbench.desktop.part.TextSize;
import plyworth.workbench.desktop.session.Remembered;
import plyworth.workbench.desktop.word.Language;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.host.PluginCatalog;

/** A real window on a study, with a hand to work it; closing it checks the event thread. */
final class OpenWindow implements AutoCloseable {

  final Hand hand = new Hand();
  final WorkbenchFrame frame;
  private final EventThreadGuard guard = new EventThreadGuard();
  private final RepaintManager before;

  private OpenWindow(Path study, PluginCatalog catalog, Remembered remembered) {
    before = RepaintManager.currentManager(null);
    AtomicReference<WorkbenchFrame> opened = new AtomicReference<>();
    Screen.on(
        () -> {
          RepaintManager.setCurrentManager(guard);
          opened.set(Desktop.show(study, catalog, remembered));
          return null;
        });
    frame = opened.get();
  }

  /** Opens a study and waits for its ranking and everything about the first. */
  static OpenWindow ranked(Path study, PluginCatalog catalog) {
    OpenWindow window = opened(study, catalog);
    window.awaitRest();
    return window;
  }

  /** Opens a study and waits for nothing. */
  static OpenWindow opened(Path study, PluginCatalog catalog) {
    return opened(study, catalog, newcomer(study));
  }

  /** Opens a study for a user of whom something is remembered, and waits for nothing. */
  static OpenWindow opened(Path study, PluginCatalog catalog, Remembered remembered) {
    return new OpenWindow(study, catalog, remembered);
  }

  /** A user of whom nothing is remembered but English. */
  static Remembered newcomer(Path study) {
    Remembered remembered = new Remembered(study.resolveSibling("remembered"));
    remembered.language(Language.ENGLISH);
    return remembered;
  }

  /** Waits until nothing is worked on any more. */
  void awaitRest() {
    Screen.await("the figures have ranges", () -> ready());
  }

  /** The figures of a study opened before stand until those of the new one are there. */
  private boolean ready() {
    return Screen.find("progress", JComponent.class).isEmpty()
        && status().matches(".*(candidates:|个候选结构：).*")
        && !head().equals(Words.of("candidate.none"))
        && !head().equals(Words.of("candidate.waiting"))
        && Screen.find("figures", JTable.class)
            .filter(t -> t.getRowCount() > 0)
            .filter(t -> !t.getValueAt(0, 3).equals("…"))
            .isPresent();
  }

  <C extends JComponent> String text(String name, Class<C> type, Function<C, String> text) {
    return Screen.on(() -> Screen.find(name, type).map(text).orElse(""));
  }

  String title() {
    return Screen.on(frame::getTitle);
  }

  String status() {
    return text("status", JLabel.class, JLabel::getText);
  }

  String head() {
    return text("candidate-head", JLabel.class, JLabel::getText);
  }

  String notice() {
    return text("notice", JTextComponent.class, JTextComponent::getText);
  }

  /** What a message on screen says, waited for. */
  String refusal() {
    JTextComponent message = Screen.get("dialog-text", JTextComponent.class);
    Screen.await(
        "the message has the keyboard",
        () -> hasKeyboard(SwingUtilities.getWindowAncestor(message)));
    return Screen.on(() -> message.getText());
  }

  /** Closes the message by Enter. */
  void understand() {
    hand.key(KeyEvent.VK_ENTER);
    Screen.await(
        "the message is gone", () -> Screen.find("dialog-text", JTextComponent.class).isEmpty());
  }

  /** The words of a page, however its lines are broken. */
  String words(String page) {
    return text(page, Page.class, OpenWindow::plain).replaceAll("\\s+", " ");
  }

  private static String plain(Page page) {
    try {
      return page.getDocument().getText(0, page.getDocument().getLength());
    } catch (BadLocationException e) {
      throw new IllegalStateException(e);
    }
  }

  ChartPanel chart() {
    return Screen.get("ranking-chart", ChartPanel.class);
  }

  /** What stands under the title of the chart. */
  String chartNote() {
    return Screen.on(() -> ((TextTitle) chart().getChart().getSubtitle(0)).getText());
  }

  /** The structure of a row of the table behind the chart. */
  String tableCell(int row, int column) {
    return Screen.on(
        () -> Screen.get("ranking-table", JTable.class).getValueAt(row, column).toString());
  }

  /** Strikes a key with the menu key, once the window has the keyboard. */
  void shortcut(int key, int... more) {
    takeKeyboard();
    Screen.await("the window has the keyboard", () -> hasKeyboard(frame));
    hand.menuKey(key, more);
  }

  /** Without a window manager nobody gives the keyboard back when a dialog closes. */
  private void takeKeyboard() {
    Screen.on(
        () -> {
          Component last = frame.getMostRecentFocusOwner();
          if (!hasKeyboard(frame)) {
            (last == null ? frame : last).requestFocus();
          }
          return last;
        });
  }

  /** Gives the keyboard to the dialog on top, or else to the window, where nobody has it. */
  void regainKeyboard() {
    Screen.on(
        () -> {
          Window top = frame;
          for (Window window : Window.getWindows()) {
            top = window instanceof JDialog && window.isShowing() ? window : top;
          }
          Component last = top.getMostRecentFocusOwner();
          if (KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner() == null) {
            (last == null ? top : last).requestFocus();
          }
          return last;
        });
  }

  private static boolean hasKeyboard(Window window) {
    KeyboardFocusManager focus = KeyboardFocusManager.getCurrentKeyboardFocusManager();
    return focus.getFocusedWindow() == window && focus.getFocusOwner() != null;
  }

  /** Puts the keyboard on a part by its number. */
  void goTo(int place) {
    shortcut(KeyEvent.VK_0 + place);
  }

  /** Chooses a file in the dialog that is open, by Enter. */
  void choose(Path path) {
    JFileChooser chooser = Screen.get("files", JFileChooser.class);
    Screen.on(
        () -> {
          chooser.setSelectedFile(path.toFile());
          return null;
        });
    Screen.await("the file is chosen", () -> path.toFile().equals(chooser.getSelectedFile()));
    Screen.await(
        "the dialog has the keyboard",
        () -> hasKeyboard(SwingUtilities.getWindowAncestor(chooser)));
    hand.key(KeyEvent.VK_ENTER);
  }

  /**
   * Says yes, no or cancel to the question on screen, once it has the keyboard; without the mouse,
   * which misses it where the question still moves to its place.
   */
  void answer(String label) {
    Screen.await(label + " is offered", () -> button(label) != null);
    JButton button = Screen.on(() -> button(label));
    Screen.await(
        "the question has the keyboard",
        () -> hasKeyboard(SwingUtilities.getWindowAncestor(button)));
    SwingUtilities.invokeLater(button::doClick);
    Screen.await("the question is gone", () -> !button.isShowing());
  }

  private static JButton button(String label) {
    for (Window window : Window.getWindows()) {
      if (window.isShowing() && window instanceof JDialog) {
        for (Component part : Screen.all(window)) {
          if (part instanceof JButton button && label.equals(button.getText())) {
            return button;
          }
        }
      }
    }
    return null;
  }

  /** Chooses something from the menus. */
  void choose(String command) {
    Screen.on(
        () -> {
          Screen.all(frame.getJMenuBar()).stream()
              .filter(JMenu.class::isInstance)
              .flatMap(m -> Screen.all(((JMenu) m).getPopupMenu()).stream())
              .filter(item -> ("menu:" + command).equals(item.getName()))
              .map(JMenuItem.class::cast)
              .findFirst()
              .orElseThrow()
              .doClick(0);
          return null;
        });
  }

  void dress(Appearance appearance) {
    Screen.on(
        () -> {
          frame.dress(appearance);
          return null;
        });
  }

  void picture(String name) {
    Screen.keep(name, hand.picture(Screen.on(() -> new Rectangle(frame.getBounds()))));
  }

  /**
   * Puts everything on again as it was, and returns when the window has heard that it is closed.
   */
  @Override
  public void close() {
    Screen.on(
        () -> {
          for (Window window : Window.getWindows()) {
            window.dispose();
          }
          RepaintManager.setCurrentManager(before);
          Language.ENGLISH.speak();
          TextSize.NORMAL.take();
          Appearance.LIGHT.apply();
          return null;
        });
    Screen.on(() -> null);
    if (!guard.violations().isEmpty()) {
      throw new AssertionError("changed off the event thread: " + guard.violations());
    }
  }
}
