package plyworth.workbench.chart;

import java.awt.BasicStroke;
import java.util.Optional;
import java.util.function.Function;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.category.BarRenderer;
import org.jfree.chart.renderer.category.StandardBarPainter;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.data.category.DefaultCategoryDataset;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import plyworth.shared.scoring.Explanation;
import plyworth.shared.scoring.Text;
import plyworth.workbench.host.Digits;
import plyworth.workbench.host.UnitText;

/** Renders the bars and curves of an explanation. */
public final class ExplanationChart {

  private static final float[][] DASHES = {{1f, 0f}, {7f, 4f}, {2f, 3f}, {9f, 3f, 2f, 3f}};

  private ExplanationChart() {}

  /** Bars; unknown lengths are left out. */
  public static JFreeChart bars(Explanation.Bars bars, ChartTheme theme) {
    DefaultCategoryDataset data = new DefaultCategoryDataset();
    for (int i = 0; i < bars.labels().size(); i++) {
      double length = bars.lengths().get(i);
      data.addValue(Double.isNaN(length) ? null : length, "", i + 1 + "  " + bars.labels().get(i));
    }
    BarRenderer renderer = new BarRenderer();
    renderer.setBarPainter(new StandardBarPainter());
    renderer.setShadowVisible(false);
    renderer.setSeriesPaint(0, theme.legible(PartPaint.hue(2)));
    renderer.setDefaultToolTipGenerator((shown, row, column) -> reading(bars, column).orElse(null));
    CategoryAxis names = new CategoryAxis();
    names.setTickLabelFont(theme.font());
    names.setTickLabelPaint(theme.text());
    names.setMaximumCategoryLabelWidthRatio(0.45f);
    names.setMaximumCategoryLabelLines(2);
    names.setAxisLinePaint(theme.grid());
    names.setTickMarksVisible(false);
    CategoryPlot plot = new CategoryPlot(data, names, axis(bars.unit(), theme), renderer);
    plot.setOrientation(PlotOrientation.HORIZONTAL);
    plot.setRangeAxisLocation(AxisLocation.BOTTOM_OR_LEFT);
    plot.setBackgroundPaint(theme.background());
    plot.setRangeGridlinePaint(theme.grid());
    plot.setOutlineVisible(false);
    return framed(new JFreeChart(null, theme.font(), plot, false), theme);
  }

  /**
   * Curves, told apart by dash as well as by hue.
   *
   * @param said makes a sentence of a text
   */
  public static JFreeChart curves(
      Explanation.Curves curves, Function<Text, String> said, ChartTheme theme) {
    XYSeriesCollection data = new XYSeriesCollection();
    XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, false);
    for (int s = 0; s < curves.series().size(); s++) {
      Explanation.Series series = curves.series().get(s);
      XYSeries points = new XYSeries(s + 1 + "  " + said.apply(series.name()), false, true);
      for (int i = 0; i < series.x().size(); i++) {
        points.add(series.x().get(i), series.y().get(i));
      }
      data.addSeries(points);
      renderer.setSeriesPaint(s, theme.legible(PartPaint.hue(s + 1)));
      renderer.setSeriesStroke(
          s,
          new BasicStroke(
              2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1f, DASHES[s % DASHES.length], 0));
    }
    renderer.setDefaultToolTipGenerator(
        (shown, series, place) -> reading(curves, said, series, place));
    XYPlot plot =
        new XYPlot(
            data,
            axis(said.apply(curves.x()), theme),
            axis(said.apply(curves.y()), theme),
            renderer);
    plot.setBackgroundPaint(theme.background());
    plot.setDomainGridlinePaint(theme.grid());
    plot.setRangeGridlinePaint(theme.grid());
    plot.setOutlineVisible(false);
    JFreeChart chart = new JFreeChart(null, theme.font(), plot, true);
    chart.getLegend().setItemFont(theme.font());
    chart.getLegend().setItemPaint(theme.text());
    chart.getLegend().setBackgroundPaint(theme.background());
    return framed(chart, theme);
  }

  /** What a bar says; empty where it is unknown. */
  public static Optional<String> reading(Explanation.Bars bars, int place) {
    double length = bars.lengths().get(place);
    return Double.isNaN(length)
        ? Optional.empty()
        : Optional.of(
            bars.labels().get(place)
                + ": "
                + Digits.sensible(length)
                + (bars.unit().isEmpty() ? "" : " " + UnitText.of(bars.unit())));
  }

  /** What a point of a curve says, with the titles of the axes, which name the units. */
  public static String reading(
      Explanation.Curves curves, Function<Text, String> said, int series, int place) {
    Explanation.Series read = curves.series().get(series);
    return said.apply(read.name())
        + ": "
        + said.apply(curves.x())
        + " "
        + Digits.sensible(read.x().get(place))
        + ", "
        + said.apply(curves.y())
        + " "
        + Digits.sensible(read.y().get(place));
  }

  private static NumberAxis axis(String label, ChartTheme theme) {
    NumberAxis axis = new NumberAxis(label);
    axis.setAutoRangeIncludesZero(false);
    return ChartDress.axis(axis, theme);
  }

  private static JFreeChart framed(JFreeChart chart, ChartTheme theme) {
    chart.setBackgroundPaint(theme.background());
    return chart;
  }
}
