package plyworth.workbench.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static plyworth.workbench.desktop.PositionsOnScreen.awaitOther;
import static plyworth.workbench.desktop.PositionsOnScreen.problem;
import static plyworth.workbench.desktop.PositionsOnScreen.said;
import static plyworth.workbench.desktop.PositionsOnScreen.turnTo;
import static plyworth.workbench.desktop.PositionsOnScreen.type;

import java.awt.GraphicsEnvironment;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import javax.swing.JComboBox;
import javax.swing.JTable;
import javax.swing.JTextArea;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plyworth.workbench.SmallStudy;

/** Limits set, changed and taken back, as the user does it. */
class LimitsWindowTest {

  @TempDir Path folder;

  private Path file;

  @BeforeEach
  void writeStudy() {
    assumeFalse(GraphicsEnvironment.isHeadless());
    file = SmallStudy.file(folder, "mint", SmallStudy.few());
  }

  @Test
  void aLimitIsTriedWhileItIsTypedSetChangedAndTakenBack() {
    try (OpenWindow window = PositionsOnScreen.open(file)) {
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

  private static String effect() {
    return Screen.on(() -> Screen.get("limit-effect", JTextArea.class).getText());
  }

  private static void choose(String criterion) {
    JComboBox<?> box = Screen.get("limit.criterion", JComboBox.class);
    Screen.on(
        () -> {
          box.setSelectedItem(criterion);
          return null;
        });
  }

  private static JTable dropouts() {
    return Screen.get("limits-dropouts", JTable.class);
  }

  private static String limitCell(int column) {
    return Screen.on(() -> Screen.get("limits-set", JTable.class).getValueAt(0, column).toString());
  }
}
