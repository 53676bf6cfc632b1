package plyworth.workbench.chart;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.OptionalInt;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.CategoryTextAnnotation;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.axis.CategoryAnchor;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.CategoryMarker;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.renderer.category.CategoryItemRendererState;
import org.jfree.chart.renderer.category.StackedBarRenderer;
import org.jfree.chart.renderer.category.StandardBarPainter;
import org.jfree.chart.ui.Layer;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.category.CategoryDataset;
import org.jfree.data.category.DefaultCategoryDataset;

/** Renders {@link ShareBars}, with the standard error of the first part as a whisker. */
public final class ShareChart {

  private static final double ROOM_FOR_FIGURES = 1.8;
  private static final BasicStroke FINE = new BasicStroke(0.6f);
  private static final BasicStroke WHISKER = new BasicStroke(1.6f);

  private ShareChart() {}

  /**
   * The chart in a theme.
   *
   * @param selected place of the bar that is marked
   */
  public static JFreeChart of(ShareBars bars, ChartTheme theme, OptionalInt selected) {
    CategoryPlot plot =
        new CategoryPlot(dataset(bars), names(theme), shares(bars, theme), renderer(bars, theme));
    plot.setOrientation(PlotOrientation.HORIZONTAL);
    plot.setRangeAxisLocation(AxisLocation.BOTTOM_OR_LEFT);
    plot.setBackgroundPaint(theme.background());
    plot.setRangeGridlinePaint(theme.grid());
    plot.setRangeGridlineStroke(FINE);
    plot.setOutlineVisible(false);
    plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
    selected.ifPresent(
        place -> {
          CategoryMarker marker =
              new CategoryMarker(bars.bars().get(place).name(), theme.selection(), FINE);
          marker.setAlpha(1);
          plot.addDomainMarker(marker, Layer.BACKGROUND);
        });
    figures(plot, bars, theme);
    JFreeChart chart = new JFreeChart(null, theme.font(), plot, false);
    chart.setBackgroundPaint(theme.background());
    chart.setPadding(new RectangleInsets(4, 8, 4, 8));
    chart.addLegend(ChartDress.legend(plot, new RectangleInsets(2, 6, 2, 4), theme));
    return chart;
  }

  private static DefaultCategoryDataset dataset(ShareBars bars) {
    DefaultCategoryDataset data = new DefaultCategoryDataset();
    for (ShareBars.Bar bar : bars.bars()) {
      for (int p = 0; p < bars.parts().size(); p++) {
        data.addValue(bar.shares().get(p), bars.parts().get(p), bar.name());
      }
    }
    return data;
  }

  private static CategoryAxis names(ChartTheme theme) {
    CategoryAxis names = new CategoryAxis();
    names.setTickLabelFont(theme.font().deriveFont(theme.font().getSize2D() - 1));
    names.setTickLabelPaint(theme.text());
    names.setMaximumCategoryLabelWidthRatio(0.46f);
    names.setMaximumCategoryLabelLines(3);
    names.setAxisLinePaint(theme.grid());
    names.setTickMarksVisible(false);
    names.setLowerMargin(0.01);
    names.setUpperMargin(0.01);
    names.setCategoryMargin(0.4);
    return names;
  }

  private static NumberAxis shares(ShareBars bars, ChartTheme theme) {
    NumberAxis axis = new NumberAxis(bars.axis());
    axis.setRange(0, ROOM_FOR_FIGURES);
    axis.setTickUnit(new PercentTicks());
    return ChartDress.axis(axis, theme);
  }

  private static StackedBarRenderer renderer(ShareBars bars, ChartTheme theme) {
    StackedBarRenderer renderer = new WhiskerRenderer(bars, theme);
    renderer.setBarPainter(new StandardBarPainter());
    renderer.setShadowVisible(false);
    renderer.setDrawBarOutline(true);
    renderer.setMaximumBarWidth(0.14);
    renderer.setDefaultLegendShape(RankingChart.swatch());
    for (int p = 0; p < bars.parts().size(); p++) {
      renderer.setSeriesPaint(p, PartPaint.of(p));
      renderer.setSeriesOutlinePaint(p, theme.background());
    }
    renderer.setDefaultToolTipGenerator((data, row, column) -> bars.bars().get(column).tip());
    return renderer;
  }

  private static void figures(CategoryPlot plot, ShareBars bars, ChartTheme theme) {
    for (ShareBars.Bar bar : bars.bars()) {
      double end = bar.shares().stream().mapToDouble(Double::doubleValue).sum();
      CategoryTextAnnotation figure =
          new CategoryTextAnnotation("  " + bar.figure(), bar.name(), end);
      figure.setCategoryAnchor(CategoryAnchor.MIDDLE);
      figure.setTextAnchor(TextAnchor.CENTER_LEFT);
      figure.setFont(theme.font());
      figure.setPaint(theme.text());
      plot.addAnnotation(figure);
    }
  }

  /** Quarters up to 100 %, and none in the room for the figures. */
  private static final class PercentTicks extends NumberTickUnit {

    private static final long serialVersionUID = 1L;

    PercentTicks() {
      super(0.25);
    }

    @Override
    public String valueToString(double share) {
      return share > 1 ? "" : Math.round(100 * share) + " %";
    }
  }

  /** Draws the whisker over the whole bar, once its last part is there. */
  private static final class WhiskerRenderer extends StackedBarRenderer {

    private static final long serialVersionUID = 1L;

    private final transient ShareBars bars;
    private final transient ChartTheme theme;

    WhiskerRenderer(ShareBars bars, ChartTheme theme) {
      this.bars = bars;
      this.theme = theme;
    }

    @Override
    public void drawItem(
        Graphics2D g,
        CategoryItemRendererState state,
        Rectangle2D area,
        CategoryPlot plot,
        CategoryAxis names,
        ValueAxis values,
        CategoryDataset data,
        int row,
        int column,
        int pass) {
      super.drawItem(g, state, area, plot, names, values, data, row, column, pass);
      double error = bars.bars().get(column).error();
      if (row == bars.parts().size() - 1 && error > 0) {
        RectangleEdge edge = plot.getDomainAxisEdge();
        double middle = names.getCategoryMiddle(column, data.getColumnCount(), area, edge);
        double share = bars.bars().get(column).shares().get(0);
        double from =
            values.valueToJava2D(Math.max(0, share - error), area, plot.getRangeAxisEdge());
        double to = values.valueToJava2D(Math.min(1, share + error), area, plot.getRangeAxisEdge());
        g.setStroke(new BasicStroke(3.6f));
        g.setPaint(theme.background());
        g.draw(new Line2D.Double(from, middle, to, middle));
        g.setStroke(WHISKER);
        g.setPaint(theme.text());
        g.draw(new Line2D.Double(from, middle, to, middle));
        g.draw(new Line2D.Double(from, middle - 4, from, middle + 4));
        g.draw(new Line2D.Double(to, middle - 4, to, middle + 4));
      }
    }
  }
}
