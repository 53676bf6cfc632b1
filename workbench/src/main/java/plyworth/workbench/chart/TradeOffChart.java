package plyworth.workbench.chart;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.LegendItem;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.annotations.XYPointerAnnotation;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.axis.SymbolAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.entity.XYItemEntity;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.renderer.xy.XYStepRenderer;
import org.jfree.chart.title.TextTitle;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.chart.util.ShapeUtils;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;

/**
 * Renders {@link TradeOff}. A full mark is on the front, a hollow one is not; shape and hue tell
 * the class of the third figure; dashed lines cross at today's structure.
 */
public final class TradeOffChart {

  /** Figures that span this ratio are drawn on a scale of ratios. */
  private static final double WIDE = 100;

  private static final BasicStroke FINE = new BasicStroke(0.6f);
  private static final BasicStroke MARK = new BasicStroke(1.4f);
  private static final BasicStroke RING = new BasicStroke(2.2f);
  private static final BasicStroke STEPS =
      new BasicStroke(1.1f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 1, new float[] {2, 3}, 0);
  private static final BasicStroke DASHED =
      new BasicStroke(1f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER, 1, new float[] {6, 4}, 0);
  private static final Shape SELECTED = new Ellipse2D.Double(-9, -9, 18, 18);
  private static final Shape TODAY = ShapeUtils.createRegularCross(7, 1.1f);

  private final TradeOff shown;
  private final ChartTheme theme;

  private TradeOffChart(TradeOff shown, ChartTheme theme) {
    this.shown = shown;
    this.theme = theme;
  }

  /**
   * The chart in a theme.
   *
   * @param selected place of the point that is ringed
   */
  public static JFreeChart of(TradeOff shown, ChartTheme theme, OptionalInt selected) {
    return new TradeOffChart(shown, theme).chart(selected);
  }

  /** The place of the point that an entity of the chart stands for; empty for lines. */
  public static OptionalInt place(XYItemEntity entity) {
    return entity.getDataset() instanceof PointData data
        ? OptionalInt.of(data.place(entity.getSeriesIndex(), entity.getItem()))
        : OptionalInt.empty();
  }

  /** The place of the point that is ringed on a chart. */
  public static OptionalInt selected(JFreeChart chart) {
    return chart.getXYPlot().getDataset(1) instanceof PointData ring
        ? OptionalInt.of(ring.place(0, 0))
        : OptionalInt.empty();
  }

  private JFreeChart chart(OptionalInt selected) {
    XYPlot plot = new XYPlot();
    plot.setDomainAxis(axis(shown.x(), TradeOff.Point::x));
    plot.setRangeAxis(axis(shown.y(), TradeOff.Point::y));
    plot.setBackgroundPaint(theme.background());
    plot.setDomainGridlinePaint(theme.grid());
    plot.setDomainGridlineStroke(FINE);
    plot.setRangeGridlinePaint(theme.grid());
    plot.setRangeGridlineStroke(FINE);
    plot.setOutlineVisible(false);
    plot.setAxisOffset(RectangleInsets.ZERO_INSETS);
    marks(plot);
    selected.ifPresent(place -> ring(plot, place));
    shown.today().ifPresent(today -> today(plot, today));
    if (shown.stepped()) {
      steps(plot);
    }
    JFreeChart chart = new JFreeChart(null, theme.font(), plot, false);
    chart.setBackgroundPaint(theme.background());
    chart.setPadding(new RectangleInsets(10, 8, 6, 16));
    plot.setFixedLegendItems(legendItems());
    chart.addLegend(ChartDress.legend(plot, ClassMark.ROOM, theme));
    if (!shown.marksTitle().isEmpty()) {
      chart.addSubtitle(marksTitle());
    }
    return chart;
  }

