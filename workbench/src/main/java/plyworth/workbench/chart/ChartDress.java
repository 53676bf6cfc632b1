package plyworth.workbench.chart;

import org.jfree.chart.axis.Axis;
import org.jfree.chart.block.BlockBorder;
import org.jfree.chart.plot.Plot;
import org.jfree.chart.title.LegendTitle;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;

/** Puts a theme on the parts that every chart has. */
final class ChartDress {

  private ChartDress() {}

  static <A extends Axis> A axis(A axis, ChartTheme theme) {
    axis.setTickLabelFont(theme.font());
    axis.setLabelFont(theme.font());
    axis.setTickLabelPaint(theme.text());
    axis.setLabelPaint(theme.text());
    axis.setAxisLinePaint(theme.grid());
    axis.setTickMarkPaint(theme.grid());
    return axis;
  }

  /**
   * A legend below the plot.
   *
   * @param room around each mark
   */
  static LegendTitle legend(Plot plot, RectangleInsets room, ChartTheme theme) {
    LegendTitle legend = new LegendTitle(plot);
    legend.setPosition(RectangleEdge.BOTTOM);
    legend.setItemFont(theme.font());
    legend.setItemPaint(theme.text());
    legend.setBackgroundPaint(theme.background());
    legend.setFrame(BlockBorder.NONE);
    legend.setLegendItemGraphicPadding(room);
    return legend;
  }
}
