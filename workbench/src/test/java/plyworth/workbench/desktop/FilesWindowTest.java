package plyworth.workbench.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.awt.GraphicsEnvironment;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import javax.swing.JButton;
import javax.swing.JFileChooser;
import javax.swing.JSlider;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plyworth.shared.store.StudyFile;
import plyworth.workbench.SmallStudy;

/** Files, and what goes wrong with them. */
class FilesWindowTest {

  @TempDir Path folder;
  private Path file;

  @BeforeEach
  void writeStudy() {
    assumeFalse(GraphicsEnvironment.isHeadless());
    file = SmallStudy.file(folder, "mint", SmallStudy.few());
  }

  @Test
  void anotherStudyIsOpenedInPlaceOfTheFirst() {
    Path other = SmallStudy.file(folder, "many", SmallStudy.few());
    try (OpenWindow window = OpenWindow.ranked(file, SmallStudy.CATALOG)) {
      window.shortcut(KeyEvent.VK_O);
      window.choose(other);
      Screen.await("it is open", () -> window.title().contains("many.study.json"));
      window.awaitRest();
      assertThat(window.head()).contains("rank 1");
    }
  }

  @Test
  void aBrokenFileIsRefusedWithItsPlaceAndTheStudyStays() throws IOException {
    Path broken = folder.resolve("broken.study.json");
    Files.writeString(broken, Files.readString(file).replace("\"brief\"", "\"breif\""));
    try (OpenWindow window = OpenWindow.ranked(file, SmallStudy.CATALOG)) {
      window.shortcut(KeyEvent.VK_O);
      window.choose(broken);
      assertThat(window.refusal()).contains("broken.study.json", "breif");
      window.picture("window-refused");
      window.understand();
      assertThat(window.title()).contains("mint.study.json");
      assertThat(window.head()).contains("rank 1");
    }
  }

  @Test
  void aStudyWithFiguresThatCannotBeIsRefusedWithTheirPlaces() throws IOException {
    Path wrong = folder.resolve("slip.study.json");
    String heavy = "(?s)(\"kg/m3\".*?\"high\": )[0-9.]+";
    Files.writeString(wrong, Files.readString(file).replaceFirst(heavy, "$1 9e9"));
    try (OpenWindow window = OpenWindow.ranked(file, SmallStudy.CATALOG)) {
      window.shortcut(KeyEvent.VK_O);
      window.choose(wrong);
      assertThat(window.refusal())
          .contains("slip.study.json, line ", "figures[0].high", "9E9", "It must lie between");
      window.picture("window-impossible");
      window.understand();
      assertThat(window.title()).contains("mint.study.json");
    }
  }

  @Test
  void aWindowThatCannotReadItsFirstFileSaysSoAndOffersToOpenAnother() throws IOException {
    Path empty = Files.writeString(folder.resolve("empty.study.json"), "{}");
    try (OpenWindow window = OpenWindow.opened(empty, SmallStudy.CATALOG)) {
      assertThat(window.refusal()).contains("empty.study.json");
      window.understand();
      window.picture("window-empty");
      window.shortcut(KeyEvent.VK_O);
      window.choose(file);
      window.awaitRest();
      assertThat(window.title()).contains("mint.study.json");
    }
  }

  @Test
  void aCopyIsSavedUnderAnotherNameWithItsEnding() {
    try (OpenWindow window = OpenWindow.ranked(file, SmallStudy.CATALOG)) {
      window.shortcut(KeyEvent.VK_S, KeyEvent.VK_SHIFT);
      window.choose(folder.resolve("copy"));
      Screen.await("the copy is on screen", () -> window.title().contains("copy.study.json"));
      assertThat(StudyFile.open(folder.resolve("copy.study.json")).study().title())
          .isEqualTo("Mint leaf stick");
    }
  }

  @Test
  void anExistingFileIsReplacedOnlyWhenAsked() throws IOException {
    Path other = Files.writeString(folder.resolve("other.study.json"), "precious");
    try (OpenWindow window = OpenWindow.ranked(file, SmallStudy.CATALOG)) {
      window.shortcut(KeyEvent.VK_S, KeyEvent.VK_SHIFT);
      window.choose(other);
      window.answer("Cancel");
      Screen.await(
          "the question is gone", () -> Screen.find("files", JFileChooser.class).isEmpty());
      assertThat(other).hasContent("precious");
      assertThat(window.title()).contains("mint.study.json");
    }
  }

  @Test
  void aFileThatSomebodyElseChangedIsNotOverwritten() throws IOException {
    try (OpenWindow window = OpenWindow.ranked(file, SmallStudy.CATALOG)) {
      Files.writeString(file, Files.readString(file) + "\n");
      window.goTo(8);
      window.hand.key(KeyEvent.VK_DOWN);
      Screen.await("the change is marked", () -> window.title().startsWith("•"));
      window.shortcut(KeyEvent.VK_S);
      assertThat(window.refusal()).contains("somebody else");
      window.understand();
      assertThat(window.title()).startsWith("•");
    }
  }

  @Test
  void closingAsksBeforeChangesAreLost() {
    try (OpenWindow window = OpenWindow.ranked(file, SmallStudy.CATALOG)) {
      JSlider slider = Screen.get("weight:barrier/margin", JSlider.class);
      Screen.on(slider::requestFocusInWindow);
      Screen.await("the slider has the keyboard", slider::isFocusOwner);
      window.hand.key(KeyEvent.VK_RIGHT);
      Screen.await("the change is marked", () -> window.title().startsWith("•"));
      window.shortcut(KeyEvent.VK_Q);
      window.answer("Cancel");
      assertThat(window.title()).startsWith("•");
      window.shortcut(KeyEvent.VK_Q);
      window.answer("No");
      Screen.await("the window is closed", () -> !window.frame.isShowing());
    }
  }

  @Test
  void aStudyWhosePluginIsMissingOpensSaysSoAndRanksTheRest() {
    try (OpenWindow window =
        OpenWindow.ranked(file, SmallStudy.CATALOG.without(Set.of("recyclability")))) {
      assertThat(window.notice()).contains("recyclability", "not loaded");
      assertThat(window.head()).contains("rank 1");
      assertThat(Screen.find("weight:recyclability/class", JSlider.class)).isEmpty();
      window.picture("window-plugin-missing");
    }
  }

  @Test
  void stoppedScoringLeavesAPartThatIsMarkedAndCanBeCompleted() {
    Path large = SmallStudy.file(folder, "large", SmallStudy.many());
    try (OpenWindow window = OpenWindow.opened(large, SmallStudy.CATALOG)) {
      Screen.await("scoring is under way", () -> window.status().contains(" of "));
      window.hand.click(Screen.get("button:action.stop", JButton.class));
      Screen.await("the part is ranked", () -> window.notice().contains("Partial"));
      window.picture("window-partial");
      assertThat(Screen.find("score-again", JButton.class)).isPresent();
      assertThat(Screen.find("button:action.stop", JButton.class)).isEmpty();
    }
  }
}
