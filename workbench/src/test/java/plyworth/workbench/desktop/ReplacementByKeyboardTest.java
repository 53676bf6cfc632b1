package plyworth.workbench.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static plyworth.workbench.desktop.PositionsOnScreen.awaitOther;
import static plyworth.workbench.desktop.PositionsOnScreen.rowOf;
import static plyworth.workbench.desktop.PositionsOnScreen.said;

import java.awt.GraphicsEnvironment;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import javax.swing.JComponent;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.JTextField;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plyworth.shared.store.StudyFile;
import plyworth.shared.study.Limit;
import plyworth.shared.study.Study;
import plyworth.workbench.SmallStudy;
import plyworth.workbench.desktop.part.Page;
import plyworth.workbench.desktop.position.FlowCanvas;

/** From the question whether foil can go to the saved decision, by the keyboard alone. */
class ReplacementByKeyboardTest {

  private static final String COST = "cost/packed-per-1000";

  @TempDir Path folder;
  private OpenWindow window;
  private Keyboard keys;

  @BeforeEach
  void needsADisplay() {
    assumeFalse(GraphicsEnvironment.isHeadless());
  }

  @Test
  void aFoilReplacementIsExploredDecidedAndSaved() {
    try (OpenWindow first =
        OpenWindow.ranked(SmallStudy.example(folder, "sugar-stick"), SmallStudy.CATALOG)) {
      window = first;
      keys = new Keyboard(first);
      theExampleShowsItsRanking();
      theBriefIsWritten();
      aFilmIsFoundAndAdded();
      theGraphIsWalked();
      scoringIsDoneAgain();
      theRankingAnswersToAWeight();
      aCandidateExplainsItself();
      aLimitSaysWhoDropsOut();
      threeAreCompared();
      theDecisionIsWrittenAndSaved();
    }
  }

  private void theExampleShowsItsRanking() {
    assertThat(window.head()).contains("rank 1");
    window.picture("replacement-1-example");
  }

  private void theBriefIsWritten() {
    window.shortcut(KeyEvent.VK_N);
    keys.awaits("field:title");
    keys.write("broth without foil");
    keys.write("field:why", "foil keeps the pack out of paper recycling");
    keys.write("field:notes", "runs on the present line");
    keys.write("field:price", "40");
    keys.write("field:deadline", "60 days");
    window.picture("replacement-2-question");
    page(KeyEvent.VK_P, "field:product-name", "clear broth");
    keys.choose("field:sorption", "isotherm of a product");
    keys.choose("field:known-product", "Seasoning");
    window.picture("replacement-3-product");
    page(KeyEvent.VK_S, "field:shelf-life", "400 days");
    keys.choose("field:zone", "zone IVa");
    page(KeyEvent.VK_K, "field:pack-width", "28 mm");
    window.picture("replacement-4-pack");
    page(KeyEvent.VK_F, "field:lanes", "6");
    page(KeyEvent.VK_O, "field:order-size", "500000");
    key(KeyEvent.VK_ENTER);
    Keyboard.awaitGone("new");
    Screen.await("it is shown", () -> window.title().contains("broth without foil"));
    window.awaitRest();
  }

  /** Turns to a page of the brief by its letter and writes its first words. */
  private void page(int letter, String field, String text) {
    window.hand.key(letter, KeyEvent.VK_ALT);
    Screen.get(field, JComponent.class);
    keys.write(field, text);
  }

  private void key(int key, int... held) {
    keys.key(key, held);
  }

  private void aFilmIsFoundAndAdded() {
    window.goTo(3);
    keys.awaits("positions");
    Screen.await("the candidates are counted", () -> said().contains("ranked"));
    String before = said();
    keys.select(Screen.get("positions", JTable.class), rowOf("bopp-met"));
    key(KeyEvent.VK_N, KeyEvent.VK_ALT);
    keys.awaits("materials.find");
    keys.write("bopp met");
    key(KeyEvent.VK_ENTER);
    keys.awaits("layer.amounts");
    keys.write("15 um");
    key(KeyEvent.VK_ENTER);
    awaitOther(before);
    assertThat(rowOf("bopp-met 15 µm")).isPositive();
    window.picture("replacement-5-positions");
  }

