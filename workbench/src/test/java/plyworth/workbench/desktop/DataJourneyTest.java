package plyworth.workbench.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.awt.GraphicsEnvironment;
import java.awt.event.KeyEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.swing.JTable;
import javax.swing.JTextArea;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plyworth.shared.store.StudyFile;
import plyworth.workbench.SmallStudy;

/** Whoever owns the data looks after it, in letters of twice the size, by the keyboard alone. */
class DataJourneyTest {

  @TempDir Path folder;
  private OpenWindow window;
  private Keyboard keys;

  @BeforeEach
  void needsADisplay() {
    assumeFalse(GraphicsEnvironment.isHeadless());
  }

  @Test
  void aFigureIsCorrectedQuestionsAreAskedAndMaterialsReadBack() throws IOException {
    Path study = SmallStudy.file(folder, "mint", SmallStudy.few());
    try (OpenWindow own = OpenWindow.ranked(study, SmallStudy.CATALOG)) {
      window = own;
      keys = new Keyboard(own);
      window.choose("text-size.double");
      window.awaitRest();
      aPriceNeedsItsSourceAndMovesTheRanking();
      openQuestionsAreFoundAndSaved();
      anAnswerIsReadBack(study);
      materialsGoOutAndComeBack();
    }
  }

  private void aPriceNeedsItsSourceAndMovesTheRanking() {
    window.shortcut(KeyEvent.VK_3, KeyEvent.VK_SHIFT);
    keys.awaits("materials-words");
    keys.write("ldpe");
    window.hand.mnemonic(KeyEvent.VK_Y);
    keys.awaits("properties-words");
    keys.write("price");
    keys.key(KeyEvent.VK_DOWN);
    keys.awaits("properties");
    window.picture("data-1-materials-double");
    keys.key(KeyEvent.VK_ENTER);
    keys.awaits("property-typical-1");
    keys.write("9 EUR/lb");
    keys.key(KeyEvent.VK_ENTER);
    Screen.await("something is asked for", () -> !words("property-message-1").isBlank());
    window.picture("data-2-source-double");
    window.hand.mnemonic(KeyEvent.VK_B);
    keys.write("property-source-1", "offer of a resin maker");
    keys.key(KeyEvent.VK_ENTER);
    Keyboard.awaitGone("property");
    Screen.await("the move is told", () -> words("movement").startsWith("After price of"));
    window.awaitRest();
    window.picture("data-3-moved-double");
  }

  private void openQuestionsAreFoundAndSaved() {
    window.shortcut(KeyEvent.VK_4, KeyEvent.VK_SHIFT);
    keys.press("button:questions.find");
    Screen.await("they are found", () -> words("questions-head").startsWith("Under "));
    window.picture("data-4-questions-double");
    keys.press("button:questions.save");
    keys.nameFile("files", folder.resolve("questions.csv"));
    Screen.await("it is written", () -> Files.exists(folder.resolve("questions.csv")));
  }

  private void anAnswerIsReadBack(Path study) throws IOException {
    Path csv = folder.resolve("questions.csv");
    String asked =
        Files.readAllLines(csv).stream()
            .filter(line -> line.contains(",price,"))
            .findFirst()
            .orElseThrow();
    String stem = asked.substring(0, asked.length() - ",,,,,,".length());
    String head = Files.readAllLines(csv).get(0);
    Files.writeString(csv, head + "\n" + stem + ",3,1.1,2,offer in writing,2026-05-01,\n");
    keys.press("button:questions.read");
    keys.nameFile("files", csv);
    Screen.await("it is previewed", () -> words("preview-said").contains("one reading"));
    window.picture("data-5-preview-double");
    keys.key(KeyEvent.VK_ENTER);
    Screen.await("the move is told", () -> words("movement").startsWith("After one reading"));
    window.awaitRest();
    window.shortcut(KeyEvent.VK_S);
    Screen.await(
        "it is saved", () -> StudyFile.open(study).study().results().materials().size() == 1);
  }

  private void materialsGoOutAndComeBack() throws IOException {
    Path csv = folder.resolve("materials.csv");
    window.shortcut(KeyEvent.VK_3, KeyEvent.VK_SHIFT);
    keys.awaits("materials-words");
    keys.press("button:materials.export");
    keys.nameFile("files", csv);
    Screen.await("it is written", () -> Files.exists(csv));
    String edited =
        Files.readString(csv)
            .replaceAll(
                "(?m)^kraft-paper,price,.*$",
                "kraft-paper,price,,50,60,70,EUR/kg,measured,an offer");
    Files.writeString(csv, edited);
    keys.press("button:materials.import");
    keys.nameFile("files", csv);
    JTable changes = Screen.get("preview-changes", JTable.class);
    assertThat(Screen.on(changes::getRowCount)).isEqualTo(1);
    keys.key(KeyEvent.VK_ENTER);
    Screen.await("the move is told", () -> words("movement").startsWith("After import"));
    window.awaitRest();
    window.picture("data-6-imported-double");
  }

  private static String words(String name) {
    return Screen.on(() -> Screen.find(name, JTextArea.class).map(JTextArea::getText).orElse(""));
  }
}
