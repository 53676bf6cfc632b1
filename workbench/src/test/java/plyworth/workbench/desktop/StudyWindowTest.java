package plyworth.workbench.desktop;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.event.KeyEvent;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JSlider;
import javax.swing.JTabbedPane;
import javax.swing.JTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plyworth.shared.store.StudyFile;

class StudyWindowTest {

  private static final Path STUDIES = Path.of("../studies");

  @TempDir Path folder;

  private Path copyOf(String study) throws Exception {
    String name = study + StudyFile.SUFFIX;
    return Files.copy(STUDIES.resolve(name), folder.resolve(name));
  }

  private static void awaitRanking(DrivenWindow window) throws Exception {
    JTable figures = window.find("figures", JTable.class);
    window.await("the figures of the leader", () -> figures.getRowCount() > 0);
  }

  @ParameterizedTest
  @ValueSource(strings = {"sugar-stick", "isopropanol-wipe", "freeze-dried-snack"})
  void everyStudyOpensAndShowsARankingWithItsLeader(String study) throws Exception {
    try (DrivenWindow window = DrivenWindow.on(copyOf(study), Appearance.LIGHT)) {
      awaitRanking(window);
      JTable table = window.find("ranking-table", JTable.class);
      assertThat(table.getRowCount()).isGreaterThan(10);
      String status = window.find("status", JLabel.class).getText();
      assertThat(status).contains("ranked").contains("blocked");
      window.picture("opened-" + study);
    }
  }

  @Test
  void theWindowIsReadableInTheDarkToo() throws Exception {
    try (DrivenWindow window = DrivenWindow.on(copyOf("sugar-stick"), Appearance.DARK)) {
      awaitRanking(window);
      assertThat(window.frame().getContentPane().getBackground().getRed()).isLessThan(100);
      window.picture("dark-sugar-stick");
    }
  }

  @Test
  void aWeightMovedByKeyboardRanksAgainAndCanBeUndone() throws Exception {
    try (DrivenWindow window = DrivenWindow.on(copyOf("sugar-stick"), Appearance.LIGHT)) {
      awaitRanking(window);
      JSlider slider = window.find("weight:recyclability/class", JSlider.class);
      int before = slider.getValue();
      window.onEventThread(slider::requestFocusInWindow);
      window.await("the focus", slider::isFocusOwner);
      window.type(KeyEvent.VK_END);
      window.await("the unsaved mark", () -> window.frame().getTitle().startsWith("•"));
      assertThat(slider.getValue()).isEqualTo(slider.getMaximum());
      window.shortcut(KeyEvent.VK_Z);
      window.await("the undone weight", () -> slider.getValue() == before);
      window.await("the mark to go", () -> !window.frame().getTitle().startsWith("•"));
    }
  }

  @Test
  void aChangedStudyIsSavedByShortcutAndReadsBackChanged() throws Exception {
    Path file = copyOf("isopropanol-wipe");
    try (DrivenWindow window = DrivenWindow.on(file, Appearance.LIGHT)) {
      awaitRanking(window);
      JComboBox<?> choice = window.find("weighting", JComboBox.class);
      window.onEventThread(
          () -> {
            choice.setSelectedItem("cost-led");
            return true;
          });
      window.await("the unsaved mark", () -> window.frame().getTitle().startsWith("•"));
      window.onEventThread(window.frame()::requestFocusInWindow);
      window.shortcut(KeyEvent.VK_S);
      window.await("the mark to go", () -> !window.frame().getTitle().startsWith("•"));
    }
    assertThat(StudyFile.open(file).study().weighting()).isEqualTo("cost-led");
  }

  @Test
  void aRowClickedInTheTableIsTheCandidateShown() throws Exception {
    try (DrivenWindow window = DrivenWindow.on(copyOf("freeze-dried-snack"), Appearance.LIGHT)) {
      awaitRanking(window);
      JTabbedPane views = window.find("views", JTabbedPane.class);
      window.onEventThread(
          () -> {
            views.setSelectedIndex(1);
            return true;
          });
      JTable table = window.find("ranking-table", JTable.class);
      window.await("the table", table::isShowing);
      String rank = window.onEventThread(() -> String.valueOf(table.getValueAt(3, 0)));
      window.click(table, 20, table.getRowHeight() * 3 + 5);
      JLabel head = window.find("candidate-head", JLabel.class);
      window.await("the clicked candidate", () -> head.getText().contains("rank " + rank));
      window.picture("row-clicked");
    }
  }
}