  private void theGraphIsWalked() {
    key(KeyEvent.VK_G, KeyEvent.VK_ALT);
    Screen.get("flows", FlowCanvas.class);
    keys.tabTo("flows");
    String before = words("flows-note");
    key(KeyEvent.VK_RIGHT);
    key(KeyEvent.VK_RIGHT);
    Screen.await("an option is told", () -> !words("flows-note").equals(before));
    window.picture("replacement-6-graph");
  }

  private void scoringIsDoneAgain() {
    key(KeyEvent.VK_F5);
    Screen.await("all are ranked", () -> window.status().contains("candidates:"));
    window.awaitRest();
  }

  private void theRankingAnswersToAWeight() {
    window.goTo(1);
    String before = window.head();
    window.goTo(8);
    keys.tabTo("weight:" + COST);
    for (int i = 0; i < 30 && window.head().equals(before); i++) {
      key(KeyEvent.VK_LEFT);
    }
    Screen.await("the value follows", () -> !window.head().equals(before));
    window.awaitRest();
    window.picture("replacement-8-weight");
  }

  private void aCandidateExplainsItself() {
    window.goTo(1);
    keys.awaits("ranking-chart");
    key(KeyEvent.VK_DOWN);
    window.awaitRest();
    window.goTo(6);
    keys.awaits("findings");
    window.picture("replacement-9-findings");
    window.goTo(7);
    Screen.await("it is explained", () -> Screen.find("explanation", JComponent.class).isPresent());
    window.picture("replacement-10-explanation");
    window.goTo(5);
    keys.awaits("figures");
  }

  private void aLimitSaysWhoDropsOut() {
    window.goTo(3);
    keys.awaits("positions");
    key(KeyEvent.VK_M, KeyEvent.VK_ALT);
    Screen.get("limit.figure", JTextField.class);
    keys.choose("limit.criterion", "Cost per 1000");
    keys.write("limit.figure", "12");
    Screen.await(
        "it is tried", () -> words("limit-effect").matches("(?s)[1-9][0-9,]* of .*drop out.*"));
    keys.write("limit.reason", "what the buyer pays");
    key(KeyEvent.VK_ENTER);
    window.awaitRest();
    window.picture("replacement-11-limit");
  }

  private void threeAreCompared() {
    window.goTo(2);
    JTable table = Screen.get("ranking-table", JTable.class);
    for (int row = 1; row <= 3; row++) {
      keys.select(table, row);
      String rank = "rank " + row + "<";
      Screen.await("it is described", () -> window.head().contains(rank));
      window.shortcut(KeyEvent.VK_P);
    }
    window.shortcut(KeyEvent.VK_1, KeyEvent.VK_SHIFT);
    JTable compared = Screen.get("compare", JTable.class);
    Screen.await("all are there", () -> compared.getColumnCount() == 5);
    assertThat(Screen.on(() -> compared.getVisibleRect().width)).isEqualTo(compared.getWidth());
    window.picture("replacement-12-compare");
  }

  private void theDecisionIsWrittenAndSaved() {
    window.shortcut(KeyEvent.VK_D);
    keys.awaits("decide-text");
    keys.write("cheaper and it keeps the broth");
    window.picture("replacement-13-reasons");
    key(KeyEvent.VK_D, KeyEvent.VK_ALT);
    Keyboard.awaitGone("decide");
    window.shortcut(KeyEvent.VK_2, KeyEvent.VK_SHIFT);
    Screen.await(
        "it is said",
        () -> window.text("review", Page.class, Page::getText).contains("keeps the broth"));
    window.picture("replacement-14-decided");
    window.shortcut(KeyEvent.VK_S);
    Path file = folder.resolve("broth.study.json");
    keys.nameFile("files", file);
    Screen.await("it is saved", () -> !window.title().startsWith("•"));
    Study saved = StudyFile.open(file).study();
    assertThat(saved.decision().reasons()).isEqualTo("cheaper and it keeps the broth");
    assertThat(saved.limits())
        .extracting(Limit::criterion)
        .containsExactlyInAnyOrder("supply/lead-time", COST);
  }

  private static String words(String name) {
    return Screen.on(() -> Screen.find(name, JTextArea.class).map(JTextArea::getText).orElse(""));
  }
}
