package plyworth.workbench.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.awt.GraphicsEnvironment;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import javax.swing.JButton;
import javax.swing.JDialog;
import javax.swing.JTextArea;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plyworth.workbench.SmallStudy;
import plyworth.workbench.desktop.part.Appearance;
import plyworth.workbench.desktop.part.Page;

/** Asking in the window why a structure is not offered. */
class InquiryWindowTest {

  private static final String THICKER =
      "ink-wb 1.4 g/m2 @flexo-water 45 % / kraft-paper 55 g/m2"
          + " / ldpe 12 um @extrusion-lamination / aluminium-foil 9 um !bright-out"
          + " / ldpe 25 um @extrusion-coating";

  @TempDir Path folder;
  private Path file;

  @BeforeEach
  void writeStudy() {
    assumeFalse(GraphicsEnvironment.isHeadless());
    file = SmallStudy.file(folder, "mint", SmallStudy.few());
  }

  private static void ask(OpenWindow window, String structure) {
    JTextArea field = Screen.get("inquiry-structure", JTextArea.class);
    Screen.on(
        () -> {
          field.setText(structure);
          return field.requestFocusInWindow();
        });
    Screen.await("the field has the keyboard", field::isFocusOwner);
    window.hand.key(KeyEvent.VK_ENTER);
  }

  private static String answer() {
    return Screen.on(() -> Screen.get("inquiry-answer", Page.class).getText())
        .replaceAll("<[^>]*>", " ")
        .replace("&quot;", "\"")
        .replaceAll("\\s+", " ");
  }

  private static void awaitAnswer(String text) {
    Screen.await("the answer says " + text, () -> answer().contains(text));
  }

  @Test
  void theAnswerSaysWhatIsMissingAndWhichCandidatesComeNearest() {
    try (OpenWindow window = OpenWindow.ranked(file, SmallStudy.CATALOG)) {
      window.shortcut(KeyEvent.VK_I);
      ask(window, THICKER);
      awaitAnswer("The nearest candidates on offer");
      assertThat(answer())
          .contains("Not on offer", "kraft-paper 55 g/m2")
          .contains("aluminium-foil 9 um !bright-out becomes aluminium-foil 7 um !bright-out");
      window.picture("inquiry-light");
      Screen.on(
          () -> {
            window.frame.dress(Appearance.DARK);
            return null;
          });
      window.picture("inquiry-dark");
    }
  }

  @Test
  void theSelectedCandidateIsAskedForFirst() {
    try (OpenWindow window = OpenWindow.ranked(file, SmallStudy.CATALOG)) {
      window.shortcut(KeyEvent.VK_I);
      JTextArea field = Screen.get("inquiry-structure", JTextArea.class);
      Screen.await("the field has the keyboard", field::isFocusOwner);
      window.hand.key(KeyEvent.VK_ENTER);
      awaitAnswer("Nothing keeps it out of the ranking: rank 1, value");
      window.hand.key(KeyEvent.VK_ESCAPE);
      Screen.await("it is closed", () -> Screen.find("inquiry", JDialog.class).isEmpty());
    }
  }

  @Test
  void anUnknownMaterialIsSaidAndTheStructureAskedForIsShownBeside() {
    try (OpenWindow window = OpenWindow.ranked(file, SmallStudy.CATALOG)) {
      window.shortcut(KeyEvent.VK_I);
      ask(window, THICKER.replace("aluminium", "aluminum"));
      awaitAnswer("Did you mean \"aluminium-foil\"?");
      JButton show = Screen.get("button:inquiry.show", JButton.class);
      assertThat(Screen.on(show::isEnabled)).isFalse();
      ask(window, THICKER);
      Screen.await("it can be shown", show::isEnabled);
      window.hand.click(show);
      Screen.await("it is described", () -> window.head().contains("not on offer"));
    }
  }
}
