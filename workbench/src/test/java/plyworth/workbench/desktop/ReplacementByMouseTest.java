package plyworth.workbench.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static plyworth.workbench.desktop.PositionsOnScreen.awaitOther;
import static plyworth.workbench.desktop.PositionsOnScreen.rowOf;
import static plyworth.workbench.desktop.PositionsOnScreen.said;
import static plyworth.workbench.desktop.PositionsOnScreen.table;

import java.awt.GraphicsEnvironment;
import java.awt.Point;
import java.awt.Rectangle;
import java.nio.file.Path;
import javax.swing.JComponent;
import javax.swing.JFileChooser;
import javax.swing.JList;
import javax.swing.JSlider;
import javax.swing.JTable;
import javax.swing.JTextArea;
import org.jfree.chart.entity.CategoryItemEntity;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plyworth.shared.material.Material;
import plyworth.shared.store.StudyFile;
import plyworth.shared.study.Study;
import plyworth.workbench.SmallStudy;
import plyworth.workbench.desktop.part.Page;

/** From the question whether foil can go to the saved decision, by the mouse alone, in the dark. */
class ReplacementByMouseTest {

  private static final String COST = "cost/packed-per-1000";

  @TempDir Path folder;
  private OpenWindow window;
  private Mouse mouse;

  @BeforeEach
  void needsADisplay() {
    assumeFalse(GraphicsEnvironment.isHeadless());
  }

  @Test
  void aFoilReplacementIsExploredDecidedAndSaved() {
    try (OpenWindow first =
        OpenWindow.ranked(SmallStudy.example(folder, "sugar-stick"), SmallStudy.CATALOG)) {
      window = first;
      mouse = new Mouse(first);
      theWindowIsDarkened();
      theBriefIsWritten();
      aFilmIsDraggedOntoAPosition();
      theGraphIsLookedAt();
      scoringIsDoneAgain();
      theRankingAnswersToAWeight();
      aBarExplainsItself();
      aLimitSaysWhoDropsOut();
      threeAreCompared();
      theDecisionIsWrittenAndSaved();
    }
  }

  private void theWindowIsDarkened() {
    int light = Screen.on(() -> window.frame.getContentPane().getBackground().getRed());
    mouse.command("menu.view", "appearance.dark");
    Screen.await(
        "the ground is dark",
        () -> window.frame.getContentPane().getBackground().getRed() < light / 2);
  }

  private void theBriefIsWritten() {
    mouse.click("button:action.new");
    Screen.get("field:title", JComponent.class);
    mouse.write("field:title", "broth by mouse");
    mouse.write("field:why", "foil keeps the pack out of paper recycling");
    mouse.write("field:notes", "runs on the present line");
    mouse.write("field:price", "40");
    mouse.turnTo("brief-pages", "Product");
    mouse.choose("field:known-product", "Instant coffee");
    window.picture("replacement-dark-1-product");
    mouse.turnTo("brief-pages", "Storage");
    mouse.choose("field:zone", "zone IVa");
    mouse.turnTo("brief-pages", "Pack");
    mouse.write("field:pack-width", "28 mm");
    window.picture("replacement-dark-2-pack");
    mouse.turnTo("brief-pages", "Market");
    mouse.write("field:order-size", "500000");
    mouse.click("button:new.done");
    Keyboard.awaitGone("new");
    Screen.await("it is shown", () -> window.title().contains("broth by mouse"));
    window.awaitRest();
  }

  private void aFilmIsDraggedOntoAPosition() {
    mouse.turnTo("views", "Layers");
    Screen.await("the candidates are counted", () -> said().contains("ranked"));
    String before = said();
    mouse.write("materials.find", "glassine");
    JList<?> list = Screen.get("materials", JList.class);
    Screen.await(
        "it is found",
        () ->
            list.getModel().getSize() > 0
                && ((Material) list.getModel().getElementAt(0)).id().startsWith("glassine"));
    mouse.drag(list, 0, table(), rowOf("kraft-paper 50"));
    mouse.write("layer.amounts", "50 g/m2");
    mouse.click("button:option.add");
    awaitOther(before);
    assertThat(rowOf("glassine")).isPositive();
    window.awaitRest();
    window.picture("replacement-dark-3-positions");
  }

