package plyworth.workbench.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The strips that say how far each weight may move. */
class StabilityDrawingTest {

  private static final int WIDTH = 636;

  private static StabilityStrips.Row row(double weight, double from, double to) {
    return new StabilityStrips.Row("Cost", "now 40 %", weight, from, to, "rank 3", "rank 7");
  }

  private static final StabilityDrawing DRAWING =
      new StabilityDrawing(
          new StabilityStrips(List.of(row(0.4, 0.2, 0.6), row(1, Double.NaN, 1))),
          ChartTheme.PAPER,
          -1);

  private static BufferedImage picture() {
    BufferedImage image =
        new BufferedImage(WIDTH, (int) Math.ceil(DRAWING.height()), BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    DRAWING.draw(g, new Rectangle2D.Double(0, 0, WIDTH, image.getHeight()));
    g.dispose();
    return image;
  }

  /** The scale runs from 10 to 610, so 30 % lies at 190 and 80 % at 490. */
  @Test
  void theStripIsBroadWithinTheIntervalAndThinOutside() {
    BufferedImage picture = picture();
    int broad = coloured(picture, 190);
    assertThat(broad).isBetween(9, 11);
    assertThat(coloured(picture, 490)).isZero();
  }

  /** Pixels of the hue of the strip in a column of the first row. */
  private static int coloured(BufferedImage picture, int x) {
    int hue = ChartTheme.PAPER.legible(PartPaint.hue(2)).getRGB();
    int count = 0;
    int bottom = (int) (DRAWING.top(0) + DRAWING.rowHeight());
    for (int y = (int) DRAWING.top(0); y < bottom; y++) {
      count += picture.getRGB(x, y) == hue ? 1 : 0;
    }
    return count;
  }

  @Test
  void aHeightLiesInItsRowAndBelowTheLastInNone() {
    assertThat(DRAWING.row(DRAWING.top(1) + 1)).isEqualTo(1);
    assertThat(DRAWING.row(DRAWING.height() + 1)).isNegative();
    assertThat(DRAWING.row(0)).isNegative();
  }

  @Test
  void whoLeadsBeyondStandsInTheSvgAsText() {
    byte[] svg = ChartFile.svg(DRAWING, WIDTH, (int) DRAWING.height());
    assertThat(new String(svg, StandardCharsets.UTF_8)).contains("rank 3", "rank 7", "Cost");
  }

  @Test
  void aShareOutsideItsIntervalIsRefused() {
    assertThatThrownBy(() -> row(0.7, 0.2, 0.6))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("Cost");
  }

  @Test
  void theGroundIsThatOfTheTheme() {
    assertThat(new Color(picture().getRGB(WIDTH - 2, 2))).isEqualTo(ChartTheme.PAPER.background());
  }
}
