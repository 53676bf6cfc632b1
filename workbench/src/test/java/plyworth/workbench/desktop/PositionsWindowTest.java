package plyworth.workbench.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static plyworth.workbench.desktop.PositionsOnScreen.awaitKeyboard;
import static plyworth.workbench.desktop.PositionsOnScreen.awaitOther;
import static plyworth.workbench.desktop.PositionsOnScreen.problem;
import static plyworth.workbench.desktop.PositionsOnScreen.rowOf;
import static plyworth.workbench.desktop.PositionsOnScreen.said;
import static plyworth.workbench.desktop.PositionsOnScreen.select;
import static plyworth.workbench.desktop.PositionsOnScreen.strike;
import static plyworth.workbench.desktop.PositionsOnScreen.table;
import static plyworth.workbench.desktop.PositionsOnScreen.title;
import static plyworth.workbench.desktop.PositionsOnScreen.type;

import java.awt.GraphicsEnvironment;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import javax.swing.JList;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plyworth.shared.material.Material;
import plyworth.workbench.SmallStudy;
import plyworth.workbench.desktop.position.FlowCanvas;

/** Positions filled as the user does it: with the mouse, or by the keyboard alone. */
class PositionsWindowTest {

  @TempDir Path folder;

  private Path file;

  @BeforeEach
  void writeStudy() {
    assumeFalse(GraphicsEnvironment.isHeadless());
    file = SmallStudy.file(folder, "mint", SmallStudy.few());
  }

  @Test
  void aMaterialIsFoundByTypingAndAddedByEnterAndUndone() {
    try (OpenWindow window = PositionsOnScreen.open(file)) {
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
    try (OpenWindow window = PositionsOnScreen.open(file)) {
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
    try (OpenWindow window = PositionsOnScreen.open(file)) {
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
    try (OpenWindow window = PositionsOnScreen.open(file)) {
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

  @Test
  void anOptionThatNoCandidateUsesSaysWhichRuleKeepsItOut() {
    try (OpenWindow window = PositionsOnScreen.open(file)) {
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
  void aStudyThatIsLeftWithoutCandidatesSaysWhichRuleLeavesNone() {
    try (OpenWindow window = PositionsOnScreen.open(file)) {
      String before = said();
      select(rowOf("eaa 25"));
      Screen.press("button:positions.drop");
      Screen.await("the rule is named", () -> said().startsWith("No candidate"));
      window.picture("positions-none");
      assertThat(Screen.on(() -> window.frame.getJMenuBar().getMenu(1).getItem(0).getText()))
          .isEqualTo("Undo removal of position Sealant");
      window.shortcut(KeyEvent.VK_Z);
      Screen.await("it is undone", () -> said().equals(before));
    }
  }

  @Test
  void aPositionThatMayStayEmptyNoMoreLeavesFewerCandidates() {
    try (OpenWindow window = PositionsOnScreen.open(file)) {
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
    try (OpenWindow window = PositionsOnScreen.open(file)) {
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
}
