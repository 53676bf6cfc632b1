package plyworth.workbench.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.awt.GraphicsEnvironment;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.IntStream;
import javax.swing.JList;
import javax.swing.JTabbedPane;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plyworth.shared.material.Material;
import plyworth.workbench.SmallStudy;

/**
 * Positions filled and limits set, as the user does it: with the mouse, or by the keyboard alone.
 */
class PositionsWindowTest {

  /**
   * 2 prints, 5 outer webs, 3 barrier webs with their bonds, 7 sealants, less what rules forbid.
   */
  @TempDir Path folder;

  private Path file;

  @BeforeEach
  void writeStudy() {
    assumeFalse(GraphicsEnvironment.isHeadless());
    file = SmallStudy.file(folder, "mint", SmallStudy.few());
  }

  private OpenWindow open() {
    OpenWindow window = OpenWindow.ranked(file, SmallStudy.CATALOG);
    window.goTo(3);
    Screen.await("the candidates are counted", () -> said().contains("ranked"));
    return window;
  }

  private static String said() {
    return Screen.on(() -> Screen.get("positions-count", JTextArea.class).getText());
  }

  private static void awaitOther(String before) {
    Screen.await("the count follows", () -> !said().equals(before) && said().contains("ranked"));
  }

  private static JTable table() {
    return Screen.get("positions", JTable.class);
  }

  private static void select(int row) {
    JTable table = table();
    Screen.on(
        () -> {
          table.setRowSelectionInterval(row, row);
          return null;
        });
  }

  private static int rowOf(String option) {
    JTable table = table();
    return Screen.on(
        () ->
            IntStream.range(0, table.getRowCount())
                .filter(r -> table.getValueAt(r, 1).toString().startsWith(option))
                .findFirst()
                .orElse(-1));
  }

  private static void type(String name, String text) {
    JTextField field = Screen.get(name, JTextField.class);
    Screen.on(
        () -> {
          field.requestFocusInWindow();
          field.setText(text);
          return null;
        });
    Screen.await(name + " has the keyboard", field::isFocusOwner);
  }

  private static void turnTo(int tab) {
    JTabbedPane tabs = Screen.get("positions-tabs", JTabbedPane.class);
    Screen.on(
        () -> {
          tabs.setSelectedIndex(tab);
          return null;
        });
  }

  private static String problem(String field) {
    return Screen.find(field + "-problem", JTextArea.class).map(JTextArea::getText).orElse("");
  }

  @Test
  void aMaterialIsFoundByTypingAndAddedByEnterAndUndone() {
    try (OpenWindow window = open()) {
      String before = said();
      select(rowOf("aluminium-foil"));
      type("materials.find", "polypropylene metall");
      window.hand.key(KeyEvent.VK_ENTER);
      Screen.await(
          "it is asked how much",
          () -> Screen.get("layer.amounts", JTextField.class).isFocusOwner());
      assertThat(problem("layer.amounts"))
          .contains("Metallised biaxially oriented polypropylene film", "Barrier");
      type("layer.amounts", "15 um, 0.8 mil");
      window.hand.key(KeyEvent.VK_ENTER);
      assertThat(problem("layer.amounts")).isEmpty();
      awaitOther(before);
      assertThat(rowOf("bopp-met 20.32 µm")).isPositive();
      window.picture("positions-added");
      window.shortcut(KeyEvent.VK_Z);
      Screen.await("it is undone", () -> said().equals(before));
      assertThat(rowOf("bopp-met 20.32 µm")).isNegative();
    }
  }

  @Test
  void aMaterialIsDraggedOntoAPosition() {
    try (OpenWindow window = open()) {
      String before = said();
      type("materials.find", "kraft-paper");
      JList<?> list = Screen.get("materials", JList.class);
      Screen.await(
          "it is found",
          () -> ((Material) list.getModel().getElementAt(0)).id().equals("kraft-paper"));
      int foil = rowOf("aluminium-foil");
      JTable table = table();
      Point to =
          Screen.on(
              () -> {
                table.scrollRectToVisible(table.getCellRect(foil, 1, true));
                Rectangle cell = table.getCellRect(foil, 1, true);
                Point corner = table.getLocationOnScreen();
                Point from = list.getLocationOnScreen();
                return new Point(
                    corner.x - from.x + cell.x + 20, corner.y - from.y + cell.y + cell.height / 2);
              });
      Point from = Screen.on(() -> list.getCellBounds(0, 0).getLocation());
      window.hand.drag(list, new Point(from.x + 30, from.y + 8), to);
      awaitOther(before);
      assertThat(window.title()).startsWith("•");
      int end = rowOf("bopp-met");
      assertThat(Screen.on(() -> table().getValueAt(end + 1, 1).toString()))
          .isEqualTo("kraft-paper 40 g/m²");
    }
  }

