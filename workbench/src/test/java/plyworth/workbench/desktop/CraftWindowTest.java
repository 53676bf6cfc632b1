package plyworth.workbench.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.awt.GraphicsEnvironment;
import java.awt.Rectangle;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.Transferable;
import java.awt.event.KeyEvent;
import java.io.File;
import java.io.IOException;
import java.lang.ref.WeakReference;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JFileChooser;
import javax.swing.JList;
import javax.swing.JMenu;
import javax.swing.JMenuItem;
import javax.swing.JSlider;
import javax.swing.JTable;
import javax.swing.JTextField;
import javax.swing.TransferHandler;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plyworth.shared.store.StudyFile;
import plyworth.workbench.SmallStudy;

/** What people expect of any good window. */
class CraftWindowTest {

  private static final String COST = "cost/packed-per-1000";

  @TempDir Path folder;
  private Path file;

  @BeforeEach
  void writeStudy() {
    assumeFalse(GraphicsEnvironment.isHeadless());
    file = SmallStudy.file(folder, "mint", SmallStudy.few());
  }

  private OpenWindow open() {
    return OpenWindow.ranked(file, SmallStudy.CATALOG);
  }

  private static void raiseCost(OpenWindow window) {
    JSlider slider = Screen.get("weight:" + COST, JSlider.class);
    Screen.on(slider::requestFocusInWindow);
    Screen.await("the slider has the keyboard", slider::isFocusOwner);
    window.hand.key(KeyEvent.VK_RIGHT);
    Screen.await("the change is marked", () -> window.title().startsWith("•"));
  }

  @Test
  void aCommandIsFoundByItsWordsAndStartedByEnter() {
    try (OpenWindow window = open()) {
      JTextField words = findCommand(window);
      window.picture("window-commands");
      type(words, "view dar");
      JList<?> list = Screen.get("commands", JList.class);
      Screen.await("one is left", () -> list.getModel().getSize() == 1);
      int light = Screen.on(() -> window.frame.getContentPane().getBackground().getRed());
      window.hand.key(KeyEvent.VK_ENTER);
      Screen.await(
          "the ground is dark",
          () -> window.frame.getContentPane().getBackground().getRed() < light / 2);
    }
  }

  @Test
  void theMiddleStandsAloneAndTheSidesComeBackWhereTheyWere() {
    try (OpenWindow window = open()) {
      JComponent middle = Screen.get("view", JComponent.class);
      int before = Screen.on(middle::getWidth);
      window.choose("action.alone");
      Screen.await(
          "the middle is as wide as the window",
          () -> middle.getWidth() > 0.95 * window.frame.getContentPane().getWidth());
      window.picture("window-alone");
      window.choose("action.alone");
      Screen.await("the sides are back", () -> middle.getWidth() == before);
      window.choose("action.alone");
      window.goTo(8);
      Screen.await("what is gone to comes back", () -> middle.getWidth() == before);
      assertThat(Screen.find("weighting", JComponent.class)).isPresent();
    }
  }

  @Test
  void tabLeavesTheFiguresOfACandidate() {
    try (OpenWindow window = open()) {
      window.goTo(5);
      JTable figures = Screen.get("figures", JTable.class);
      Screen.await("the figures have the keyboard", figures::isFocusOwner);
      window.hand.key(KeyEvent.VK_TAB);
      Screen.await("they have it no more", () -> !figures.isFocusOwner());
      assertThat(Screen.on(figures::isFocusOwner)).isFalse();
    }
  }

  @Test
  void aClosedWindowIsFreed() {
    WeakReference<WorkbenchFrame> closed = new WeakReference<>(openedAndClosed());
    Screen.await(
        "nothing holds the window",
        () -> {
          System.gc();
          return closed.get() == null;
        });
    assertThat(closed.get()).isNull();
  }

  private WorkbenchFrame openedAndClosed() {
    try (OpenWindow window = open()) {
      return window.frame;
    }
  }

  private static JTextField findCommand(OpenWindow window) {
    window.shortcut(KeyEvent.VK_P, KeyEvent.VK_SHIFT);
    JTextField words = Screen.get("command-words", JTextField.class);
    Screen.await("the words have the keyboard", words::isFocusOwner);
    return words;
  }

  private static void type(JTextField field, String text) {
    Screen.on(
        () -> {
          field.setText(text);
          return null;
        });
  }

  @Test
  void aCommandThatCannotBeStartedIsListedAndDoesNothing() {
    try (OpenWindow window = open()) {
      JTextField words = findCommand(window);
      type(words, "redo");
      window.hand.key(KeyEvent.VK_ENTER);
      assertThat(Screen.find("command-words", JTextField.class)).isPresent();
      window.hand.key(KeyEvent.VK_ESCAPE);
      Screen.await(
          "the list is closed", () -> Screen.find("command-words", JTextField.class).isEmpty());
    }
  }

  private static List<String> listed() {
    JList<?> list = Screen.get("commands", JList.class);
    return Screen.on(() -> rows(list));
  }

  private static <E> List<String> rows(JList<E> list) {
    return IntStream.range(0, list.getModel().getSize())
        .mapToObj(
            i ->
                list.getCellRenderer()
                    .getListCellRendererComponent(
                        list, list.getModel().getElementAt(i), i, false, false)
                    .getAccessibleContext()
                    .getAccessibleName()
                    .strip())
        .toList();
  }

