package plyworth.workbench.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.awt.GraphicsEnvironment;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.KeyEvent;
import java.nio.file.Path;
import javax.swing.JComboBox;
import javax.swing.JLabel;
import javax.swing.JMenuItem;
import javax.swing.JSlider;
import javax.swing.JTabbedPane;
import javax.swing.JTable;
import org.jfree.chart.ChartPanel;
import org.jfree.chart.entity.CategoryItemEntity;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plyworth.shared.store.StudyFile;
import plyworth.workbench.SmallStudy;
import plyworth.workbench.desktop.part.Page;
import plyworth.workbench.desktop.ranking.WeightsChoice;

/** The window as its user meets it, by mouse and by keyboard. */
class WorkbenchWindowTest {

  private static final String COST = "cost/packed-per-1000";

  @TempDir Path folder;
  private Path file;

  @BeforeEach
  void writeStudy() {
    assumeFalse(GraphicsEnvironment.isHeadless());
    file = SmallStudy.file(folder, "mint", SmallStudy.few());
  }

  private OpenWindow open() {
    return OpenWindow.ranked(file, SmallStudy.CATALOG);
  }

  @Test
  void aStudyIsRankedAndItsBestSelectedWhenItOpens() {
    try (OpenWindow window = open()) {
      assertThat(window.title()).isEqualTo("Mint leaf stick - mint.study.json - Plyworth");
      assertThat(window.head()).contains("rank 1");
      assertThat(window.notice()).isEmpty();
      assertThat(window.text("caution", JLabel.class, JLabel::getText)).contains("Screening");
      window.picture("window-light");
    }
  }

  @Test
  void darkIsPutOnByKeyboard() {
    try (OpenWindow window = open()) {
      int light = Screen.on(() -> window.frame.getContentPane().getBackground().getRed());
      window.hand.key(KeyEvent.VK_V, KeyEvent.VK_ALT);
      window.hand.key(KeyEvent.VK_D);
      Screen.await(
          "the ground is dark",
          () -> window.frame.getContentPane().getBackground().getRed() < light / 2);
      window.picture("window-dark");
      window.goTo(2);
      window.goTo(7);
      window.picture("window-dark-table");
    }
  }

  @Test
  void theChartListsTheBestOfEachKindUntilAllAreAskedFor() {
    try (OpenWindow window = open()) {
      assertThat(window.chartNote()).startsWith("The best of each of 10 kinds");
      window.picture("window-kinds");
      window.shortcut(KeyEvent.VK_L);
      Screen.await("all are listed", () -> window.chartNote().startsWith("The best 10 of"));
      window.shortcut(KeyEvent.VK_K);
      Screen.await("kinds again", () -> window.chartNote().startsWith("The best of each"));
    }
  }

  @Test
  void arrowKeysOnTheChartSelectTheNextAndEverythingFollows() {
    try (OpenWindow window = open()) {
      window.shortcut(KeyEvent.VK_L);
      Screen.await("all are listed", () -> window.chartNote().startsWith("The best 10 of"));
      window.goTo(1);
      window.hand.key(KeyEvent.VK_DOWN);
      Screen.await("rank 2 is described", () -> window.head().contains("rank 2"));
      window.goTo(2);
      JTable table = Screen.get("ranking-table", JTable.class);
      Screen.await("the table has the keyboard", table::isFocusOwner);
      assertThat(window.tableCell(Screen.on(table::getSelectedRow), 0)).isEqualTo("2");
      window.hand.key(KeyEvent.VK_DOWN);
      Screen.await("rank 3 is described", () -> window.head().contains("rank 3"));
    }
  }

  @Test
  void aClickOnARowOfTheTableSelectsItAndAClickOnAHeadingSorts() {
    try (OpenWindow window = open()) {
      window.goTo(2);
      JTable table = Screen.get("ranking-table", JTable.class);
      Rectangle fourth = Screen.on(() -> table.getCellRect(4, 0, true));
      window.hand.click(table, fourth.x + 5, fourth.y + 5);
      Screen.await("rank 4 is described", () -> window.head().contains("rank 4"));
      window.hand.click(table.getTableHeader(), 90, 10);
      Screen.await("the least value comes first", () -> !window.tableCell(1, 0).equals("1"));
      assertThat(window.head()).contains("rank 4");
    }
  }

  @Test
  void aClickOnABarSelectsIt() {
    try (OpenWindow window = open()) {
      ChartPanel chart = window.chart();
      Point third = Screen.on(() -> middleOfBar(chart, "3"));
      window.hand.click(chart, third.x, third.y);
      Screen.await("rank 3 is described", () -> window.head().contains("rank 3"));
      Point today = Screen.on(() -> middleOfBar(chart, "today"));
      window.hand.click(chart, today.x, today.y);
      Screen.await("today's is described", () -> window.head().contains("today"));
    }
  }

  private static Point middleOfBar(ChartPanel chart, String name) {
    for (Object entity : chart.getChartRenderingInfo().getEntityCollection().getEntities()) {
      if (entity instanceof CategoryItemEntity item
          && item.getColumnKey().toString().startsWith(name)) {
        Rectangle box = item.getArea().getBounds();
        return new Point((int) box.getCenterX(), (int) box.getCenterY());
      }
    }
    throw new AssertionError("there is no bar " + name);
  }

