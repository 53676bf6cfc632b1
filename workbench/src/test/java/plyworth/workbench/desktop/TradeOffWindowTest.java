package plyworth.workbench.desktop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import java.awt.GraphicsEnvironment;
import java.awt.Image;
import java.awt.Toolkit;
import java.awt.datatransfer.DataFlavor;
import java.awt.event.KeyEvent;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.IntStream;
import javax.swing.JButton;
import javax.swing.JComboBox;
import javax.swing.JFileChooser;
import javax.swing.JTable;
import javax.swing.JTextArea;
import javax.swing.SwingUtilities;
import org.jfree.chart.entity.EntityCollection;
import org.jfree.chart.entity.XYItemEntity;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plyworth.workbench.SmallStudy;
import plyworth.workbench.chart.TradeOffChart;
import plyworth.workbench.desktop.part.Appearance;
import plyworth.workbench.desktop.part.ChartCanvas;

/** The trade-off plot as its user meets it. */
class TradeOffWindowTest {

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
    window.goTo(9);
    Screen.await("the plot is drawn", () -> chart().getChart() != null);
    return window;
  }

  private static ChartCanvas chart() {
    return Screen.get("tradeoff", ChartCanvas.class);
  }

  private static String note(OpenWindow window) {
    return window.text("tradeoff-note", JTextArea.class, JTextArea::getText);
  }

  @Test
  void whatIsShownIsSaid() {
    try (OpenWindow window = open(SmallStudy.example(folder, SNACK))) {
      assertThat(note(window)).contains("best of each of", "The front");
      window.picture("tradeoff-light");
      window.dress(Appearance.DARK);
      window.picture("tradeoff-dark");
    }
  }

  @Test
  void arrowKeysAndAClickSelectACandidate() {
    try (OpenWindow window = open()) {
      Screen.await("the plot has the keyboard", chart()::isFocusOwner);
      String before = window.head();
      window.hand.key(KeyEvent.VK_RIGHT);
      Screen.await("another is described", () -> !window.head().equals(before));
      XYItemEntity mark = Screen.on(TradeOffWindowTest::anotherMark);
      String second = window.head();
      Rectangle2D place = mark.getArea().getBounds2D();
      window.hand.click(chart(), (int) place.getCenterX(), (int) place.getCenterY());
      Screen.await("another is described again", () -> !window.head().equals(second));
      Screen.await(
          "the mark is ringed",
          () -> TradeOffChart.selected(chart().getChart()).equals(TradeOffChart.place(mark)));
    }
  }

  /** A mark that is not selected and that no other hides. */
  private static XYItemEntity anotherMark() {
    EntityCollection drawn = chart().getChartRenderingInfo().getEntityCollection();
    return IntStream.range(0, drawn.getEntityCount())
        .mapToObj(drawn::getEntity)
        .filter(XYItemEntity.class::isInstance)
        .map(XYItemEntity.class::cast)
        .filter(e -> TradeOffChart.place(e).isPresent())
        .filter(e -> !TradeOffChart.place(e).equals(TradeOffChart.selected(chart().getChart())))
        .filter(
            e -> {
              Rectangle2D area = e.getArea().getBounds2D();
              return drawn.getEntity(area.getCenterX(), area.getCenterY()) == e;
            })
        .findFirst()
        .orElseThrow();
  }

  @Test
  void otherAxesAreChosenAndTheTableFollows() {
    try (OpenWindow window = open()) {
      JTable table = turned();
      JComboBox<?> across = Screen.get("tradeoff.across", JComboBox.class);
      String wanted = "Grammage";
      Screen.on(
          () -> {
            for (int i = 0; i < across.getItemCount(); i++) {
              if (across.getItemAt(i).toString().equals(wanted)) {
                across.setSelectedIndex(i);
              }
            }
            return null;
          });
      Screen.await(
          "the column is there", () -> table.getColumnName(2).startsWith(wanted + ", g/m²"));
      assertThat(note(window)).contains("not reckoned for all");
      window.picture("tradeoff-table");
      Screen.on(
          () -> {
            table.setRowSelectionInterval(0, 0);
            return null;
          });
      Screen.await("today's is described", () -> window.head().contains("today"));
    }
  }

  @Test
  void whatIsDrawnIsCopiedAsATableAndSavedAsAPicture() throws Exception {
    try (OpenWindow window = open()) {
      Screen.await("something is shown", () -> !note(window).isBlank());
      Screen.press("tradeoff:charts.copy-table");
      String copied =
          (String)
              Toolkit.getDefaultToolkit().getSystemClipboard().getData(DataFlavor.stringFlavor);
      assertThat(copied).startsWith("rank\tvalue\tCost per 1000 good packs, EUR\t");
      Screen.press("tradeoff:charts.copy-picture");
      Image picture =
          (Image) Toolkit.getDefaultToolkit().getSystemClipboard().getData(DataFlavor.imageFlavor);
      assertThat(picture.getWidth(null)).isEqualTo(2 * Screen.on(chart()::getWidth));
      JButton save = Screen.get("tradeoff:charts.save", JButton.class);
      SwingUtilities.invokeLater(() -> save.doClick(0));
      JFileChooser chooser = Screen.get("picture-file", JFileChooser.class);
      Path svg = folder.resolve("plot.svg");
      Screen.on(
          () -> {
            chooser.setSelectedFile(svg.toFile());
            chooser.approveSelection();
            return null;
          });
      Screen.await("it is written", () -> Files.exists(svg));
      Screen.await(
          "it is whole",
          () -> {
            try {
              return Files.readString(svg).contains("</svg");
            } catch (IOException e) {
              return false;
            }
          });
    }
  }

  private static JTable turned() {
    Screen.press("tradeoff:charts.as-table");
    return Screen.get("tradeoff-table", JTable.class);
  }
}