  @Test
  void everyButtonOfTheViewsIsInTheListAndIsPressedWhereItStands() {
    try (OpenWindow window = open()) {
      JTextField words = findCommand(window);
      List<String> all = listed();
      assertThat(all)
          .doesNotHaveDuplicates()
          .contains(
              "Why is a structure not there…  (Ranking) Ctrl+I",
              "Import…  (Materials)",
              "Read answers…  (Questions)",
              "Stop  (Robustness, Draw weights and inputs)",
              "Copy picture  (Ranking)");
      window.picture("window-commands-views");
      type(words, "export materials");
      Screen.await("one is left", () -> listed().size() == 1);
      window.hand.key(KeyEvent.VK_ENTER);
      Screen.await(
          "a file is asked for", () -> Screen.find("files", JFileChooser.class).isPresent());
      assertThat(Screen.get("button:materials.export", AbstractButton.class).isShowing()).isTrue();
      window.hand.key(KeyEvent.VK_ESCAPE);
    }
  }

  @Test
  void theFilesOpenedLastAreOfferedAgain() {
    Path other = SmallStudy.file(folder, "other", SmallStudy.few());
    try (OpenWindow window = open()) {
      Screen.on(
          () -> {
            window.frame.openAfterAsking(other);
            return null;
          });
      Screen.await("the other is open", () -> window.title().contains("other.study.json"));
      List<String> offered =
          Screen.on(() -> recent(window).stream().map(JMenuItem::getText).toList());
      assertThat(offered).containsExactly("1  other.study.json", "2  mint.study.json");
      Screen.on(
          () -> {
            recent(window).get(1).doClick(0);
            return null;
          });
      Screen.await("the first is open again", () -> window.title().contains("mint.study.json"));
    }
  }

  private static List<JMenuItem> recent(OpenWindow window) {
    JMenu menu =
        Stream.of(window.frame.getJMenuBar().getMenu(0).getMenuComponents())
            .filter(part -> "menu:recent".equals(part.getName()))
            .map(JMenu.class::cast)
            .findFirst()
            .orElseThrow();
    menu.setSelected(true);
    menu.setSelected(false);
    return Stream.of(menu.getMenuComponents()).map(JMenuItem.class::cast).toList();
  }

  @Test
  void aStudyDroppedOnTheWindowOrOnATableInItIsOpened() {
    Path other = SmallStudy.file(folder, "other", SmallStudy.few());
    try (OpenWindow window = open()) {
      drop(window.frame.getRootPane(), other);
      Screen.await("it is open", () -> window.title().contains("other.study.json"));
      drop(Screen.get("figures", JTable.class), file);
      Screen.await("the first is open again", () -> window.title().contains("mint.study.json"));
    }
  }

  private static void drop(JComponent target, Path path) {
    Screen.on(
        () ->
            target
                .getTransferHandler()
                .importData(new TransferHandler.TransferSupport(target, new Dragged(path))));
  }

  /** A file under the pointer. */
  private record Dragged(Path path) implements Transferable {
    @Override
    public DataFlavor[] getTransferDataFlavors() {
      return new DataFlavor[] {DataFlavor.javaFileListFlavor};
    }

    @Override
    public boolean isDataFlavorSupported(DataFlavor flavor) {
      return flavor.equals(DataFlavor.javaFileListFlavor);
    }

    @Override
    public List<File> getTransferData(DataFlavor flavor) {
      return List.of(path.toFile());
    }
  }

  @Test
  void theWindowOpensAsItWasLeft() {
    Rectangle place = new Rectangle(40, 60, 1200, 800);
    try (OpenWindow window = open()) {
      Screen.on(
          () -> {
            window.frame.setBounds(place);
            return null;
          });
      window.goTo(3);
      window.shortcut(KeyEvent.VK_Q);
      Screen.await("the window is closed", () -> !window.frame.isShowing());
    }
    try (OpenWindow window = open()) {
      assertThat(Screen.on(() -> window.frame.getSize())).isEqualTo(place.getSize());
      assertThat(Screen.find("positions", JTable.class)).isPresent();
    }
  }

  @Test
  void whatWasNotSavedBeforeTheProgramDiedIsOfferedAndCanBeUndone() throws IOException {
    try (OpenWindow window = open()) {
      raiseCost(window);
      Screen.await("unsaved work is kept", () -> kept(1));
    }
    try (OpenWindow window = OpenWindow.opened(file, SmallStudy.CATALOG)) {
      window.answer("Yes");
      Screen.await("it is taken up", () -> window.title().startsWith("•"));
      window.awaitRest();
      window.shortcut(KeyEvent.VK_Z);
      Screen.await("undone", () -> !window.title().startsWith("•"));
    }
  }

  @Test
  void whatWasSavedOrGivenUpIsNotOfferedAgain() {
    try (OpenWindow window = open()) {
      raiseCost(window);
      Screen.await("unsaved work is kept", () -> kept(1));
      window.shortcut(KeyEvent.VK_S);
      Screen.await("nothing is kept", () -> kept(0));
      raiseCost(window);
      Screen.await("unsaved work is kept again", () -> kept(1));
      window.shortcut(KeyEvent.VK_Q);
      window.answer("No");
      Screen.await("nothing is kept", () -> kept(0));
    }
    assertThat(StudyFile.open(file).study().activeWeighting())
        .isNotEqualTo(SmallStudy.few().activeWeighting());
  }

  private boolean kept(int count) {
    Path unsaved = folder.resolve("remembered").resolve("unsaved");
    try (Stream<Path> copies = Files.exists(unsaved) ? Files.list(unsaved) : Stream.empty()) {
      return copies.filter(f -> f.toString().endsWith(StudyFile.SUFFIX)).count() == count;
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }
}