  @Test
  void aDraggedWeightRanksAgainIsOneEditAndCanBeTakenBack() {
    try (OpenWindow window = open()) {
      window.goTo(2);
      String before = window.tableCell(1, 1);
      JSlider cost = Screen.get("weight:" + COST, JSlider.class);
      int y = cost.getHeight() / 2;
      window.hand.drag(cost, new Point(thumb(cost), y), new Point(cost.getWidth() - 12, y));
      Screen.await("another value leads", () -> !window.tableCell(1, 1).equals(before));
      assertThat(window.title()).startsWith("•");
      window.picture("window-weight-moved");
      window.shortcut(KeyEvent.VK_Z);
      Screen.await("the value leads again", () -> window.tableCell(1, 1).equals(before));
      assertThat(window.title()).startsWith("Mint");
      String redo = Screen.on(() -> window.frame.getJMenuBar().getMenu(1).getItem(1).getText());
      assertThat(redo).startsWith("Redo weight of");
    }
  }

  private static int thumb(JSlider slider) {
    int track = slider.getWidth() - 20;
    return 10 + (int) Math.round(track * slider.getValue() / 100.0);
  }

  private static void state(WeightsChoice choice) {
    Screen.on(
        () -> {
          Screen.get("weights-by", JComboBox.class).setSelectedItem(choice);
          return choice;
        });
  }

  private static String share(OpenWindow window, String criterion) {
    return window.text("share:" + criterion, JLabel.class, JLabel::getText);
  }

  /** Of weights 3, 3, 1 and 1; the centroid of four places is 52, 27, 15 and 6 %. */
  @Test
  void weightsAreStatedBySwingPointsOrByTheirOrder() {
    try (OpenWindow window = open()) {
      state(WeightsChoice.SWING_POINTS);
      Screen.await("points", () -> share(window, COST).equals("100 pts, 38 %"));
      window.picture("window-swing-points");
      state(WeightsChoice.ORDER);
      Screen.await("a place", () -> share(window, COST).equals("27 %"));
      JComboBox<?> place = Screen.get("place:" + COST, JComboBox.class);
      assertThat(Screen.on(place::getSelectedIndex)).isEqualTo(2);
      window.picture("window-order");
      Screen.on(
          () -> {
            place.setSelectedIndex(1);
            return place;
          });
      Screen.await("the first place", () -> share(window, COST).equals("52 %"));
      window.shortcut(KeyEvent.VK_Z);
      window.shortcut(KeyEvent.VK_Z);
      Screen.await("points again", () -> share(window, COST).equals("100 pts, 38 %"));
    }
  }

  @Test
  void anotherWeightingIsChosenByKeyboard() {
    try (OpenWindow window = open()) {
      window.goTo(8);
      window.hand.key(KeyEvent.VK_DOWN);
      Screen.await(
          "cost weighs most",
          () -> window.text("share:" + COST, JLabel.class, JLabel::getText).equals("75 %"));
      JComboBox<?> choice = Screen.get("weighting", JComboBox.class);
      Screen.await("it is chosen", () -> "cost-led".equals(choice.getSelectedItem()));
    }
  }

  @Test
  void whatWasChangedIsSavedAndNoLongerMarked() {
    try (OpenWindow window = open()) {
      window.goTo(8);
      window.hand.key(KeyEvent.VK_DOWN);
      Screen.await("the change is marked", () -> window.title().startsWith("•"));
      window.shortcut(KeyEvent.VK_S);
      Screen.await("the mark is gone", () -> !window.title().startsWith("•"));
      assertThat(StudyFile.open(file).study().weighting()).isEqualTo("cost-led");
    }
  }

  @Test
  void everyPartOfTheWindowIsReachedByItsNumber() {
    try (OpenWindow window = open()) {
      JTabbedPane candidate = Screen.get("candidate-tabs", JTabbedPane.class);
      window.goTo(7);
      Screen.await("the explanation shows", () -> candidate.getSelectedIndex() == 2);
      window.picture("window-explanation");
      window.goTo(6);
      Screen.await("the findings show", () -> candidate.getSelectedIndex() == 1);
      window.goTo(3);
      JTable positions = Screen.get("positions", JTable.class);
      Screen.await("the positions have the keyboard", positions::isFocusOwner);
      window.picture("window-layers");
      window.goTo(4);
      Screen.await("the brief shows", () -> Screen.find("brief", Page.class).isPresent());
      assertThat(window.text("brief", Page.class, Page::getText)).contains("ground mint leaves");
    }
  }

  @Test
  void everyCommandHasAKeyAndANameOfItsOwn() {
    try (OpenWindow window = open()) {
      Screen.on(
          () -> {
            for (int m = 0; m < window.frame.getJMenuBar().getMenuCount(); m++) {
              assertThat(window.frame.getJMenuBar().getMenu(m).getMnemonic()).isNotZero();
              for (java.awt.Component part :
                  window.frame.getJMenuBar().getMenu(m).getMenuComponents()) {
                if (part instanceof JMenuItem item) {
                  assertThat(item.getMnemonic()).as(item.getName()).isNotZero();
                  assertThat(item.getName()).startsWith("menu:");
                }
              }
            }
            return null;
          });
    }
  }
}
