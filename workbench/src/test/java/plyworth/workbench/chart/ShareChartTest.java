package plyworth.workbench.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.OptionalInt;
import org.jfree.chart.JFreeChart;
import org.jfree.data.category.CategoryDataset;
import org.junit.jupiter.api.Test;

/** Shares as bars. */
class ShareChartTest {

  private static ShareBars.Bar bar(String name, double error, Double... shares) {
    return new ShareBars.Bar(name, name, List.of(shares), error, "60 % ± 3 %");
  }

  private static ShareBars bars(double error) {
    return new ShareBars(
        "share of draws",
        List.of("first", "lower", "not ranked"),
        List.of(bar("rank 1", error, 0.6, 0.4, 0.0), bar("rank 2", Double.NaN, 0.2, 0.5, 0.3)));
  }

  private static JFreeChart chart(double error) {
    return ShareChart.of(bars(error), ChartTheme.PAPER, OptionalInt.of(0));
  }

  @Test
  void everyBarIsBuiltFromItsParts() {
    CategoryDataset data = chart(0.03).getCategoryPlot().getDataset();
    assertThat(data.getValue("first", "rank 1").doubleValue()).isEqualTo(0.6);
    assertThat(data.getValue("not ranked", "rank 2").doubleValue()).isEqualTo(0.3);
  }

  @Test
  void partsThatExceedTheWholeAreRefused() {
    assertThatThrownBy(() -> bar("rank 1", 0, 0.6, 0.5))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("rank 1");
  }

  private static BufferedImage picture(JFreeChart chart) {
    BufferedImage image = new BufferedImage(600, 200, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    chart.draw(g, new Rectangle2D.Double(0, 0, 600, 200));
    g.dispose();
    return image;
  }

  @Test
  void aStandardErrorIsDrawnAndAnUnknownOneIsNot() {
    BufferedImage without = picture(chart(Double.NaN));
    BufferedImage with = picture(chart(0.03));
    long differing = 0;
    for (int x = 0; x < with.getWidth(); x++) {
      for (int y = 0; y < with.getHeight(); y++) {
        differing += with.getRGB(x, y) == without.getRGB(x, y) ? 0 : 1;
      }
    }
    assertThat(differing).isBetween(30L, 400L);
  }

  @Test
  void figuresAndPartsStandInTheSvgAsText() {
    byte[] svg = ChartFile.svg(chart(0.03), 600, 200);
    assertThat(new String(svg, StandardCharsets.UTF_8)).contains("60 % ± 3 %", "not ranked");
  }
}
