package plyworth.workbench.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Paint;
import java.util.Locale;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.block.BlockBorder;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.renderer.category.StackedBarRenderer;
import org.jfree.chart.renderer.category.StandardBarPainter;
import org.jfree.chart.title.LegendTitle;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.category.DefaultCategoryDataset;

/** Renders {@link RankingBars}. */
public final class RankingChart {

  private RankingChart() {}

  /** The chart in a theme. */
  public static JFreeChart of(RankingBars bars, ChartTheme theme) {
    CategoryPlot plot =
        new CategoryPlot(dataset(bars), labels(bars, theme), values(theme), renderer(bars, theme));
    plot.setOrientation(PlotOrientation.HORIZONTAL);
    plot.setRangeAxisLocation(AxisLocation.BOTTOM_OR_LEFT);
    plot.setBackgroundPaint(theme.background());
    plot.setRangeGridlinePaint(theme.grid());
    plot.setRangeGridlineStroke(new BasicStroke(0.6f));
    plot.setOutlineVisible(false);
    plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
    JFreeChart chart = new JFreeChart(bars.title(), bold(theme), plot, false);
    chart.setBackgroundPaint(theme.background());
    chart.getTitle().setPaint(theme.text());
    chart.setPadding(new RectangleInsets(8, 8, 8, 16));
    chart.addLegend(legend(plot, theme));
    return chart;
  }

  private static DefaultCategoryDataset dataset(RankingBars bars) {
    DefaultCategoryDataset data = new DefaultCategoryDataset();
    for (RankingBars.Bar bar : bars.bars()) {
      for (int c = 0; c < bars.criteria().size(); c++) {
        data.addValue(bar.contributions().get(c), bars.criteria().get(c), bar.label());
      }
      double open = bar.upTo() - bar.value();
      if (open > 1e-9) {
        data.addValue(open, Unknown.NAME, bar.label());
      }
    }
    return data;
  }

  private static CategoryAxis labels(RankingBars bars, ChartTheme theme) {
    CategoryAxis axis = new CategoryAxis();
    axis.setTickLabelFont(theme.font());
    axis.setTickLabelPaint(theme.text());
    axis.setMaximumCategoryLabelWidthRatio(0.55f);
    axis.setAxisLinePaint(theme.grid());
    axis.setTickMarksVisible(false);
    axis.setLowerMargin(0.01);
    axis.setUpperMargin(0.01);
    axis.setCategoryMargin(0.25);
    for (RankingBars.Bar bar : bars.bars()) {
      axis.addCategoryLabelToolTip(bar.label(), bar.tooltip());
      if (bar.standing() != RankingBars.Standing.RANKED) {
        axis.setTickLabelFont(bar.label(), bold(theme).deriveFont((float) theme.font().getSize()));
      }
    }
    return axis;
  }

  private static NumberAxis values(ChartTheme theme) {
    NumberAxis axis = new NumberAxis("value, 0 to 1");
    axis.setRange(0, 1);
    axis.setTickLabelFont(theme.font());
    axis.setLabelFont(theme.font());
    axis.setTickLabelPaint(theme.text());
    axis.setLabelPaint(theme.text());
    axis.setAxisLinePaint(theme.grid());
    return axis;
  }

  private static StackedBarRenderer renderer(RankingBars bars, ChartTheme theme) {
    StackedBarRenderer renderer = new StackedBarRenderer();
    renderer.setBarPainter(new StandardBarPainter());
    renderer.setShadowVisible(false);
    renderer.setDrawBarOutline(true);
    renderer.setMaximumBarWidth(0.08);
    for (int c = 0; c < bars.criteria().size(); c++) {
      renderer.setSeriesPaint(c, PartPaint.of(c));
      renderer.setSeriesOutlinePaint(c, theme.background());
    }
    renderer.setSeriesPaint(bars.criteria().size(), Unknown.paint(theme));
    renderer.setSeriesOutlinePaint(bars.criteria().size(), theme.text());
    renderer.setDefaultToolTipGenerator(
        (data, row, column) -> tooltip(bars.bars().get(column), data, row, column));
    return renderer;
  }

  private static String tooltip(
      RankingBars.Bar bar, org.jfree.data.category.CategoryDataset data, int row, int column) {
    return String.format(
        Locale.ROOT,
        "%s: %.3f of %.3f, %s",
        data.getRowKey(row),
        data.getValue(row, column).doubleValue(),
        bar.value(),
        bar.tooltip());
  }

  private static LegendTitle legend(CategoryPlot plot, ChartTheme theme) {
    LegendTitle legend = new LegendTitle(plot);
    legend.setPosition(RectangleEdge.BOTTOM);
    legend.setItemFont(theme.font());
    legend.setItemPaint(theme.text());
    legend.setBackgroundPaint(theme.background());
    legend.setFrame(BlockBorder.NONE);
    return legend;
  }

  private static Font bold(ChartTheme theme) {
    return theme.font().deriveFont(Font.BOLD, theme.font().getSize() + 2f);
  }

  /** The part of a bar that is not known yet. */
  private static final class Unknown {
    static final String NAME = "unknown: up to";

    static Paint paint(ChartTheme theme) {
      Color text = theme.text();
      return new Color(text.getRed(), text.getGreen(), text.getBlue(), 28);
    }
  }
}
