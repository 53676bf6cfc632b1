package plyworth.workbench.desktop.part;

import java.awt.Dimension;
import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import org.jfree.chart.ChartPanel;
import org.jfree.chart.ChartRenderingInfo;

/** Where a chart is drawn: takes the keyboard, shows that it has it, and never stretches. */
public final class ChartCanvas extends ChartPanel {

  private static final long serialVersionUID = 1L;
  private static final int FEWEST = 120;
  private static final int MOST = 6000;

  private transient ChartPicture ahead;

  /** An empty canvas. */
  public ChartCanvas(String name, String accessibleName, String accessibleDescription) {
    super(null);
    setName(name);
    setPopupMenu(null);
    setMouseZoomable(false);
    setMinimumDrawWidth(FEWEST);
    setMinimumDrawHeight(FEWEST);
    setMaximumDrawWidth(MOST);
    setMaximumDrawHeight(MOST);
    setFocusable(true);
    getAccessibleContext().setAccessibleName(accessibleName);
    getAccessibleContext().setAccessibleDescription(accessibleDescription);
    FocusFrame.around(this, this);
  }

  /** Shows a chart that was drawn ahead; in another size it is drawn anew. */
  public void show(ChartPicture picture) {
    ahead = picture;
    setChart(picture.chart());
  }

  @Override
  protected BufferedImage paintChartToBuffer(
      Graphics2D g, Dimension pixels, Dimension size, Point2D anchor, ChartRenderingInfo info) {
    if (ahead != null && ahead.shows(getChart(), size, pixels)) {
      ahead.tell(info);
      return ahead.image();
    }
    return super.paintChartToBuffer(g, pixels, size, anchor, info);
  }

  /** Does something when a key is struck here. */
  public void whenStruck(String key, Runnable work) {
    Keys.bind(this, key, work);
  }
}
