package plyworth.workbench.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.awt.GraphicsEnvironment;
import java.nio.file.Path;
import java.util.function.Function;
import javax.swing.JTabbedPane;
import javax.swing.JTable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plyworth.workbench.SmallStudy;
import plyworth.workbench.desktop.session.Remembered;
import plyworth.workbench.desktop.word.Language;

/** The window in another language. */
class LanguageWindowTest {

  @TempDir Path folder;
  private Path file;

  @BeforeEach
  void writeStudy() {
    assumeFalse(GraphicsEnvironment.isHeadless());
    file = SmallStudy.file(folder, "mint", SmallStudy.few());
  }

  private static void choose(OpenWindow window, Language language) {
    window.choose("language." + language.name().toLowerCase(java.util.Locale.ROOT));
  }

  private static String menu(OpenWindow window, int at) {
    return Screen.on(() -> window.frame.getJMenuBar().getMenu(at).getText());
  }

  @Test
  void anotherLanguageIsPutOnAtOnceAndEverythingStaysWhereItWas() {
    try (OpenWindow window = OpenWindow.ranked(file, SmallStudy.CATALOG)) {
      window.goTo(2);
      window.goTo(6);
      choose(window, Language.CHINESE);
      assertThat(menu(window, 0)).isEqualTo("文件(F)");
      assertThat(window.head()).contains("第 1 名");
      assertThat(window.status()).contains("候选结构");
      JTabbedPane views = Screen.get("views", JTabbedPane.class);
      assertThat(Screen.on(views::getSelectedIndex)).isEqualTo(1);
      Function<JTable, String> heading = table -> table.getColumnName(1);
      assertThat(window.text("ranking-table", JTable.class, heading)).isEqualTo("价值");
      window.picture("window-chinese-table");
      window.goTo(1);
      window.goTo(5);
      window.picture("window-chinese");
      choose(window, Language.ENGLISH);
      assertThat(menu(window, 0)).isEqualTo("File");
      assertThat(window.head()).contains("rank 1");
    }
  }

  @Test
  void theLanguageIsRememberedForTheNextDay() {
    try (OpenWindow window = OpenWindow.ranked(file, SmallStudy.CATALOG)) {
      choose(window, Language.CHINESE);
    }
    Remembered remembered = new Remembered(folder.resolve("remembered"));
    try (OpenWindow window = OpenWindow.opened(file, SmallStudy.CATALOG, remembered)) {
      assertThat(menu(window, 0)).isEqualTo("文件(F)");
    }
  }
}
