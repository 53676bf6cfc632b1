package plyworth.workbench.desktop.part;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import org.jfree.chart.ChartRenderingInfo;
import org.jfree.chart.JFreeChart;

/**
 * A chart that was drawn before it is shown.
 *
 * @param chart the chart, which nobody changes any more
 * @param size as large as it was drawn, in units of the screen
 * @param image the drawing
 * @param info where its parts are
 */
public record ChartPicture(
    JFreeChart chart, Dimension size, BufferedImage image, ChartRenderingInfo info) {

  /**
   * Draws a chart; on any thread.
   *
   * @param scale pixels in a unit of the screen
   */
  public static ChartPicture of(JFreeChart chart, Dimension size, double scale) {
    int width = (int) Math.ceil(size.width * scale);
    int height = (int) Math.ceil(size.height * scale);
    BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
    ChartRenderingInfo info = new ChartRenderingInfo();
    Graphics2D g = image.createGraphics();
    try {
      g.scale(scale, scale);
      chart.draw(g, new Rectangle2D.Double(0, 0, size.width, size.height), null, info);
    } finally {
      g.dispose();
    }
    return new ChartPicture(chart, size, image, info);
  }

  /** Whether this is the drawing of a chart in a size, in so many pixels. */
  boolean shows(JFreeChart other, Dimension drawn, Dimension pixels) {
    return chart == other
        && size.equals(drawn)
        && image.getWidth() == pixels.width
        && image.getHeight() == pixels.height;
  }

  /** Tells where the parts are. */
  void tell(ChartRenderingInfo other) {
    other.clear();
    other.setChartArea(info.getChartArea());
    other.setEntityCollection(info.getEntityCollection());
    other.getPlotInfo().setPlotArea(info.getPlotInfo().getPlotArea());
    other.getPlotInfo().setDataArea(info.getPlotInfo().getDataArea());
  }
}
