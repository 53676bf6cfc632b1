package plyworth.workbench.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.awt.GraphicsEnvironment;
import java.awt.Toolkit;
import java.awt.datatransfer.DataFlavor;
import java.awt.datatransfer.UnsupportedFlavorException;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.swing.AbstractButton;
import javax.swing.JLabel;
import javax.swing.JProgressBar;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plyworth.shared.store.StudyFile;
import plyworth.workbench.SmallStudy;
import plyworth.workbench.desktop.part.Appearance;
import plyworth.workbench.desktop.word.Language;

/** What is worth measuring, asked, mailed and answered. */
class QuestionsWindowTest {

  @TempDir Path folder;
  private Path file;

  @BeforeEach
  void writeStudy() {
    assumeFalse(GraphicsEnvironment.isHeadless());
    file = SmallStudy.file(folder, "mint", SmallStudy.few());
  }

  private static OpenWindow open(Path study) {
    OpenWindow window = OpenWindow.ranked(study, SmallStudy.CATALOG);
    window.shortcut(KeyEvent.VK_4, KeyEvent.VK_SHIFT);
    Screen.await("the view is there", () -> head(window).startsWith("Which figures"));
    return window;
  }

  private static String head(OpenWindow window) {
    return window.text("questions-head", JTextArea.class, JTextArea::getText);
  }

  private static String words(String name) {
    return Screen.on(() -> Screen.find(name, JTextArea.class).map(JTextArea::getText).orElse(""));
  }

  private static void find(OpenWindow window) {
    Screen.press("button:questions.find");
    Screen.await("they are found", () -> head(window).startsWith("Under "));
  }

  private static void press(String name) {
    AbstractButton button = Screen.get(name, AbstractButton.class);
    SwingUtilities.invokeLater(button::doClick);
  }

  private static String cell(String table, int row, int column) {
    return Screen.on(() -> Screen.get(table, JTable.class).getValueAt(row, column).toString());
  }

  private static String clipboard() {
    return Screen.on(
        () -> {
          try {
            return (String)
                Toolkit.getDefaultToolkit().getSystemClipboard().getData(DataFlavor.stringFlavor);
          } catch (IOException | UnsupportedFlavorException e) {
            throw new IllegalStateException(e);
          }
        });
  }

  @Test
  void questionsAreListedTheGravestFirstAndCopiedAsText() {
    try (OpenWindow window = open(SmallStudy.example(folder, "sugar-stick"))) {
      find(window);
      assertThat(head(window)).contains("Rival 1: ").contains("take something from the lead");
      JTable table = Screen.get("questions", JTable.class);
      assertThat(Screen.on(table::getRowCount)).isGreaterThan(5);
      window.picture("questions-light");
      Screen.press("button:questions.copy");
      assertThat(clipboard())
          .contains("Under “balanced” leads: ")
          .contains("1. " + cell("questions", 0, 0) + ": " + cell("questions", 0, 1))
          .contains("known from")
          .contains("Screening estimates");
      window.dress(Appearance.DARK);
      window.picture("questions-dark");
      window.dress(Appearance.LIGHT);
      Screen.on(
          () -> {
            window.frame.speak(Language.CHINESE);
            return null;
          });
      window.shortcut(KeyEvent.VK_4, KeyEvent.VK_SHIFT);
      Screen.press("button:questions.find");
      Screen.await("they are found", () -> head(window).startsWith("在“"));
      window.picture("questions-chinese");
    }
  }

  @Test
  void enterOnAQuestionLeadsToItsMaterial() {
    try (OpenWindow window = open(file)) {
      find(window);
      JTable table = Screen.get("questions", JTable.class);
      Screen.on(table::requestFocusInWindow);
      Screen.await("the list has the keyboard", table::isFocusOwner);
      window.hand.key(KeyEvent.VK_DOWN);
      String asked = cell("questions", Screen.on(table::getSelectedRow), 0);
      window.hand.key(KeyEvent.VK_ENTER);
      JTable properties = Screen.get("properties", JTable.class);
      Screen.await("the properties have the keyboard", properties::isFocusOwner);
      assertThat(asked)
          .isEqualTo(
              cell("materials", 0, 0)
                  + ", "
                  + cell("properties", Screen.on(properties::getSelectedRow), 0));
    }
  }

  @Test
  void theSearchShowsItsProgressAndStops() {
    try (OpenWindow window = open(SmallStudy.example(folder, "seasoning-stick"))) {
      Screen.press("button:questions.find");
      JProgressBar progress = Screen.get("questions-progress", JProgressBar.class);
      Screen.await("some is done", () -> progress.getValue() > 0);
      Screen.press("questions:work.stop");
      Screen.await(
          "it rests", () -> Screen.find("questions-progress", JProgressBar.class).isEmpty());
      assertThat(head(window) + window.text("questions-message", JLabel.class, JLabel::getText))
          .containsAnyOf("Stopped: not all", "Stopped before anything");
    }
  }

  @Test
  void whatALaboratoryFilledInIsReadBackAfterAPreviewAndUndone() throws IOException {
    try (OpenWindow window = open(file)) {
      find(window);
      Path csv = folder.resolve("questions.csv");
      press("button:questions.save");
      window.choose(csv);
      Screen.await("it is written", () -> Files.exists(csv));
      List<String> lines = Files.readAllLines(csv);
      String asked = lines.stream().filter(l -> l.contains(",price,")).findFirst().orElseThrow();
      String blank = ",,,,,,";
      assertThat(asked).endsWith(blank);
      String stem = asked.substring(0, asked.length() - blank.length());
      Files.writeString(
          csv,
          lines.get(0)
              + "\n"
              + stem
              + ",3,1.1,2,offer in writing,2026-05-01,\n"
              + stem.replaceFirst("^[^,]*", "no-such-film")
              + ",3,1.1,2,offer in writing,2026-05-01,\n");
      press("button:questions.read");
      window.choose(csv);
      Screen.get("preview-changes", JTable.class);
      assertThat(words("preview-said")).contains("holds one reading to take over");
      assertThat(cell("preview-changes", 0, 3)).contains("3 EUR/kg, within a factor of 1.1");
      assertThat(cell("preview-refused", 0, 2)).contains("\"no-such-film\" is not in the library");
      window.picture("answers-preview");
      Screen.press("button:preview.take");
      Screen.await("the move is told", () -> words("movement").startsWith("After one reading"));
      window.awaitRest();
      window.shortcut(KeyEvent.VK_S);
      Screen.await(
          "it is saved", () -> StudyFile.open(file).study().results().materials().size() == 1);
      window.shortcut(KeyEvent.VK_Z);
      Screen.await("it is taken back", () -> words("movement").isEmpty());
      Screen.await("it is unsaved", () -> window.title().startsWith("•"));
    }
  }
}
