package plyworth.workbench.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.awt.GraphicsEnvironment;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import javax.swing.JDialog;
import javax.swing.JTextArea;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plyworth.shared.store.StudyFile;
import plyworth.shared.study.Study;
import plyworth.workbench.SmallStudy;

/** A decision and its reasons, and remarks. */
class DecisionWindowTest {

  @TempDir Path folder;
  private Path file;

  @BeforeEach
  void writeStudy() {
    assumeFalse(GraphicsEnvironment.isHeadless());
    file = SmallStudy.file(folder, "mint", SmallStudy.few());
  }

  /** Writes into a dialog that a command opens, and ends it. */
  private static void write(OpenWindow window, int command, String dialog, String text) {
    window.shortcut(command);
    JTextArea field = Screen.get(dialog + "-text", JTextArea.class);
    Screen.await("it is there", field::isShowing);
    Screen.on(
        () -> {
          field.setText(text);
          return null;
        });
    Screen.press("button:" + dialog + ".done");
    Screen.await("it is gone", () -> Screen.find(dialog, JDialog.class).isEmpty());
  }

  @Test
  void decisionStandsOnThePageWithItsReasonsAndIsSaved() {
    try (OpenWindow window = OpenWindow.ranked(file, SmallStudy.CATALOG)) {
      write(window, KeyEvent.VK_D, "decide", "It runs on both machines.");
      window.shortcut(KeyEvent.VK_2, KeyEvent.VK_SHIFT);
      Screen.await("it is said", () -> window.words("review").contains("runs on both machines"));
      assertThat(window.words("review")).contains("Decided").doesNotContain("Recommendation");
      window.picture("decided-light");
      window.shortcut(KeyEvent.VK_S);
      Screen.await(
          "it is saved", () -> StudyFile.open(file).study().decision().structure().length() > 0);
      Study saved = StudyFile.open(file).study();
      assertThat(saved.decision().reasons()).isEqualTo("It runs on both machines.");
      assertThat(saved.decision().structure()).isNotEmpty();
    }
  }

  @Test
  void undoTakesADecisionBack() {
    try (OpenWindow window = OpenWindow.ranked(file, SmallStudy.CATALOG)) {
      write(window, KeyEvent.VK_D, "decide", "");
      window.shortcut(KeyEvent.VK_2, KeyEvent.VK_SHIFT);
      Screen.await("it is decided", () -> window.words("review").contains("Decided"));
      window.shortcut(KeyEvent.VK_Z);
      Screen.await("it is open again", () -> window.words("review").contains("Recommendation"));
    }
  }

  @Test
  void remarkStandsWithItsCandidateAndOnThePage() {
    try (OpenWindow window = OpenWindow.ranked(file, SmallStudy.CATALOG)) {
      write(window, KeyEvent.VK_M, "remark", "Ask for a trial reel first.");
      window.goTo(6);
      Screen.await("it is said", () -> window.words("findings").contains("Ask for a trial reel"));
      window.shortcut(KeyEvent.VK_2, KeyEvent.VK_SHIFT);
      Screen.await("it stands", () -> window.words("review").contains("Ask for a trial reel"));
      window.picture("remarked-light");
    }
  }

  @Test
  void emptyRemarkIsNone() {
    try (OpenWindow window = OpenWindow.ranked(file, SmallStudy.CATALOG)) {
      String before = window.title();
      write(window, KeyEvent.VK_M, "remark", "  ");
      assertThat(window.title()).isEqualTo(before);
    }
  }
}
