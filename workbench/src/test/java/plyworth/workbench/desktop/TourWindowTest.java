package plyworth.workbench.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.awt.GraphicsEnvironment;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import javax.swing.JButton;
import javax.swing.JPanel;
import javax.swing.JTabbedPane;
import javax.swing.JTextArea;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plyworth.workbench.SmallStudy;

/** The tour of the window. */
class TourWindowTest {

  @TempDir Path folder;
  private Path file;

  @BeforeEach
  void writeStudy() {
    assumeFalse(GraphicsEnvironment.isHeadless());
    file = SmallStudy.file(folder, "mint", SmallStudy.few());
  }

  private static void awaitStop(OpenWindow window, int number) {
    Screen.await(
        "stop " + number,
        () ->
            window
                .text("tour-head", JTextArea.class, JTextArea::getText)
                .startsWith("Stop " + number + " of"));
    Screen.await(
        "the note has the keyboard",
        () -> Screen.get("button:tour.next", JButton.class).isFocusOwner());
  }

  @Test
  void enterLeadsFromTheQuestionToTheDecisionAndEveryNoteLiesWithinTheWindow() {
    try (OpenWindow window = OpenWindow.ranked(file, SmallStudy.CATALOG)) {
      window.hand.key(KeyEvent.VK_F1);
      JTabbedPane views = Screen.get("views", JTabbedPane.class);
      for (int stop = 1; stop <= TourStop.ALL.size(); stop++) {
        awaitStop(window, stop);
        Rectangle note = Screen.on(() -> Screen.get("tour-note", JPanel.class).getBounds());
        Rectangle whole = Screen.on(() -> window.frame.getGlassPane().getBounds());
        whole.setLocation(0, 0);
        assertThat(whole.contains(note)).as("stop " + stop).isTrue();
        if (stop == 4 || stop == 9) {
          window.picture("tour-" + stop);
        }
        if (stop < TourStop.ALL.size()) {
          window.hand.key(KeyEvent.VK_SPACE);
        }
      }
      assertThat(Screen.on(() -> views.getTitleAt(views.getSelectedIndex()))).isEqualTo("Review");
      window.hand.key(KeyEvent.VK_SPACE);
      Screen.await("the tour is over", () -> !window.frame.getGlassPane().isVisible());
    }
  }

  @Test
  void escapeEndsItAndTheWindowCanBeUsedOnTheWay() {
    try (OpenWindow window = OpenWindow.ranked(file, SmallStudy.CATALOG)) {
      window.choose("action.tour");
      awaitStop(window, 1);
      assertThat(Screen.on(() -> window.frame.getGlassPane().contains(3, 3))).isFalse();
      window.hand.key(KeyEvent.VK_ESCAPE);
      Screen.await("the tour is over", () -> !window.frame.getGlassPane().isVisible());
    }
  }
}
