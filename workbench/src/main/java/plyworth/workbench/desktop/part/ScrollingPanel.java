package plyworth.workbench.desktop.part;

import java.awt.Dimension;
import java.awt.LayoutManager;
import java.awt.Rectangle;
import javax.swing.Scrollable;

/**
 * A panel whose parts depend in height on its width; a scroll pane around it scrolls up and down
 * alone.
 */
public abstract class ScrollingPanel extends WidthPanel implements Scrollable {

  private static final long serialVersionUID = 1L;
  private static final int STEP = 20;

  /** An empty panel. */
  protected ScrollingPanel(LayoutManager layout) {
    super(layout);
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
  public boolean getScrollableTracksViewportWidth() {
    return true;
  }

  @Override
  public boolean getScrollableTracksViewportHeight() {
    return false;
  }
}
