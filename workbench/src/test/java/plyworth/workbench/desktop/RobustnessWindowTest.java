package plyworth.workbench.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.awt.GraphicsEnvironment;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import javax.swing.JComponent;
import javax.swing.JLabel;
import javax.swing.JProgressBar;
import javax.swing.JTable;
import javax.swing.JTextArea;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plyworth.workbench.SmallStudy;
import plyworth.workbench.desktop.decision.StripCanvas;
import plyworth.workbench.desktop.part.Appearance;
import plyworth.workbench.desktop.part.ChartCanvas;

/** How sure a ranking is, as the user finds out. */
class RobustnessWindowTest {

  private static final String SNACK = "freeze-dried-snack";

  @TempDir Path folder;
  private Path file;

  @BeforeEach
  void writeStudy() {
    assumeFalse(GraphicsEnvironment.isHeadless());
    file = SmallStudy.file(folder, "mint", SmallStudy.few());
  }

  private OpenWindow open() {
    return open(file);
  }

  private static OpenWindow open(Path file) {
    OpenWindow window = OpenWindow.ranked(file, SmallStudy.CATALOG);
    window.shortcut(KeyEvent.VK_0, KeyEvent.VK_SHIFT);
    Screen.await(
        "the strips are there", () -> words(window, "robustness-leader").startsWith("Under"));
    return window;
  }

  private static String words(OpenWindow window, String name) {
    return window.text(name, JTextArea.class, JTextArea::getText);
  }

  private static void scrollTo(String name) {
    JComponent part = Screen.get(name, JComponent.class);
    Screen.on(
        () -> {
          part.scrollRectToVisible(new Rectangle(0, 0, 1, part.getHeight()));
          return null;
        });
  }

  @Test
  void theStripsSayHowFarEachWeightMayMoveAndWhoLeadsBeyond() {
    try (OpenWindow window = open(SmallStudy.example(folder, SNACK))) {
      assertThat(words(window, "robustness-leader")).contains("Under ", "behind: ");
      assertThat(words(window, "stakeholders-note")).contains("Least regret of all candidates");
      StripCanvas strips = Screen.get("stability", StripCanvas.class);
      Screen.await("the strips have the keyboard", strips::isFocusOwner);
      window.picture("robustness-light");
      String before = window.head();
      for (int i = 0; i < 8 && window.head().equals(before); i++) {
        window.hand.key(KeyEvent.VK_RIGHT);
        window.hand.key(KeyEvent.VK_LEFT);
        window.hand.key(KeyEvent.VK_DOWN);
      }
      Screen.await("who leads beyond is described", () -> !window.head().equals(before));
    }
  }

  @Test
  void drawsAreMadeInTheBackgroundAndSayHowSureTheyAre() {
    try (OpenWindow window = open(SmallStudy.example(folder, SNACK))) {
      Screen.press("button:chances.draw");
      Screen.await(
          "it is under way", () -> Screen.find("chances-progress", JProgressBar.class).isPresent());
      Screen.await(
          "the shares are there", () -> words(window, "chances-note").contains("draws of all"));
      scrollTo("chances-note");
      scrollTo("chances");
      window.picture("robustness-chances");
      ChartCanvas chart = Screen.get("chances", ChartCanvas.class);
      Screen.on(chart::requestFocusInWindow);
      Screen.await("the bars have the keyboard", chart::isFocusOwner);
      window.hand.key(KeyEvent.VK_DOWN);
      window.hand.key(KeyEvent.VK_DOWN);
      Screen.await("one is described", () -> window.head().contains("rank"));
      window.dress(Appearance.DARK);
      window.picture("robustness-chances-dark");
    }
  }

  @Test
  void drawsThatAreStoppedCountAsFarAsTheyWent() {
    try (OpenWindow window = open()) {
      Screen.press("button:chances.draw");
      JProgressBar progress = Screen.get("chances-progress", JProgressBar.class);
      Screen.await("some are drawn", () -> progress.getValue() > 0);
      Screen.press("chances:work.stop");
      Screen.await("it rests", () -> Screen.find("chances-progress", JProgressBar.class).isEmpty());
      assertThat(words(window, "chances-note")).contains("draws of all");
      assertThat(words(window, "chances-note")).doesNotContain("1,000 draws");
    }
  }

  @Test
  void whatWouldHaveToBeTrueIsFoundForTheSelectedOne() {
    try (OpenWindow window = open()) {
      assertThat(words(window, "turn-head")).contains("between rank 1 and rank 2");
      Screen.press("button:turn.find");
      Screen.await(
          "it is found", () -> words(window, "turn-head").contains("inputs, changed alone"));
      JTable turn = Screen.get("turn", JTable.class);
      assertThat(Screen.on(turn::getRowCount)).isPositive();
      scrollTo("turn-note");
      window.picture("robustness-turn");
    }
  }

  @Test
  void whatMakesTheSelectedOneUncertainCanBeStopped() {
    try (OpenWindow window = open()) {
      Screen.press("button:sensitivity.find");
      JProgressBar progress = Screen.get("sensitivity-progress", JProgressBar.class);
      Screen.await("some is done", () -> progress.getValue() > 0);
      Screen.press("sensitivity:work.stop");
      Screen.await(
          "it rests", () -> Screen.find("sensitivity-progress", JProgressBar.class).isEmpty());
      assertThat(window.text("sensitivity-message", JLabel.class, JLabel::getText))
          .contains("Stopped before anything was found");
    }
  }
}
