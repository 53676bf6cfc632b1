package plyworth.workbench.chart;

import java.awt.AlphaComposite;
import java.awt.Color;
import java.awt.Composite;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import org.jfree.chart.axis.CategoryAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.renderer.category.CategoryItemRendererState;
import org.jfree.chart.renderer.category.StackedBarRenderer;
import org.jfree.chart.renderer.category.StandardBarPainter;
import org.jfree.data.category.CategoryDataset;

/** Draws the parts of the bars. The bar of a structure that is out of the ranking is pale. */
final class PartRenderer extends StackedBarRenderer {

  private static final long serialVersionUID = 1L;
  private static final float PALE = 0.4f;
  private static final int FAINT = 28;

  private final transient RankingBars bars;

  PartRenderer(RankingBars bars, ChartTheme theme) {
    this.bars = bars;
    setBarPainter(new StandardBarPainter());
    setShadowVisible(false);
    setDrawBarOutline(true);
    setMaximumBarWidth(0.12);
    setDefaultLegendShape(RankingChart.swatch());
    int parts = bars.criteria().size();
    for (int c = 0; c < parts; c++) {
      setSeriesPaint(c, PartPaint.of(c));
      setSeriesOutlinePaint(c, theme.background());
    }
    Color text = theme.text();
    setSeriesPaint(parts, new Color(text.getRed(), text.getGreen(), text.getBlue(), FAINT));
    setSeriesOutlinePaint(parts, text);
    List<String> tips = bars.bars().stream().map(b -> ChartTips.of(b, bars.words())).toList();
    setDefaultToolTipGenerator(
        (data, row, column) ->
            ChartTips.part(
                tips.get(column),
                bars.bars().get(column).value(),
                data.getRowKey(row),
                data.getValue(row, column).doubleValue(),
                bars.words()));
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
    Composite before = g.getComposite();
    if (bars.bars().get(column).standing() == RankingBars.Standing.BASELINE_OUT) {
      g.setComposite(AlphaComposite.getInstance(AlphaComposite.SRC_OVER, PALE));
    }
    super.drawItem(g, state, area, plot, names, values, data, row, column, pass);
    g.setComposite(before);
  }
}
