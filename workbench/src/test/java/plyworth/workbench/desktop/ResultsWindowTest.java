package plyworth.workbench.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.awt.GraphicsEnvironment;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import java.util.List;
import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plyworth.shared.scoring.Measurement;
import plyworth.shared.study.MaterialResult;
import plyworth.shared.study.Results;
import plyworth.shared.study.Study;
import plyworth.workbench.SmallStudy;
import plyworth.workbench.desktop.session.Remembered;
import plyworth.workbench.desktop.word.Language;

/** What laboratories and trials found, of materials and candidates. */
class ResultsWindowTest {

  @TempDir Path folder;

  @BeforeEach
  void needsADisplay() {
    assumeFalse(GraphicsEnvironment.isHeadless());
  }

  private OpenWindow small() {
    return OpenWindow.ranked(SmallStudy.file(folder, "mint", SmallStudy.few()), SmallStudy.CATALOG);
  }

  @Test
  void laboratoryResultIsShownBeforeAndAfterAndUndone() {
    try (OpenWindow window = small()) {
      Readings.goToMeasured(window);
      Readings.ask("button:material-results.add");
      Readings.choose("material", "Low-density polyethylene (ldpe)");
      Readings.choose("property", "price");
      Readings.write("value", "1.1");
      Readings.write("spread", "1.05");
      Readings.write("samples", "3");
      Readings.write("method", "offers of three mills");
      Readings.take();
      Screen.await("it is there", () -> Readings.rows("material-results") == 1);
      assertThat(Readings.cell("material-results", 0, 3)).startsWith("1.35 (");
      assertThat(Readings.cell("material-results", 0, 4)).startsWith("1.11 (");
      assertThat(window.text("estimate-figures", JTextArea.class, JTextArea::getText))
          .contains("Before: 1.35", "Read: 1.1", "After: 1.11", "corrected by a reading of 1.1");
      window.awaitRest();
      Screen.press("button:effect.find");
      Screen.await("both are ranked", () -> Readings.rows("effect") > 0);
      assertThat(window.text("effect-note", JTextArea.class, JTextArea::getText))
          .contains("without");
      window.picture("results-light");
      scrollTo("effect");
      window.picture("results-effect-light");
      window.shortcut(KeyEvent.VK_Z);
      Screen.await("it is undone", () -> Readings.rows("material-results") == 0);
      assertThat(window.text("effect-note", JTextArea.class, JTextArea::getText))
          .isEqualTo("Nothing was measured yet.");
    }
  }

  @Test
  void resultsSpeakChinese() {
    Measurement life =
        new Measurement("barrier/pack-wvtr", 0.1, "mg/(pack.day)", 1.2, 5, "ASTM D7709", "", "");
    Measurement price =
        new Measurement("price", 1.1, "EUR/kg", 1.1, 3, "offers of three mills", "2026-03-12", "");
    Study study =
        SmallStudy.few()
            .withMeasurements(List.of(life))
            .with(new Results(List.of(new MaterialResult("ldpe", Double.NaN, price)), List.of()));
    Path file = SmallStudy.file(folder, "mint", study);
    Remembered remembered = OpenWindow.newcomer(file);
    remembered.language(Language.CHINESE);
    try (OpenWindow window = OpenWindow.opened(file, SmallStudy.CATALOG, remembered)) {
      Screen.await("it is ranked", () -> window.status().contains("150"));
      Readings.goToMeasured(window);
      Screen.await("it is compared", () -> !Readings.cell("today", 0, 3).equals("…"));
      assertThat(Readings.cell("today", 0, 0)).isEqualTo("进入包装的水蒸气");
      window.picture("results-chinese");
    }
  }

  @Test
  void resultThatCannotBeIsRefusedWithItsBound() {
    try (OpenWindow window = small()) {
      Readings.goToMeasured(window);
      Readings.ask("button:material-results.add");
      Readings.choose("material", "Low-density polyethylene (ldpe)");
      Readings.choose("property", "density");
      Readings.write("value", "9100000");
      Readings.write("spread", "1.05");
      Readings.write("method", "ISO 1183");
      Screen.press("button:reading.done");
      Screen.await("it is refused", () -> Readings.refusal("value").contains("must lie between"));
      Readings.choose("material", "Aluminium foil");
      Readings.choose("property", "o2-rate");
      Readings.write("value", "0.01");
      Screen.press("button:reading.done");
      Screen.await("it asks where", () -> Readings.refusal("at").contains("gauge or humidity"));
      Readings.write("at", "7");
      Readings.take();
      Screen.await("it is there", () -> Readings.rows("material-results") == 1);
    }
  }

  @Test
  void resultOfTheSelectedCandidateStandsBesideItsPrediction() {
    try (OpenWindow window = small()) {
      Readings.goToMeasured(window);
      Readings.ask("button:candidate-results.add");
      Readings.choose("criterion", "Bending stiffness");
      Readings.write("value", "0.5");
      Readings.write("spread", "1.1");
      Readings.write("method", "cantilever");
      Readings.take();
      Screen.await(
          "it is compared",
          () ->
              Readings.rows("candidate-results") == 1
                  && !Readings.cell("candidate-results", 0, 3).equals("…"));
      assertThat(Readings.cell("candidate-results", 0, 4)).startsWith("× ");
      assertThat(Readings.cell("candidate-results", 0, 5)).isEqualTo("outside");
      window.picture("results-candidate-light");
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
}