  @Test
  void wrongInputIsAnsweredBesideItsField() {
    try (OpenWindow window = open()) {
      select(rowOf("aluminium-foil"));
      type("materials.find", "bopet");
      type("layer.amounts", "12");
      Screen.press("button:option.add");
      assertThat(problem("layer.amounts")).contains("has no unit", "mil, gauge");
      type("layer.amounts", "12,5 um");
      Screen.press("button:option.add");
      assertThat(problem("layer.amounts")).contains("12.5");
      type("materials.find", "ink-wb");
      type("layer.amounts", "1 lb/3000ft2");
      type("layer.coverage", "140");
      Screen.press("button:option.add");
      assertThat(problem("layer.coverage")).contains("up to 100");
      type("materials.find", "unobtainium");
      assertThat(problem("materials.find")).contains("unobtainium");
      type("option.written", "bopet 12 um @sputtering");
      Screen.press("button:option.add-written");
      assertThat(problem("option.written")).contains("sputtering");
      window.picture("positions-refused");
    }
  }

  @Test
  void aPositionIsAddedFilledMovedAndTakenOut() {
    try (OpenWindow window = open()) {
      select(rowOf("ldpe 12"));
      type("positions.title", "Second web");
      Screen.press("button:positions.add");
      Screen.await("it is there", () -> title(rowOf("aluminium-foil") - 2).contains("Second web"));
      type("option.written", "ldpe 10 um / evoh-32 3 um @coextruded / ldpe 10 um @coextruded");
      Screen.press("button:option.add-written");
      Screen.await("it is filled", () -> rowOf("ldpe 10 µm / evoh-32") > 0);
      Screen.press("button:positions.outward");
      Screen.await("it is further out", () -> rowOf("ldpe 10 µm /") < rowOf("ldpe 12"));
      Screen.press("button:positions.drop");
      Screen.await("it is gone", () -> rowOf("ldpe 10 µm /") < 0);
      for (int i = 0; i < 4; i++) {
        window.shortcut(KeyEvent.VK_Z);
      }
      Screen.await("all is undone", () -> !window.title().startsWith("•"));
    }
  }

  private static String title(int row) {
    return Screen.on(() -> table().getValueAt(row, 0).toString());
  }

  @Test
  void anOptionThatNoCandidateUsesSaysWhichRuleKeepsItOut() {
    try (OpenWindow window = open()) {
      select(rowOf("aluminium-foil"));
      type("option.written", "bopet-siox 12 um");
      Screen.press("button:option.add-written");
      Screen.await("it is there", () -> rowOf("bopet-siox") > 0);
      select(rowOf("bopet-siox"));
      Screen.await(
          "the rule is named", () -> Screen.find("option-unused", JTextArea.class).isPresent());
      assertThat(window.text("option-unused", JTextArea.class, JTextArea::getText))
          .contains("No candidate uses this option");
      window.picture("positions-unused");
    }
  }

  @Test
  void aPositionThatMayStayEmptyNoMoreLeavesFewerCandidates() {
    try (OpenWindow window = open()) {
      String before = said();
      select(rowOf("aluminium-foil"));
      Screen.press("button:positions.nothing");
      awaitOther(before);
      window.shortcut(KeyEvent.VK_Z);
      Screen.await("it is undone", () -> said().equals(before));
    }
  }

