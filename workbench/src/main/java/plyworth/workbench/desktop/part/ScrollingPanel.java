package plyworth.workbench.desktop.part;

import java.awt.Dimension;
import java.awt.LayoutManager;
import java.awt.Rectangle;
import javax.swing.JPanel;
import javax.swing.Scrollable;

/**
 * A panel whose parts depend in height on its width; a scroll pane around it scrolls up and down
 * alone.
 */
public abstract class ScrollingPanel extends JPanel implements Scrollable {

  private static final long serialVersionUID = 1L;
  private static final int STEP = 20;

  /** An empty panel. */
  protected ScrollingPanel(LayoutManager layout) {
    super(layout);
  }

  @Override
  public final void setBounds(int x, int y, int width, int height) {
    boolean otherWidth = width != getWidth();
    super.setBounds(x, y, width, height);
    if (otherWidth) {
      revalidate();
    }
  }

  @Override
  public final Dimension getPreferredScrollableViewportSize() {
    return getPreferredSize();
  }

  @Override
  public final int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
    return STEP;
  }

  @Override
  public final int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
    return Math.max(STEP, visible.height - STEP);
  }

  @Override
  public final boolean getScrollableTracksViewportWidth() {
    return true;
  }

  @Override
  public final boolean getScrollableTracksViewportHeight() {
    return false;
  }
}
