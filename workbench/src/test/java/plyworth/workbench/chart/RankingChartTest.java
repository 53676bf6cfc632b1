package plyworth.workbench.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.entity.CategoryItemEntity;
import org.jfree.chart.entity.CategoryLabelEntity;
import org.jfree.chart.ui.Layer;
import org.jfree.data.category.CategoryDataset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The ranking chart: what it holds, what it says, and the files it becomes. */
class RankingChartTest {

  private static final RankingBars BARS =
      new RankingBars(
          "Mint",
          "The best 2 of 7 ranked",
          List.of("Cost", "Shelf life"),
          List.of(
              bar("today, blocked", RankingBars.Standing.BASELINE_OUT, 0.1, 0.2, 0.3),
              bar("1", RankingBars.Standing.RANKED, 0.3, 0.4, 0.7),
              bar("2", RankingBars.Standing.RANKED, 0.25, 0.3, 0.8)),
          new ChartWords(Locale.ENGLISH));

  private static RankingBars.Bar bar(
      String name, RankingBars.Standing standing, double cost, double life, double upTo) {
    List<RankingBars.Ply> plies =
        List.of(
            new RankingBars.Ply("kraft-paper 50", "kraft-paper 50 g/m2", "paper", 62, false),
            new RankingBars.Ply("ldpe 25", "ldpe 25 um <inside>", "polyethylene", 25, true));
    return new RankingBars.Bar(name, plies, List.of(cost, life), upTo, standing);
  }

  private static CategoryDataset data(JFreeChart chart) {
    return chart.getCategoryPlot().getDataset();
  }

  @Test
  void everyBarIsBuiltFromTheContributionsOfItsCriteria() {
    CategoryDataset data = data(RankingChart.of(BARS, ChartTheme.PAPER));
    assertThat(data.getColumnKeys().toString()).isEqualTo("[today, blocked, 1, 2]");
    assertThat(data.getValue("Cost", "1").doubleValue()).isEqualTo(0.3);
    assertThat(data.getValue("Shelf life", "2").doubleValue()).isEqualTo(0.3);
  }

  @Test
  void whatIsUnknownIsAPartOfItsOwnAndOnlyWhereSomethingIs() {
    CategoryDataset data = data(RankingChart.of(BARS, ChartTheme.PAPER));
    assertThat(data.getValue(BARS.words().of("unknown"), "2").doubleValue())
        .isCloseTo(0.25, within(1e-12));
    assertThat(data.getValue(BARS.words().of("unknown"), "1")).isNull();
  }

  @Test
  void theValueOfTodayIsMarkedOnlyWhenTodayIsRanked() {
    RankingBars ranked =
        new RankingBars(
            "Mint",
            "",
            BARS.criteria(),
            List.of(bar("today", RankingBars.Standing.BASELINE, 0.1, 0.2, 0.3)),
            BARS.words());
    assertThat(marks(BARS)).isZero();
    assertThat(marks(ranked)).isEqualTo(1);
  }

  private static int marks(RankingBars bars) {
    Collection<?> marks =
        RankingChart.of(bars, ChartTheme.PAPER).getCategoryPlot().getRangeMarkers(Layer.FOREGROUND);
    return marks == null ? 0 : marks.size();
  }

  private static Stream<?> entities(JFreeChart chart) {
    ChartRenderingInfo info = new ChartRenderingInfo();
    draw(chart, info);
    return info.getEntityCollection().getEntities().stream();
  }

  private static BufferedImage draw(JFreeChart chart, ChartRenderingInfo info) {
    BufferedImage image = new BufferedImage(900, 500, BufferedImage.TYPE_INT_RGB);
    chart.draw(image.createGraphics(), new Rectangle2D.Double(0, 0, 900, 500), info);
    return image;
  }

  @Test
  void aPartSaysItsCriterionItsShareAndTheStructureLayerByLayer() {
    List<String> tips =
        entities(RankingChart.of(BARS, ChartTheme.PAPER))
            .filter(CategoryItemEntity.class::isInstance)
            .map(entity -> ((CategoryItemEntity) entity).getToolTipText())
            .toList();
    assertThat(tips)
        .anySatisfy(
            tip ->
                assertThat(tip)
                    .contains(
                        "<b>Cost</b>: 0.300 of 0.700",
                        "<br>kraft-paper 50 g/m2",
                        "&lt;inside&gt;"));
  }

  @Test
  void theNameOfABarCanBePointedAtLikeTheBar() {
    assertThat(
            entities(RankingChart.of(BARS, ChartTheme.PAPER))
                .filter(CategoryLabelEntity.class::isInstance)
                .map(entity -> ((CategoryLabelEntity) entity).getKey().toString()))
        .containsExactly("today, blocked", "1", "2");
  }

  @Test
  void theSelectedBarIsMarkedOverItsWholeWidth() {
    BufferedImage plain = draw(RankingChart.of(BARS, ChartTheme.PAPER), null);
    BufferedImage marked = draw(RankingChart.of(BARS, ChartTheme.PAPER, Optional.of("1")), null);
    int selection = ChartTheme.PAPER.selection().getRGB();
    assertThat(count(plain, selection)).isZero();
    assertThat(count(marked, selection)).isGreaterThan(20_000);
  }

  private static int count(BufferedImage image, int rgb) {
    int count = 0;
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        count += image.getRGB(x, y) == rgb ? 1 : 0;
      }
    }
    return count;
  }

  @Test
  void aPngHasTwicePixelsEachWay() throws IOException {
    byte[] png = ChartFile.png(RankingChart.of(BARS, ChartTheme.PAPER), 640, 360);
    BufferedImage image = ImageIO.read(new ByteArrayInputStream(png));
    assertThat(image.getWidth()).isEqualTo(1280);
    assertThat(image.getHeight()).isEqualTo(720);
    assertThat(new Color(image.getRGB(2, 2))).isEqualTo(Color.WHITE);
  }

  @Test
  void anSvgIsWellFormedNamesNoOutsideTypeAndKeepsItsTextAsText() throws Exception {
    byte[] svg = ChartFile.svg(RankingChart.of(BARS, ChartTheme.PAPER), 640, 360);
    assertThat(new String(svg, StandardCharsets.UTF_8))
        .doesNotContain("DOCTYPE")
        .contains("kraft-");
    assertThat(
            DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new ByteArrayInputStream(svg))
                .getDocumentElement()
                .getNodeName())
        .isEqualTo("svg");
  }

  @Test
  void aNameThatEndsInNeitherIsRefused(@TempDir Path folder) {
    Path file = folder.resolve("chart.jpg");
    assertThatThrownBy(
            () -> ChartFile.write(RankingChart.of(BARS, ChartTheme.PAPER), 640, 360, file))
        .hasMessageContaining("chart.jpg");
    assertThat(file).doesNotExist();
  }

  @Test
  void aContributionThatIsNoLengthIsRefused() {
    assertThatThrownBy(() -> bar("1", RankingBars.Standing.RANKED, -0.1, 0.2, 0.3))
        .hasMessageContaining("-0.1");
    assertThatThrownBy(() -> bar("1", RankingBars.Standing.RANKED, Double.NaN, 0.2, 0.3))
        .hasMessageContaining("NaN");
  }
}
