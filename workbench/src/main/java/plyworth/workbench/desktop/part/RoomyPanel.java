package plyworth.workbench.desktop.part;

import java.awt.Dimension;
import java.awt.LayoutManager;
import javax.swing.BorderFactory;
import javax.swing.JScrollPane;

/** Fills its view, and scrolls where the view is too small for what it holds. */
public final class RoomyPanel extends ScrollingPanel {

  private static final long serialVersionUID = 1L;

  private final int least;

  /**
   * An empty panel.
   *
   * @param least width below which it scrolls, pixels
   */
  public RoomyPanel(LayoutManager layout, int least) {
    super(layout);
    this.least = least;
  }

  /** As wide as it takes at least, since texts in it are broken at any width. */
  @Override
  public Dimension getPreferredSize() {
    return new Dimension(least, super.getPreferredSize().height);
  }

  /** The panel in a view that it fills or scrolls in. */
  public JScrollPane inView() {
    JScrollPane scroll = new JScrollPane(this);
    scroll.setBorder(BorderFactory.createEmptyBorder());
    return scroll;
  }

  @Override
  public boolean getScrollableTracksViewportWidth() {
    return getParent().getWidth() >= least;
  }

  @Override
  public boolean getScrollableTracksViewportHeight() {
    return getParent().getHeight() >= getPreferredSize().height;
  }
}
