package plyworth.workbench.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static plyworth.workbench.desktop.PositionsOnScreen.turnTo;

import java.awt.GraphicsEnvironment;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import javax.swing.JTable;
import javax.swing.JTextArea;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plyworth.workbench.SmallStudy;
import plyworth.workbench.desktop.part.Appearance;
import plyworth.workbench.desktop.position.FlowCanvas;

/** The candidate graph, as the user walks it. */
class FlowWindowTest {

  @TempDir Path folder;

  private Path file;

  @BeforeEach
  void writeStudy() {
    assumeFalse(GraphicsEnvironment.isHeadless());
    file = SmallStudy.file(folder, "mint", SmallStudy.few());
  }

  @Test
  void theCandidateGraphIsWalkedByTheArrowKeys() {
    try (OpenWindow window = PositionsOnScreen.open(file)) {
      turnTo(1);
      FlowCanvas canvas = Screen.get("flows", FlowCanvas.class);
      Screen.on(canvas::requestFocusInWindow);
      Screen.await("the graph has the keyboard", canvas::isFocusOwner);
      window.picture("flows-light");
      for (int key : new int[] {KeyEvent.VK_RIGHT, KeyEvent.VK_RIGHT, KeyEvent.VK_DOWN}) {
        window.hand.key(key);
      }
      Screen.await(
          "an option is told", () -> note().startsWith("Outer web, kraft-paper 45 g/m²: "));
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
}