  private void marks(XYPlot plot) {
    List<Integer> places = IntStream.range(0, shown.points().size()).boxed().toList();
    List<List<Integer>> series = new ArrayList<>();
    List<String> names = new ArrayList<>();
    XYLineAndShapeRenderer renderer = new FrontRenderer();
    for (int mark = FigureClasses.UNKNOWN; mark < shown.marks().size(); mark++) {
      int index = mark;
      series.add(places.stream().filter(p -> shown.points().get(p).mark() == index).toList());
      names.add(Integer.toString(mark));
      int s = series.size() - 1;
      renderer.setSeriesShape(s, ClassMark.shape(mark));
      renderer.setSeriesPaint(s, ClassMark.colour(mark, theme));
      renderer.setSeriesOutlinePaint(s, ClassMark.colour(mark, theme));
      renderer.setSeriesOutlineStroke(s, MARK);
    }
    renderer.setUseOutlinePaint(true);
    renderer.setDrawOutlines(true);
    tips(renderer);
    plot.setDataset(0, new PointData(shown.points(), series, names));
    plot.setRenderer(0, renderer);
  }

  private static void tips(XYLineAndShapeRenderer renderer) {
    renderer.setDefaultToolTipGenerator((data, s, item) -> ((PointData) data).point(s, item).tip());
  }

  private void ring(XYPlot plot, int place) {
    XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(false, true);
    renderer.setSeriesShape(0, SELECTED);
    renderer.setSeriesShapesFilled(0, false);
    renderer.setSeriesPaint(0, theme.text());
    renderer.setSeriesOutlineStroke(0, RING);
    renderer.setUseOutlinePaint(false);
    renderer.setDrawOutlines(true);
    tips(renderer);
    plot.setDataset(1, new PointData(shown.points(), List.of(List.of(place)), List.of("")));
    plot.setRenderer(1, renderer);
    name(plot, shown.points().get(place));
  }

  private void today(XYPlot plot, TradeOff.Point today) {
    plot.addDomainMarker(new ValueMarker(today.x(), theme.muted(), DASHED));
    plot.addRangeMarker(new ValueMarker(today.y(), theme.muted(), DASHED));
    XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(false, true);
    renderer.setSeriesShape(0, TODAY);
    renderer.setSeriesPaint(0, theme.text());
    renderer.setDefaultToolTipGenerator((data, s, item) -> today.tip());
    XYSeries one = new XYSeries(today.name());
    one.add(today.x(), today.y());
    plot.setDataset(2, new XYSeriesCollection(one));
    plot.setRenderer(2, renderer);
    name(plot, today);
  }

  /** A name beside a point, on the side where there is room. */
  private void name(XYPlot plot, TradeOff.Point point) {
    Rectangle2D whole = new Rectangle2D.Double(0, 0, 1, 1);
    boolean left = plot.getDomainAxis().valueToJava2D(point.x(), whole, RectangleEdge.BOTTOM) > 0.5;
    boolean below = plot.getRangeAxis().valueToJava2D(point.y(), whole, RectangleEdge.LEFT) < 0.2;
    double angle = (left ? 0.75 : 0.25) * Math.PI * (below ? 1 : -1);
    XYPointerAnnotation text = new XYPointerAnnotation(point.name(), point.x(), point.y(), angle);
    text.setFont(theme.bold(0));
    text.setPaint(theme.text());
    text.setBackgroundPaint(theme.background());
    text.setTextAnchor(anchor(left, below));
    text.setTipRadius(11);
    text.setBaseRadius(24);
    text.setArrowLength(0);
    text.setArrowWidth(0);
    text.setArrowPaint(theme.text());
    plot.addAnnotation(text);
  }

  private static TextAnchor anchor(boolean left, boolean below) {
    if (below) {
      return left ? TextAnchor.TOP_RIGHT : TextAnchor.TOP_LEFT;
    }
    return left ? TextAnchor.BOTTOM_RIGHT : TextAnchor.BOTTOM_LEFT;
  }

  /**
   * The edge of what the front leaves out, where the front is one in these two figures: across
   * first where less is better across, upwards first where more is.
   */
  private void steps(XYPlot plot) {
    XYSeries edge = new XYSeries("", true, true);
    List<TradeOff.Point> front = shown.points().stream().filter(TradeOff.Point::front).toList();
    front.stream()
        .filter(p -> front.stream().noneMatch(o -> shown.matches(o, p) && !shown.matches(p, o)))
        .sorted(Comparator.comparingDouble(TradeOff.Point::x))
        .forEach(p -> edge.add(p.x(), p.y()));
    XYStepRenderer renderer = new XYStepRenderer();
    renderer.setSeriesPaint(0, theme.muted());
    renderer.setSeriesStroke(0, STEPS);
    renderer.setStepPoint(shown.x().better() == TradeOff.Better.LESS ? 1 : 0);
    plot.setDataset(3, new XYSeriesCollection(edge));
    plot.setRenderer(3, renderer);
  }

