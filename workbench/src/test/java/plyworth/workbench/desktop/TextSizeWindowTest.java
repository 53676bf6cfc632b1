package plyworth.workbench.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.awt.GraphicsEnvironment;
import java.nio.file.Path;
import javax.swing.JLabel;
import javax.swing.JTabbedPane;
import javax.swing.JTable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plyworth.workbench.SmallStudy;
import plyworth.workbench.desktop.part.Appearance;
import plyworth.workbench.desktop.part.TextSize;
import plyworth.workbench.desktop.session.Remembered;

/** The window in another size of text. */
class TextSizeWindowTest {

  @TempDir Path folder;
  private Path file;

  @BeforeEach
  void writeStudy() {
    assumeFalse(GraphicsEnvironment.isHeadless());
    file = SmallStudy.file(folder, "mint", SmallStudy.few());
  }

  private static int lineOfStatus(OpenWindow window) {
    return Integer.parseInt(
        window.text("status", JLabel.class, l -> "" + l.getFontMetrics(l.getFont()).getHeight()));
  }

  private static int rowOfFigures(OpenWindow window) {
    return Integer.parseInt(window.text("figures", JTable.class, t -> "" + t.getRowHeight(0)));
  }

  @Test
  void textTwiceAsLargeIsPutOnAtOnceAndEverythingStaysWhereItWas() {
    try (OpenWindow window = OpenWindow.ranked(file, SmallStudy.CATALOG)) {
      window.goTo(2);
      int line = lineOfStatus(window);
      int row = rowOfFigures(window);
      window.choose("text-size.double");
      assertThat(lineOfStatus(window)).isBetween(2 * line - 2, 2 * line + 2);
      assertThat(rowOfFigures(window)).isGreaterThan(3 * row / 2);
      JTabbedPane views = Screen.get("views", JTabbedPane.class);
      assertThat(Screen.on(views::getSelectedIndex)).isEqualTo(1);
      window.picture("window-double-table");
      window.goTo(1);
      window.picture("window-double");
      window.dress(Appearance.DARK);
      window.picture("window-double-dark");
      window.choose("text-size.normal");
      assertThat(lineOfStatus(window)).isEqualTo(line);
    }
  }

  @Test
  void theNextWindowHasTheSizeThatWasChosen() {
    Remembered remembered = OpenWindow.newcomer(file);
    try (OpenWindow window = OpenWindow.opened(file, SmallStudy.CATALOG, remembered)) {
      window.choose("text-size.larger");
    }
    assertThat(new Remembered(file.resolveSibling("remembered")).textSize())
        .isEqualTo(TextSize.LARGER);
  }
}