  private void theGraphIsLookedAt() {
    mouse.turnTo("positions-tabs", "Candidate graph");
    mouse.click("flows");
    window.picture("replacement-dark-4-graph");
  }

  private void scoringIsDoneAgain() {
    mouse.command("menu.ranking", "action.again");
    Screen.await("all are ranked", () -> window.status().contains("candidates:"));
    window.awaitRest();
  }

  private void theRankingAnswersToAWeight() {
    mouse.turnTo("views", "Ranking");
    String before = window.head();
    JSlider cost = Screen.get("weight:" + COST, JSlider.class);
    int y = cost.getHeight() / 2;
    int thumb = 10 + (cost.getWidth() - 20) * cost.getValue() / 100;
    window.hand.drag(cost, new Point(thumb, y), new Point(cost.getWidth() - 12, y));
    Screen.await("the value follows", () -> !window.head().equals(before));
    window.awaitRest();
    window.picture("replacement-dark-5-weight");
  }

  private void aBarExplainsItself() {
    Point third = Screen.on(() -> middleOfBar("3"));
    window.hand.click(window.chart(), third.x, third.y);
    Screen.await("rank 3 is described", () -> window.head().contains("rank"));
    window.awaitRest();
    mouse.turnTo("candidate-tabs", "Findings");
    window.picture("replacement-dark-6-findings");
    mouse.turnTo("candidate-tabs", "Explanation");
    window.picture("replacement-dark-7-explanation");
    mouse.turnTo("candidate-tabs", "Figures");
  }

  private Point middleOfBar(String name) {
    for (Object entity :
        window.chart().getChartRenderingInfo().getEntityCollection().getEntities()) {
      if (entity instanceof CategoryItemEntity item
          && item.getColumnKey().toString().startsWith(name)) {
        Rectangle box = item.getArea().getBounds();
        return new Point((int) box.getCenterX(), (int) box.getCenterY());
      }
    }
    throw new AssertionError("there is no bar " + name);
  }

  private void aLimitSaysWhoDropsOut() {
    mouse.turnTo("views", "Layers");
    mouse.turnTo("positions-tabs", "Limits");
    mouse.choose("limit.criterion", "Jaw window");
    mouse.write("limit.figure", "20");
    Screen.await("it is tried", () -> words("limit-effect").contains("drop"));
    mouse.click("button:limit.set");
    window.awaitRest();
    window.picture("replacement-dark-8-limit");
  }

  private void threeAreCompared() {
    mouse.turnTo("views", "Table");
    JTable table = Screen.get("ranking-table", JTable.class);
    for (int row = 1; row <= 3; row++) {
      mouse.clickCell(table, row, 0);
      String rank = "rank " + row + "<";
      Screen.await("it is described", () -> window.head().contains(rank));
      mouse.command("menu.ranking", "action.pin");
    }
    mouse.turnTo("views", "Compare");
    JTable compared = Screen.get("compare", JTable.class);
    Screen.await("all are there", () -> compared.getColumnCount() == 5);
    window.picture("replacement-dark-9-compare");
  }

  private void theDecisionIsWrittenAndSaved() {
    mouse.command("menu.decision", "action.decide");
    Screen.get("decide-text", JTextArea.class);
    mouse.write("decide-text", "it keeps the coffee");
    mouse.click("button:decide.done");
    Keyboard.awaitGone("decide");
    mouse.turnTo("views", "Review");
    Screen.await(
        "it is said",
        () -> window.text("review", Page.class, Page::getText).contains("keeps the coffee"));
    window.picture("replacement-dark-10-decided");
    mouse.click("button:action.save");
    Screen.get("files", JFileChooser.class);
    window.choose(folder.resolve("broth"));
    Screen.await("it is saved", () -> !window.title().startsWith("•"));
    Study saved = StudyFile.open(folder.resolve("broth.study.json")).study();
    assertThat(saved.decision().reasons()).isEqualTo("it keeps the coffee");
    assertThat(saved.limits()).hasSize(2);
  }

  private static String words(String name) {
    return Screen.on(() -> Screen.find(name, JTextArea.class).map(JTextArea::getText).orElse(""));
  }
}
