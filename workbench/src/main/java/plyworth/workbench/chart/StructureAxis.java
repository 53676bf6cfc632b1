package plyworth.workbench.chart;

import java.awt.BasicStroke;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.Optional;
import org.jfree.chart.axis.AxisSpace;
import org.jfree.chart.axis.AxisState;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.entity.CategoryLabelEntity;
import org.jfree.chart.plot.Plot;
import org.jfree.chart.plot.PlotRenderingInfo;
import org.jfree.chart.ui.RectangleEdge;

/**
 * The axis at the left of the bars. Each bar is named by its rank and its layers over as many lines
 * as fit; layers that the bar above has as well stand back. Below them the structure is drawn,
 * outside to the left, all to one scale.
 */
final class StructureAxis extends CategoryAxis {

  private static final long serialVersionUID = 1L;

  /** Share of the width of a chart. */
  static final double SHARE = 0.52;

  private static final double STRIP = 8;
  private static final double GAP = 10;
  private static final double ROOM = 8;
  private static final double PITCH = 0.98;
  private static final BasicStroke OUTLINE = new BasicStroke(0.6f);

  private final transient RankingBars bars;
  private final transient ChartTheme theme;
  private final transient Optional<String> selected;

  StructureAxis(RankingBars bars, ChartTheme theme, Optional<String> selected) {
    this.bars = bars;
    this.theme = theme;
    this.selected = selected;
    setAxisLinePaint(theme.grid());
    setTickMarksVisible(false);
    setLowerMargin(0.01);
    setUpperMargin(0.01);
    setCategoryMargin(0.3);
  }

  @Override
  public AxisSpace reserveSpace(
      Graphics2D g, Plot plot, Rectangle2D area, RectangleEdge edge, AxisSpace space) {
    AxisSpace reserved = space == null ? new AxisSpace() : space;
    reserved.add(SHARE * area.getWidth(), edge);
    return reserved;
  }

  @Override
  protected AxisState drawCategoryLabels(
      Graphics2D g,
      Rectangle2D plotArea,
      Rectangle2D dataArea,
      RectangleEdge edge,
      AxisState state,
      PlotRenderingInfo info) {
    double left = plotArea.getX();
    double width = dataArea.getX() - left;
    int n = bars.bars().size();
    double pitch = dataArea.getHeight() / n * PITCH;
    for (int i = 0; i < n; i++) {
      RankingBars.Bar bar = bars.bars().get(i);
      double middle =
          (getCategoryStart(i, n, dataArea, edge) + getCategoryEnd(i, n, dataArea, edge)) / 2;
      Rectangle2D row = new Rectangle2D.Double(left, middle - pitch / 2, width, pitch);
      if (selected.filter(bar.name()::equals).isPresent()) {
        g.setPaint(theme.selection());
        g.fill(
            new Rectangle2D.Double(left, row.getY(), dataArea.getMaxX() - left, row.getHeight()));
      }
      drawRow(g, bar, row);
      register(bar, row, info);
    }
    state.cursorLeft(width);
    return state;
  }

  /** Height of the rows in which the longest name is shown whole, on an axis of a width. */
  static double rowHeight(RankingBars bars, ChartTheme theme, FontMetrics metrics, double width) {
    double text =
        bars.bars().stream()
            .map(bar -> new PlyLines(bar, theme, metrics, width - GAP))
            .mapToDouble(lines -> lines.height(Double.POSITIVE_INFINITY))
            .max()
            .orElse(0);
    return (text + STRIP + ROOM) / PITCH;
  }

  /** What names are written in. */
  static Font font(ChartTheme theme) {
    return theme.font().deriveFont(theme.font().getSize2D() - 1);
  }

  private void drawRow(Graphics2D g, RankingBars.Bar bar, Rectangle2D row) {
    double width = row.getWidth() - GAP;
    FontMetrics metrics = g.getFontMetrics(font(theme));
    PlyLines lines = new PlyLines(bar, theme, metrics, width);
    double text = lines.height(row.getHeight() - STRIP - 4);
    double top = row.getCenterY() - (text + STRIP + 2) / 2;
    lines.draw(g, row.getX(), top, text);
    drawStrip(g, bar, row.getX() + PlyLines.INDENT, top + text + 2, width - PlyLines.INDENT);
  }

  private void drawStrip(Graphics2D g, RankingBars.Bar bar, double left, double top, double width) {
    double x = left;
    for (RankingBars.Ply ply : bar.plies()) {
      double thickness = ply.gaugeUm() / bars.thickest() * width;
      g.setPaint(LayerFill.of(ply.family()));
      g.fill(new Rectangle2D.Double(x, top, thickness, STRIP));
      x += thickness;
    }
    g.setPaint(theme.muted());
    g.setStroke(OUTLINE);
    g.draw(new Rectangle2D.Double(left, top, x - left, STRIP));
  }

  private void register(RankingBars.Bar bar, Rectangle2D row, PlotRenderingInfo info) {
    if (info != null && info.getOwner() != null && info.getOwner().getEntityCollection() != null) {
      info.getOwner()
          .getEntityCollection()
          .add(new CategoryLabelEntity(bar.name(), row, ChartTips.of(bar, bars.words()), null));
    }
  }
}