  @Test
  void allOfItGoesByTheKeyboardAlone() {
    try (OpenWindow window = open()) {
      Screen.await("the table has the keyboard", () -> table().isFocusOwner());
      window.hand.key(KeyEvent.VK_N, KeyEvent.VK_ALT);
      awaitKeyboard("materials.find");
      strike(window, "bopp met");
      window.hand.key(KeyEvent.VK_ENTER);
      awaitKeyboard("layer.amounts");
      strike(window, "15 um");
      window.hand.key(KeyEvent.VK_ENTER);
      Screen.await("it stands at the first position", () -> rowOf("bopp-met 15 µm") == 2);
      window.goTo(3);
      Screen.await("the table has the keyboard", () -> table().isFocusOwner());
      window.hand.key(KeyEvent.VK_DELETE);
      Screen.await("it is taken out", () -> rowOf("bopp-met 15 µm") < 0);
      window.hand.key(KeyEvent.VK_F2);
      awaitKeyboard("positions.title");
      strike(window, "varnish");
      window.hand.key(KeyEvent.VK_ENTER);
      Screen.await("it is renamed", () -> title(0).endsWith("varnish"));
      window.hand.key(KeyEvent.VK_M, KeyEvent.VK_ALT);
      Screen.await(
          "the limits show", () -> Screen.find("limit.figure", JTextField.class).isPresent());
      window.hand.key(KeyEvent.VK_U, KeyEvent.VK_ALT);
      awaitKeyboard("limit.figure");
      strike(window, "100");
      window.hand.key(KeyEvent.VK_ENTER);
      Screen.await("a limit is set", () -> Screen.find("limits-set", JTable.class).isPresent());
      window.hand.key(KeyEvent.VK_G, KeyEvent.VK_ALT);
      FlowCanvas canvas = Screen.get("flows", FlowCanvas.class);
      for (int i = 0; i < 12 && !Screen.on(canvas::isFocusOwner); i++) {
        window.hand.key(KeyEvent.VK_TAB);
      }
      Screen.await("the graph has the keyboard", canvas::isFocusOwner);
    }
  }

  private static void awaitKeyboard(String field) {
    JTextField text = Screen.get(field, JTextField.class);
    Screen.await(field + " has the keyboard", text::isFocusOwner);
  }

  private static void strike(OpenWindow window, String text) {
    text.toUpperCase(Locale.ROOT).chars().forEach(window.hand::key);
  }

  @Test
  void theCandidateGraphIsWalkedByTheArrowKeys() {
    try (OpenWindow window = open()) {
      turnTo(1);
      FlowCanvas canvas = Screen.get("flows", FlowCanvas.class);
      Screen.on(canvas::requestFocusInWindow);
      Screen.await("the graph has the keyboard", canvas::isFocusOwner);
      window.picture("flows-light");
      for (int key : new int[] {KeyEvent.VK_RIGHT, KeyEvent.VK_RIGHT, KeyEvent.VK_DOWN}) {
        window.hand.key(key);
      }
      Screen.await("an option is told", () -> note().startsWith("kraft-paper 45 g/m²: "));
      window.picture("flows-selected");
      Screen.press("flows:charts.as-table");
      JTable table = Screen.get("flows-table", JTable.class);
      assertThat(Screen.on(() -> table.getValueAt(table.getSelectedRow(), 1)))
          .isEqualTo("kraft-paper 45 g/m²");
      window.dress(Appearance.DARK);
      Screen.press("flows:charts.as-table");
      window.picture("flows-dark");
    }
  }

  private static String note() {
    return Screen.on(() -> Screen.get("flows-note", JTextArea.class).getText());
  }

  @Test
  void aLimitIsTriedWhileItIsTypedSetChangedAndTakenBack() {
    try (OpenWindow window = open()) {
      String before = said();
      turnTo(2);
      choose("Cost per 1000 good packs");
      type("limit.figure", "");
      Screen.await("a figure is asked for", () -> effect().contains("unit"));
      type("limit.figure", "cheap");
      Screen.press("button:limit.set");
      assertThat(problem("limit.figure")).contains("not a number");
      window.picture("limits-refused");
      type("limit.figure", "10.5");
      Screen.await("it is tried", () -> effect().contains("drop out by it"));
      window.picture("limits-tried");
      int tried = Screen.on(() -> dropouts().getRowCount());
      assertThat(tried).isPositive();
      type("limit.reason", "the buyer's ceiling");
      window.hand.key(KeyEvent.VK_ENTER);
      awaitOther(before);
      Screen.await("it is told", () -> !limitCell(0).equals("…"));
      assertThat(limitCell(3)).contains("at most 10.5", "ceiling");
      assertThat(Screen.on(() -> dropouts().getRowCount())).isEqualTo(tried);
      window.picture("limits-set");
      Screen.press("button:limit.remove");
      Screen.await("it is gone", () -> said().equals(before));
      window.shortcut(KeyEvent.VK_Z);
      awaitOther(before);
    }
  }

  private static JTable dropouts() {
    return Screen.get("limits-dropouts", JTable.class);
  }

  private static String limitCell(int column) {
    return Screen.on(() -> Screen.get("limits-set", JTable.class).getValueAt(0, column).toString());
  }

  private static String effect() {
    return Screen.on(() -> Screen.get("limit-effect", JTextArea.class).getText());
  }

  private static void choose(String criterion) {
    javax.swing.JComboBox<?> box = Screen.get("limit.criterion", javax.swing.JComboBox.class);
    Screen.on(
        () -> {
          box.setSelectedItem(criterion);
          return null;
        });
  }
}
