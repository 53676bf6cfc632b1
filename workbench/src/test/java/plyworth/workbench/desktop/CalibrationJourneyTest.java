package plyworth.workbench.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.awt.GraphicsEnvironment;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import javax.swing.JLabel;
import javax.swing.JTextArea;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plyworth.shared.store.StudyFile;
import plyworth.workbench.SmallStudy;
import plyworth.workbench.desktop.part.Appearance;
import plyworth.workbench.desktop.part.Page;

/** Today's pack is measured before the ranking is believed, trials come later; by keyboard. */
class CalibrationJourneyTest {

  @TempDir Path folder;
  private OpenWindow window;
  private Keyboard keys;

  @BeforeEach
  void needsADisplay() {
    assumeFalse(GraphicsEnvironment.isHeadless());
  }

  @Test
  void todaysPackCalibratesFirstAndTrialsCorrectLater() {
    Path study = SmallStudy.example(folder, "isopropanol-wipe");
    try (OpenWindow measured = OpenWindow.ranked(study, SmallStudy.CATALOG)) {
      window = measured;
      keys = new Keyboard(measured);
      theScreenSaysThatNothingIsCalibrated();
      aReadingBegunIsNotLostByEscape();
      todaysPackCalibratesTheRanking();
      aMaterialIsMeasured();
      aCandidateIsTried();
      allOfItIsSaved(study);
    }
  }

  private void theScreenSaysThatNothingIsCalibrated() {
    assertThat(calibration()).startsWith("Not calibrated");
    assertThat(window.chartNote()).endsWith("not calibrated");
    window.picture("calibration-1-before");
  }

  private String calibration() {
    return window.text("calibration", JLabel.class, JLabel::getText);
  }

  private void aReadingBegunIsNotLostByEscape() {
    Readings.goToMeasured(window);
    keys.press("button:today.add");
    keys.awaits("reading-criterion");
    keys.choose("reading-criterion", "Shelf life in the pack");
    keys.write("reading-value", "900");
    keys.key(KeyEvent.VK_ESCAPE);
    window.answer("No");
    keys.regain();
    keys.awaits("reading-value");
  }

  private void todaysPackCalibratesTheRanking() {
    keys.write("reading-spread", "1.2");
    keys.write("reading-samples", "12");
    keys.write("reading-method", "returns from the field");
    keys.key(KeyEvent.VK_ENTER);
    Keyboard.awaitGone("reading");
    Screen.await("it is calibrated", () -> calibration().startsWith("Calibrated"));
    window.awaitRest();
    window.picture("calibration-2-today");
    window.goTo(1);
    Screen.await("the chart says so", () -> window.chartNote().contains("; calibrated"));
    window.picture("calibration-3-ranking");
    window.shortcut(KeyEvent.VK_2, KeyEvent.VK_SHIFT);
    Screen.await(
        "the page says so",
        () -> window.text("review", Page.class, Page::getText).contains("Calibrated by"));
  }

  private void aMaterialIsMeasured() {
    Readings.goToMeasured(window);
    keys.press("button:material-results.add");
    keys.choose("reading-material", "Low-density polyethylene (ldpe)");
    keys.choose("reading-property", "price");
    keys.write("reading-value", "2.5");
    keys.write("reading-spread", "1.05");
    keys.write("reading-method", "offers of three mills");
    window.picture("calibration-4-reading");
    keys.key(KeyEvent.VK_ENTER);
    Keyboard.awaitGone("reading");
    Screen.await("it is there", () -> Readings.rows("material-results") == 1);
    window.awaitRest();
    assertThat(words("estimate-figures")).contains("Before: ", "Read: 2.5", "After: ");
    keys.press("button:effect.find");
    Screen.await("both are ranked", () -> !words("effect-note").isBlank());
    window.picture("calibration-5-estimate");
  }

  private void aCandidateIsTried() {
    keys.press("button:candidate-results.add");
    keys.choose("reading-criterion", "Bending stiffness");
    keys.write("reading-value", "0.5");
    keys.write("reading-spread", "1.1");
    keys.write("reading-method", "cantilever");
    keys.key(KeyEvent.VK_ENTER);
    Keyboard.awaitGone("reading");
    Screen.await(
        "it is compared",
        () ->
            Readings.rows("candidate-results") == 1
                && Readings.cell("candidate-results", 0, 4).startsWith("× "));
    window.dress(Appearance.DARK);
    window.picture("calibration-6-tried-dark");
  }

  private void allOfItIsSaved(Path study) {
    window.shortcut(KeyEvent.VK_S);
    Screen.await("it is saved", () -> !window.title().startsWith("•"));
    assertThat(StudyFile.open(study).study().measurements()).hasSize(1);
    assertThat(StudyFile.open(study).study().results().materials()).hasSize(1);
    assertThat(StudyFile.open(study).study().results().candidates()).hasSize(1);
  }

  private static String words(String name) {
    return Screen.on(() -> Screen.find(name, JTextArea.class).map(JTextArea::getText).orElse(""));
  }
}
