package plyworth.workbench.chart;

import java.awt.BasicStroke;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.Locale;
import java.util.Optional;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.CategoryTextAnnotation;
import org.jfree.chart.axis.AxisLocation;
import org.jfree.chart.axis.CategoryAnchor;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.PlotOrientation;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.title.LegendTitle;
import org.jfree.chart.title.TextTitle;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.category.DefaultCategoryDataset;

/** Renders {@link RankingBars}. */
public final class RankingChart {

  private static final double ROOM_FOR_FIGURES = 1.16;
  private static final int PADDING = 8;

  /** Lines for title, note, legend and axis; a note or legend that breaks takes more. */
  private static final int FRAME_LINES = 12;

  private static final BasicStroke FINE = new BasicStroke(0.6f);
  private static final BasicStroke DASHED =
      new BasicStroke(1.2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 1, new float[] {5, 3}, 0);

  private RankingChart() {}

  /** The chart in a theme. */
  public static JFreeChart of(RankingBars bars, ChartTheme theme) {
    return of(bars, theme, Optional.empty());
  }

  /**
   * The chart in a theme.
   *
   * @param selected name of the bar that is marked
   */
  public static JFreeChart of(RankingBars bars, ChartTheme theme, Optional<String> selected) {
    CategoryPlot plot =
        new CategoryPlot(
            dataset(bars),
            new StructureAxis(bars, theme, selected),
            values(bars, theme),
            new PartRenderer(bars, theme));
    plot.setOrientation(PlotOrientation.HORIZONTAL);
    plot.setRangeAxisLocation(AxisLocation.BOTTOM_OR_LEFT);
    plot.setBackgroundPaint(theme.background());
    plot.setRangeGridlinePaint(theme.grid());
    plot.setRangeGridlineStroke(FINE);
    plot.setOutlineVisible(false);
    plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
    markToday(plot, bars, theme);
    writeValues(plot, bars, theme);
    JFreeChart chart = new JFreeChart(bars.title(), theme.bold(2), plot, false);
    chart.setBackgroundPaint(theme.background());
    chart.getTitle().setPaint(theme.text());
    chart.setPadding(new RectangleInsets(PADDING, PADDING, PADDING, PADDING));
    chart.addSubtitle(note(bars, theme));
    LegendTitle legend = ChartDress.legend(plot, new RectangleInsets(2, 6, 2, 4), theme);
    legend.setPosition(RectangleEdge.TOP);
    chart.addLegend(legend);
    return chart;
  }

  /** Height in pixels at which every structure of a chart of a width is shown whole. */
  public static int height(RankingBars bars, ChartTheme theme, int width) {
    Graphics2D g = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics();
    try {
      FontMetrics metrics = g.getFontMetrics(StructureAxis.font(theme));
      double axis = StructureAxis.SHARE * (width - 2 * PADDING);
      double row = StructureAxis.rowHeight(bars, theme, metrics, axis);
      return (int) Math.ceil(row * bars.bars().size() + FRAME_LINES * metrics.getHeight());
    } finally {
      g.dispose();
    }
  }

  private static DefaultCategoryDataset dataset(RankingBars bars) {
    DefaultCategoryDataset data = new DefaultCategoryDataset();
    for (RankingBars.Bar bar : bars.bars()) {
      for (int c = 0; c < bars.criteria().size(); c++) {
        data.addValue(bar.contributions().get(c), bars.criteria().get(c), bar.name());
      }
      if (bar.open()) {
        data.addValue(bar.upTo() - bar.value(), bars.words().of("unknown"), bar.name());
      }
    }
    return data;
  }

  private static NumberAxis values(RankingBars bars, ChartTheme theme) {
    NumberAxis axis = new NumberAxis(label(bars));
    axis.setRange(0, ROOM_FOR_FIGURES);
    axis.setTickUnit(new NumberTickUnit(0.2));
    return ChartDress.axis(axis, theme);
  }

  private static String label(RankingBars bars) {
    boolean marked =
        bars.bars().stream().anyMatch(b -> b.standing() == RankingBars.Standing.BASELINE);
    return bars.words().of(marked ? "axis.value-marked" : "axis.value");
  }

  private static void markToday(CategoryPlot plot, RankingBars bars, ChartTheme theme) {
    bars.bars().stream()
        .filter(bar -> bar.standing() == RankingBars.Standing.BASELINE)
        .forEach(bar -> plot.addRangeMarker(new ValueMarker(bar.value(), theme.text(), DASHED)));
  }

  /** Without any criterion there is no bar to write beside. */
  private static void writeValues(CategoryPlot plot, RankingBars bars, ChartTheme theme) {
    if (plot.getDataset().getColumnCount() == 0) {
      return;
    }
    for (RankingBars.Bar bar : bars.bars()) {
      String value = String.format(Locale.ROOT, " %.3f", bar.value());
      String open = bar.open() ? String.format(Locale.ROOT, " – %.3f", bar.upTo()) : "";
      CategoryTextAnnotation figure =
          new CategoryTextAnnotation(value + open, bar.name(), bar.upTo());
      figure.setCategoryAnchor(CategoryAnchor.MIDDLE);
      figure.setTextAnchor(TextAnchor.CENTER_LEFT);
      figure.setFont(theme.font().deriveFont(theme.font().getSize2D() - 1));
      figure.setPaint(theme.text());
      plot.addAnnotation(figure);
    }
  }

  private static TextTitle note(RankingBars bars, ChartTheme theme) {
    TextTitle note = new TextTitle(bars.note(), theme.font());
    note.setPaint(theme.text());
    note.setPadding(new RectangleInsets(0, 0, 6, 0));
    return note;
  }

  /** The size of a mark in the legend, large enough to show a hatch. */
  static Rectangle2D swatch() {
    return new Rectangle2D.Double(-9, -6, 18, 12);
  }
}
