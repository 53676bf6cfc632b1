package plyworth.workbench.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

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

/** Structures side by side, and the page to decide on. */
class CompareWindowTest {

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

  /** Selects the candidates of some rows of the table one by one, and pins each. */
  private static void pin(OpenWindow window, int... rows) {
    window.goTo(2);
    JTable table = Screen.get("ranking-table", JTable.class);
    for (int row : rows) {
      Screen.on(
          () -> {
            table.setRowSelectionInterval(row, row);
            return null;
          });
      Screen.await("it is described", () -> window.head().contains("rank " + row + "<"));
      window.shortcut(KeyEvent.VK_P);
    }
  }

  private static JTable compared() {
    return Screen.get("compare", JTable.class);
  }

  @Test
  void threePinnedStructuresStandBesideTodaysWithTheirDifferences() {
    try (OpenWindow window = open()) {
      pin(window, 1, 14, 60);
      window.shortcut(KeyEvent.VK_1, KeyEvent.VK_SHIFT);
      JTable table = compared();
      Screen.await("all are there", () -> table.getColumnCount() == 5);
      assertThat(Screen.on(() -> table.getColumnName(4))).isEqualTo("rank 60");
      assertThat(Screen.on(() -> table.getValueAt(0, 0))).isEqualTo("Value");
      double today = Double.parseDouble(Screen.on(() -> table.getValueAt(0, 1).toString()));
      String[] first = Screen.on(() -> table.getValueAt(0, 2).toString()).split("\n");
      assertThat(Double.parseDouble(first[1].replace('−', '-')))
          .isCloseTo(Double.parseDouble(first[0]) - today, within(0.0011));
      window.picture("compare-light");
      window.dress(Appearance.DARK);
      window.picture("compare-dark");
    }
  }

  @Test
  void aStructureIsPinnedOnceAndCanBeUnpinned() {
    try (OpenWindow window = open()) {
      pin(window, 1, 1);
      window.shortcut(KeyEvent.VK_1, KeyEvent.VK_SHIFT);
      JTable table = compared();
      Screen.await("it is there", () -> table.getColumnCount() == 3);
      Screen.press("unpin:0");
      Screen.await("it is gone", () -> table.getColumnCount() == 2);
      assertThat(window.text("compare-note", JTextArea.class, JTextArea::getText))
          .contains("Nothing is pinned");
    }
  }

  @Test
  void onePageSaysWhatIsAskedRecommendedGainedAndHowSure() {
    try (OpenWindow window = open()) {
      window.shortcut(KeyEvent.VK_2, KeyEvent.VK_SHIFT);
      Screen.await("the page is there", () -> window.words("review").contains("Can the foil go?"));
      String page = window.words("review");
      assertThat(page)
          .contains(
              "Recommendation", "Runner-up", "Gained", "Lost", "How sure", "Stakeholders", "Today");
      window.picture("review-light");
    }
  }
}
