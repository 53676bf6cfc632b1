package plyworth.workbench.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.awt.Component;
import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.swing.JTable;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plyworth.shared.store.StudyFile;
import plyworth.workbench.SmallStudy;
import plyworth.workbench.desktop.part.Appearance;

/** The example studies in the window. */
class StudiesWindowTest {

  private static final Path STUDIES = Path.of("../studies");

  @ParameterizedTest
  @ValueSource(strings = {"sugar-stick", "isopropanol-wipe", "freeze-dried-snack"})
  void everyStudyOpensRankedAndIsReadableInLightAndDark(String study, @TempDir Path folder)
      throws IOException {
    assumeFalse(GraphicsEnvironment.isHeadless());
    Path file = folder.resolve(study + StudyFile.SUFFIX);
    Files.copy(STUDIES.resolve(file.getFileName()), file);
    try (OpenWindow window = OpenWindow.ranked(file, SmallStudy.CATALOG)) {
      assertThat(window.head()).contains("rank 1");
      assertThat(window.notice()).isEmpty();
      window.picture(study + "-light");
      Screen.on(
          () -> {
            window.frame.dress(Appearance.DARK);
            return null;
          });
      window.picture(study + "-dark");
      window.goTo(2);
      JTable table = Screen.get("ranking-table", JTable.class);
      assertThat(table.getRowCount()).isGreaterThan(10);
      assertThat(cut(table)).isEmpty();
    }
  }

  /** What does not fit into its cell, headings included; the structure may be longer. */
  private static String cut(JTable table) {
    return Screen.on(
        () -> {
          StringBuilder cut = new StringBuilder();
          for (int c = 0; c < table.getColumnCount() - 1; c++) {
            for (int r = 0; r < table.getRowCount(); r++) {
              Component cell = table.prepareRenderer(table.getCellRenderer(r, c), r, c);
              int width = table.getColumnModel().getColumn(c).getWidth();
              cut.append(cell.getPreferredSize().width > width ? table.getValueAt(r, c) + " " : "");
            }
          }
          return cut.toString();
        });
  }
}
