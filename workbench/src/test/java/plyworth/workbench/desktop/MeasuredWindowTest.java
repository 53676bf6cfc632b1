package plyworth.workbench.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.awt.GraphicsEnvironment;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.List;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JComponent;
import javax.swing.JDialog;
import javax.swing.JLabel;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plyworth.shared.scoring.Measurement;
import plyworth.shared.store.StudyFile;
import plyworth.workbench.SmallStudy;

/** What was measured, entered by keyboard: on today's pack first, on materials and candidates. */
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

  private static void goToMeasured(OpenWindow window) {
    window.shortcut(KeyEvent.VK_7, KeyEvent.VK_SHIFT);
    Screen.get("button:today.add", JButton.class);
  }

  /** Presses a button that opens a dialog, without waiting for it to close. */
  private static void ask(String button) {
    JButton asking = Screen.get(button, JButton.class);
    SwingUtilities.invokeLater(asking::doClick);
    Screen.get("reading", JDialog.class);
  }

  private static void write(String field, String text) {
    JTextField written = Screen.get("reading-" + field, JTextField.class);
    Screen.on(
        () -> {
          written.setText(text);
          return null;
        });
  }

  private static void choose(String box, String beginning) {
    JComboBox<?> chosen = Screen.get("reading-" + box, JComboBox.class);
    Screen.on(
        () -> {
          for (int i = 0; i < chosen.getItemCount(); i++) {
            if (chosen.getItemAt(i).toString().startsWith(beginning)) {
              chosen.setSelectedIndex(i);
              return null;
            }
          }
          throw new AssertionError(beginning + " is not offered");
        });
  }

  private static void take() {
    Screen.press("button:reading.done");
    Screen.await("the dialog is gone", () -> Screen.find("reading", JDialog.class).isEmpty());
  }

  private static String calibration(OpenWindow window) {
    return window.text("calibration", JLabel.class, JLabel::getText);
  }

  private static String cell(String table, int row, int column) {
    return Screen.on(() -> Screen.get(table, JTable.class).getValueAt(row, column).toString());
  }

  private static int rows(String table) {
    return Screen.find(table, JTable.class).map(JTable::getRowCount).orElse(0);
  }

  private static String refusal(String field) {
    return Screen.find("reading-" + field + "-refusal", JTextArea.class)
        .map(JTextArea::getText)
        .orElse("");
  }

  @Test
  void fieldLifeOfTodaysPackCalibratesTheRankingAndIsUndone() {
    try (OpenWindow window = wipe()) {
      assertThat(calibration(window)).startsWith("Not calibrated");
      goToMeasured(window);
      window.hand.key(KeyEvent.VK_SPACE);
      choose("criterion", "Shelf life in the pack");
      write("value", "900");
      write("spread", "1.2");
      write("samples", "12");
      write("method", "returns from the field");
      write("date", "2026-03-12");
      window.picture("reading-light");
      take();
      Screen.await("it is calibrated", () -> calibration(window).startsWith("Calibrated"));
      window.awaitRest();
      Screen.await("it is compared", () -> !cell("today", 0, 5).equals("…"));
      assertThat(cell("today", 0, 5)).isEqualTo("900");
      assertThat(cell("today", 0, 6)).isEqualTo("5 figures");
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
      goToMeasured(window);
      ask("button:today.add");
      choose("criterion", "Film price per 1000 packs");
      write("value", "12");
      write("spread", "1");
      write("method", "last invoice");
      take();
      Screen.await("it is compared", () -> rows("today") == 1 && !cell("today", 0, 3).equals("…"));
      assertThat(cell("today", 0, 6)).isEqualTo("nothing");
      assertThat(cell("today", 0, 4)).startsWith("× ");
      assertThat(calibration(window)).startsWith("Not calibrated: no measurement");
    }
  }

  @Test
  void wrongEntriesAreAnsweredBesideTheirFieldsAndNothingIsLost() {
    try (OpenWindow window = small()) {
      goToMeasured(window);
      ask("button:today.add");
      write("value", "-3");
      write("date", "12 March");
      assertThat(Screen.on(() -> refusal("value"))).contains("greater than 0");
      assertThat(Screen.on(() -> refusal("date"))).contains("2026-03-12");
      assertThat(Screen.on(() -> refusal("method"))).isEmpty();
      Screen.press("button:reading.done");
      Screen.await("all is said", () -> refusal("method").contains("standard"));
      assertThat(Screen.on(() -> refusal("spread"))).contains("1 or more");
      assertThat(Screen.get("reading-value", JTextField.class).getText()).isEqualTo("-3");
      window.picture("reading-refused-light");
      window.hand.key(KeyEvent.VK_ESCAPE);
      Screen.await("the dialog is gone", () -> Screen.find("reading", JDialog.class).isEmpty());
      assertThat(window.title()).doesNotStartWith("•");
    }
  }

  @Test
  void transmissionIsEnteredInCustomaryUnitsAndKeptInThoseOfTheStudy() {
    try (OpenWindow window = small()) {
      goToMeasured(window);
      ask("button:today.add");
      choose("criterion", "Water vapour transmission rate");
      choose("unit", "g/(100in²");
      write("value", "1");
      write("spread", "1.1");
      write("method", "ASTM F1249");
      take();
      Screen.await("it is there", () -> rows("today") == 1);
      assertThat(cell("today", 0, 1)).isEqualTo("15.5 ×/÷ 1.1");
      assertThat(cell("today", 0, 2)).isEqualTo("g/(m²·day)");
    }
  }

  @Test
  void laboratoryResultIsShownBeforeAndAfterAndUndone() {
    try (OpenWindow window = small()) {
      goToMeasured(window);
      ask("button:material-results.add");
      choose("material", "Low-density polyethylene (ldpe)");
      choose("property", "price");
      write("value", "1.1");
      write("spread", "1.05");
      write("samples", "3");
      write("method", "offers of three mills");
      take();
      Screen.await("it is there", () -> rows("material-results") == 1);
      assertThat(cell("material-results", 0, 3)).startsWith("1.35 (");
      assertThat(cell("material-results", 0, 4)).startsWith("1.11 (");
      assertThat(window.text("estimate-figures", JTextArea.class, JTextArea::getText))
          .contains("Before: 1.35", "Read: 1.1", "After: 1.11", "corrected by a reading of 1.1");
      window.awaitRest();
      Screen.press("button:effect.find");
      Screen.await("both are ranked", () -> rows("effect") > 0);
      assertThat(window.text("effect-note", JTextArea.class, JTextArea::getText))
          .contains("without");
      Screen.get("estimate-figures", JTextArea.class);
      window.picture("results-light");
      scrollTo("effect");
      Screen.await("it is painted", () -> true);
      window.picture("results-effect-light");
      window.shortcut(KeyEvent.VK_Z);
      Screen.await("it is undone", () -> rows("material-results") == 0);
      assertThat(window.text("effect-note", JTextArea.class, JTextArea::getText))
          .isEqualTo("Nothing was measured yet.");
    }
  }

  private static void scrollTo(String name) {
    Screen.on(
        () -> {
          JTable part = Screen.get(name, JTable.class);
          JComponent sections = (JComponent) SwingUtilities.getAncestorNamed("measured", part);
          sections.scrollRectToVisible(new Rectangle(0, sections.getHeight() - 10, 10, 10));
          return null;
        });
  }

  @Test
  void resultThatCannotBeIsRefusedWithItsBound() {
    try (OpenWindow window = small()) {
      goToMeasured(window);
      ask("button:material-results.add");
      choose("material", "Low-density polyethylene (ldpe)");
      choose("property", "density");
      write("value", "9100000");
      write("spread", "1.05");
      write("method", "ISO 1183");
      Screen.press("button:reading.done");
      Screen.await("it is refused", () -> refusal("value").contains("must lie between"));
      choose("material", "Aluminium foil");
      choose("property", "o2-rate");
      write("value", "0.01");
      Screen.press("button:reading.done");
      Screen.await("it asks where", () -> refusal("at").contains("gauge or humidity"));
      write("at", "7");
      take();
      Screen.await("it is there", () -> rows("material-results") == 1);
    }
  }

  @Test
  void resultOfTheSelectedCandidateStandsBesideItsPrediction() {
    try (OpenWindow window = small()) {
      goToMeasured(window);
      ask("button:candidate-results.add");
      choose("criterion", "Bending stiffness");
      write("value", "0.5");
      write("spread", "1.1");
      write("method", "cantilever");
      take();
      Screen.await(
          "it is compared",
          () -> rows("candidate-results") == 1 && !cell("candidate-results", 0, 3).equals("…"));
      assertThat(cell("candidate-results", 0, 4)).startsWith("× ");
      assertThat(cell("candidate-results", 0, 5)).isEqualTo("outside");
      window.picture("results-candidate-light");
    }
  }

  @Test
  void measurementIsChangedByEnterAndTakenOutByDelete() {
    Measurement life =
        new Measurement("cost/price-per-1000", 12, "EUR", 1, 1, "last invoice", "2026-03-12", "");
    Path file = SmallStudy.file(folder, "mint", SmallStudy.few().withMeasurements(List.of(life)));
    try (OpenWindow window = OpenWindow.ranked(file, SmallStudy.CATALOG)) {
      goToMeasured(window);
      JTable table = Screen.get("today", JTable.class);
      Screen.on(
          () -> {
            table.setRowSelectionInterval(0, 0);
            return table.requestFocusInWindow();
          });
      Screen.await("the table has the keyboard", table::isFocusOwner);
      window.hand.key(KeyEvent.VK_ENTER);
      write("value", "13");
      take();
      Screen.await("it is changed", () -> cell("today", 0, 1).equals("13"));
      Screen.on(
          () -> {
            table.requestFocus();
            return null;
          });
      Screen.await("the table has the keyboard", table::isFocusOwner);
      window.hand.key(KeyEvent.VK_DELETE);
      Screen.await("it is gone", () -> rows("today") == 0);
      window.shortcut(KeyEvent.VK_Z);
      Screen.await("it is back", () -> rows("today") == 1);
      window.shortcut(KeyEvent.VK_S);
      Screen.await(
          "it is saved", () -> StudyFile.open(file).study().measurements().get(0).value() == 13);
    }
  }
}
