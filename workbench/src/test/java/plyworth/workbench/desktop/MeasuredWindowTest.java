package plyworth.workbench.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.awt.GraphicsEnvironment;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.List;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plyworth.shared.scoring.Measurement;
import plyworth.shared.store.StudyFile;
import plyworth.workbench.SmallStudy;
import plyworth.workbench.desktop.part.Appearance;

/** What was measured, entered by hand: on today's pack first. */
class MeasuredWindowTest {

  @TempDir Path folder;

  @BeforeEach
  void needsADisplay() {
    assumeFalse(GraphicsEnvironment.isHeadless());
  }

  private OpenWindow small() {
    return OpenWindow.ranked(SmallStudy.file(folder, "mint", SmallStudy.few()), SmallStudy.CATALOG);
  }

  private OpenWindow wipe() {
    return OpenWindow.ranked(SmallStudy.example(folder, "isopropanol-wipe"), SmallStudy.CATALOG);
  }

  private static String calibration(OpenWindow window) {
    return window.text("calibration", JLabel.class, JLabel::getText);
  }

  @Test
  void fieldLifeOfTodaysPackCalibratesTheRankingAndIsUndone() {
    try (OpenWindow window = wipe()) {
      assertThat(calibration(window)).startsWith("Not calibrated");
      Readings.goToMeasured(window);
      window.hand.key(KeyEvent.VK_SPACE);
      Readings.choose("criterion", "Shelf life in the pack");
      Readings.write("value", "900");
      Readings.write("spread", "1.2");
      Readings.write("samples", "12");
      Readings.write("method", "returns from the field");
      Readings.write("date", "2026-03-12");
      window.picture("reading-light");
      Readings.take();
      Screen.await("it is calibrated", () -> calibration(window).startsWith("Calibrated"));
      window.awaitRest();
      Screen.await("it is compared", () -> !Readings.cell("today", 0, 5).equals("…"));
      assertThat(Readings.cell("today", 0, 5)).isEqualTo("900");
      assertThat(Readings.cell("today", 0, 6)).isEqualTo("5 figures");
      assertThat(window.text("today-note", JTextArea.class, JTextArea::getText))
          .contains("Shelf life over the need", "returns from the field");
      window.picture("measured-light");
      window.dress(Appearance.DARK);
      window.picture("measured-dark");
      window.shortcut(KeyEvent.VK_Z);
      Screen.await("it is undone", () -> calibration(window).startsWith("Not calibrated"));
    }
  }

  @Test
  void priceIsShownBesideItsPredictionAndCorrectsNothing() {
    try (OpenWindow window = small()) {
      Readings.goToMeasured(window);
      Readings.ask("button:today.add");
      Readings.choose("criterion", "Film price per 1000 packs");
      Readings.write("value", "12");
      Readings.write("spread", "1");
      Readings.write("method", "last invoice");
      Readings.take();
      Screen.await(
          "it is compared",
          () -> Readings.rows("today") == 1 && !Readings.cell("today", 0, 3).equals("…"));
      assertThat(Readings.cell("today", 0, 6)).isEqualTo("nothing");
      assertThat(Readings.cell("today", 0, 4)).startsWith("× ");
      assertThat(calibration(window)).startsWith("Not calibrated: no measurement");
    }
  }

  @Test
  void wrongEntriesAreAnsweredBesideTheirFieldsAndNothingIsLost() {
    try (OpenWindow window = small()) {
      Readings.goToMeasured(window);
      Readings.ask("button:today.add");
      Readings.write("value", "-3");
      Readings.write("date", "12 March");
      assertThat(Screen.on(() -> Readings.refusal("value"))).contains("greater than 0");
      assertThat(Screen.on(() -> Readings.refusal("date"))).contains("2026-03-12");
      assertThat(Screen.on(() -> Readings.refusal("method"))).isEmpty();
      Screen.press("button:reading.done");
      Screen.await("all is said", () -> Readings.refusal("method").contains("standard"));
      assertThat(Screen.on(() -> Readings.refusal("spread"))).contains("1 or more");
      assertThat(Screen.get("reading-value", JTextField.class).getText()).isEqualTo("-3");
      window.picture("reading-refused-light");
      window.hand.key(KeyEvent.VK_ESCAPE);
      window.answer("Yes");
      Screen.await("the dialog is gone", () -> Screen.find("reading", JDialog.class).isEmpty());
      assertThat(window.title()).doesNotStartWith("•");
    }
  }

  @Test
  void transmissionIsEnteredInCustomaryUnitsAndKeptInThoseOfTheStudy() {
    try (OpenWindow window = small()) {
      Readings.goToMeasured(window);
      Readings.ask("button:today.add");
      Readings.choose("criterion", "Water vapour transmission rate");
      Readings.choose("unit", "g/(100in²");
      Readings.write("value", "1");
      Readings.write("spread", "1.1");
      Readings.write("method", "ASTM F1249");
      Readings.take();
      Screen.await("it is there", () -> Readings.rows("today") == 1);
      assertThat(Readings.cell("today", 0, 1)).isEqualTo("15.5 ×/÷ 1.1");
      assertThat(Readings.cell("today", 0, 2)).isEqualTo("g/(m²·day)");
    }
  }

  @Test
  void measurementIsChangedByEnterAndTakenOutByDelete() {
    Measurement life =
        new Measurement("cost/price-per-1000", 12, "EUR", 1, 1, "last invoice", "2026-03-12", "");
    Path file = SmallStudy.file(folder, "mint", SmallStudy.few().withMeasurements(List.of(life)));
    try (OpenWindow window = OpenWindow.ranked(file, SmallStudy.CATALOG)) {
      Readings.goToMeasured(window);
      JTable table = Screen.get("today", JTable.class);
      Screen.on(
          () -> {
            table.setRowSelectionInterval(0, 0);
            return table.requestFocusInWindow();
          });
      Screen.await("the table has the keyboard", table::isFocusOwner);
      window.hand.key(KeyEvent.VK_ENTER);
      Readings.write("value", "13");
      Readings.take();
      Screen.await("it is changed", () -> Readings.cell("today", 0, 1).equals("13"));
      Screen.on(
          () -> {
            table.requestFocus();
            return null;
          });
      Screen.await("the table has the keyboard", table::isFocusOwner);
      window.hand.key(KeyEvent.VK_DELETE);
      Screen.await("it is gone", () -> Readings.rows("today") == 0);
      window.shortcut(KeyEvent.VK_Z);
      Screen.await("it is back", () -> Readings.rows("today") == 1);
      window.shortcut(KeyEvent.VK_S);
      Screen.await(
          "it is saved", () -> StudyFile.open(file).study().measurements().get(0).value() == 13);
    }
  }
}