  private ValueAxis axis(TradeOff.Axis axis, ToDoubleFunction<TradeOff.Point> figure) {
    double[] figures =
        Stream.concat(shown.points().stream(), shown.today().stream())
            .mapToDouble(figure)
            .toArray();
    double low = IntStream.range(0, figures.length).mapToDouble(i -> figures[i]).min().orElse(0);
    double high = IntStream.range(0, figures.length).mapToDouble(i -> figures[i]).max().orElse(1);
    ValueAxis made = made(axis, low, high);
    return ChartDress.axis(made, theme);
  }

  private ValueAxis made(TradeOff.Axis axis, double low, double high) {
    if (!axis.classes().isEmpty()) {
      SymbolAxis classes = new SymbolAxis(axis.label(), axis.classes().toArray(String[]::new));
      classes.setGridBandsVisible(false);
      classes.setRange(-0.5, axis.classes().size() - 0.5);
      classes.setTickUnit(new NumberTickUnit(1));
      return classes;
    }
    if (low > 0 && high / low >= WIDE) {
      LogAxis ratios = new LogAxis(axis.label());
      ratios.setNumberFormatOverride(
          new java.text.DecimalFormat(
              "#,##0.######", java.text.DecimalFormatSymbols.getInstance(java.util.Locale.ROOT)));
      ratios.setRange(low / 1.3, high * 1.3);
      return ratios;
    }
    NumberAxis steps = new NumberAxis(axis.label());
    steps.setAutoRangeIncludesZero(false);
    double room = high > low ? (high - low) * 0.07 : Math.max(1e-9, Math.abs(high) * 0.1);
    steps.setRange(low - room, high + room);
    return steps;
  }

  private LegendItemCollection legendItems() {
    LegendItemCollection items = new LegendItemCollection();
    if (shown.marks().size() > 1 || !shown.marksTitle().isEmpty()) {
      for (int m = 0; m < shown.marks().size(); m++) {
        items.add(item(shown.marks().get(m), m, true));
      }
    }
    if (shown.points().stream().anyMatch(p -> p.mark() == FigureClasses.UNKNOWN)) {
      items.add(item(shown.words().unknown(), FigureClasses.UNKNOWN, true));
    }
    items.add(item(shown.words().front(), 0, true, theme));
    items.add(item(shown.words().beaten(), 0, false, theme));
    return items;
  }

  private LegendItem item(String text, int mark, boolean full) {
    return item(text, ClassMark.shape(mark), ClassMark.colour(mark, theme), full);
  }

  /** In the colour of text: what full and hollow say, whatever the class. */
  private static LegendItem item(String text, int mark, boolean full, ChartTheme theme) {
    return item(text, ClassMark.shape(mark), theme.muted(), full);
  }

  private static LegendItem item(String text, Shape shape, java.awt.Color colour, boolean full) {
    return new LegendItem(
        text, null, null, null, true, shape, full, colour, true, colour, MARK, false, shape, MARK,
        colour);
  }

  private TextTitle marksTitle() {
    TextTitle title = new TextTitle(shown.marksTitle(), theme.font());
    title.setPosition(RectangleEdge.BOTTOM);
    title.setPaint(theme.text());
    title.setPadding(new RectangleInsets(2, 0, 0, 0));
    return title;
  }

  /** Fills what is on the front. */
  private static final class FrontRenderer extends XYLineAndShapeRenderer {

    private static final long serialVersionUID = 1L;

    FrontRenderer() {
      super(false, true);
    }

    @Override
    public boolean getItemShapeFilled(int series, int item) {
      return getPlot().getDataset(0) instanceof PointData data && data.point(series, item).front();
    }
  }
}
