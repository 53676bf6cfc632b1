package plyworth.workbench.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.Color;
import java.awt.Font;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.axis.SymbolAxis;
import org.jfree.chart.entity.XYItemEntity;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.xy.XYDataset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The trade-off plot: what is drawn where, and by which marks. */
class TradeOffChartTest {

  private static final ChartTheme DARK =
      new ChartTheme(
          new Color(0x26, 0x24, 0x21),
          new Color(0xE6, 0xE1, 0xD8),
          new Color(0x4D, 0x4A, 0x46),
          new Color(0x36, 0x4C, 0x43),
          new Font(Font.SANS_SERIF, Font.PLAIN, 12));

  private static final TradeOff.Axis COST =
      new TradeOff.Axis("Cost, EUR", List.of(), TradeOff.Better.LESS);
  private static final TradeOff.Axis MARGIN =
      new TradeOff.Axis("Margin", List.of(), TradeOff.Better.MORE);

  private static TradeOff.Point point(String name, double x, double y, int mark, boolean front) {
    return new TradeOff.Point(name, "<html>" + name, x, y, mark, front);
  }

  private static TradeOff plot(TradeOff.Axis x, TradeOff.Axis y, List<TradeOff.Point> points) {
    return new TradeOff(
        x,
        y,
        List.of("under 2", "2 or more"),
        "Class",
        points,
        Optional.of(point("today", 14, 1.2, 0, false)),
        new TradeOff.Words("on the front", "beaten", "unknown"));
  }

  private static final TradeOff PLOT =
      plot(
          COST,
          MARGIN,
          List.of(
              point("1", 10, 1.0, 0, true),
              point("2", 12, 1.6, 1, true),
              point("3", 13, 1.1, 1, false),
              point("4", 16, 2.1, FigureClasses.UNKNOWN, true)));

  private static XYPlot drawn(TradeOff plot) {
    return TradeOffChart.of(plot, ChartTheme.PAPER, OptionalInt.empty()).getXYPlot();
  }

  @Test
  void aMarkIsFullOnTheFrontAndHollowOffIt() {
    XYPlot plot = drawn(PLOT);
    PointData data = (PointData) plot.getDataset(0);
    XYLineAndShapeRenderer renderer = (XYLineAndShapeRenderer) plot.getRenderer(0);
    for (int s = 0; s < data.getSeriesCount(); s++) {
      for (int i = 0; i < data.getItemCount(s); i++) {
        assertThat(renderer.getItemShapeFilled(s, i)).isEqualTo(data.point(s, i).front());
      }
    }
  }

  /** The edge of what the front rules out: across at the level of 1 to 2, then up to 2. */
  @Test
  void theFrontIsAFlightOfStepsThroughItsMembersAlone() {
    XYDataset steps = drawn(PLOT).getDataset(3);
    assertThat(IntStream.range(0, steps.getItemCount(0)).mapToObj(i -> steps.getXValue(0, i)))
        .containsExactly(10.0, 12.0, 16.0);
  }

  @Test
  void whereTheBestLiesWithinABandThereAreNoSteps() {
    TradeOff.Axis band = new TradeOff.Axis("Stiffness", List.of(), TradeOff.Better.BETWEEN);
    assertThat(drawn(plot(band, MARGIN, PLOT.points())).getDataset(3)).isNull();
  }

  @Test
  void anAxisOfClassesIsNamedByThemAndOneOverDecadesCountsInRatios() {
    TradeOff.Axis grades =
        new TradeOff.Axis("Recyclability", List.of("A", "B", "C"), TradeOff.Better.LESS);
    XYPlot plot =
        drawn(
            plot(
                grades,
                MARGIN,
                List.of(point("1", 0, 0.01, 0, true), point("2", 2, 30, 0, false))));
    assertThat(plot.getDomainAxis()).isInstanceOf(SymbolAxis.class);
    assertThat(plot.getRangeAxis()).isInstanceOf(LogAxis.class);
  }

  @Test
  void everyMarkCanBeHitAndSaysWhichCandidateItIs() {
    JFreeChart chart = TradeOffChart.of(PLOT, ChartTheme.PAPER, OptionalInt.of(2));
    ChartRenderingInfo info = new ChartRenderingInfo();
    BufferedImage image = new BufferedImage(600, 400, BufferedImage.TYPE_INT_RGB);
    chart.draw(image.createGraphics(), new Rectangle2D.Double(0, 0, 600, 400), info);
    List<Integer> hit =
        IntStream.range(0, info.getEntityCollection().getEntityCount())
            .mapToObj(i -> info.getEntityCollection().getEntity(i))
            .filter(XYItemEntity.class::isInstance)
            .map(XYItemEntity.class::cast)
            .map(TradeOffChart::place)
            .flatMapToInt(OptionalInt::stream)
            .distinct()
            .sorted()
            .boxed()
            .toList();
    assertThat(hit).containsExactly(0, 1, 2, 3);
  }

  @Test
  void aPointWithoutAPlaceIsRefused() {
    assertThatThrownBy(() -> point("5", Double.NaN, 1, 0, false))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("5 has no place");
  }

  /** WCAG 2.1, success criterion 1.4.11: 3 to 1 for what must be seen to be understood. */
  @ParameterizedTest
  @ValueSource(booleans = {true, false})
  void everyMarkStandsOutFromTheGroundAndNoTwoShareTheirShape(boolean dark) {
    ChartTheme theme = dark ? DARK : ChartTheme.PAPER;
    for (int mark = FigureClasses.UNKNOWN; mark < ClassMark.most(); mark++) {
      assertThat(ChartTheme.contrast(ClassMark.colour(mark, theme), theme.background()))
          .as("mark " + mark)
          .isGreaterThanOrEqualTo(3);
      for (int other = FigureClasses.UNKNOWN; other < mark; other++) {
        assertThat(ClassMark.shape(mark)).isNotEqualTo(ClassMark.shape(other));
      }
    }
  }

  /** White against black is 21 to 1; #777777 against white 4.48 to 1 (WCAG 2.1). */
  @Test
  void contrastIsThatOfTheGuidelines() {
    assertThat(ChartTheme.contrast(Color.WHITE, Color.BLACK)).isEqualTo(21);
    assertThat(ChartTheme.contrast(new Color(0x777777), Color.WHITE)).isBetween(4.475, 4.485);
  }

  @Test
  void thePlotIsWrittenAsAnSvgWithItsWords() {
    byte[] svg =
        ChartFile.svg(TradeOffChart.of(PLOT, ChartTheme.PAPER, OptionalInt.of(0)), 600, 400);
    assertThat(new String(svg, StandardCharsets.UTF_8)).contains("Cost, EUR", "today", "beaten");
  }
}
