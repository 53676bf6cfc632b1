package plyworth.workbench.desktop.part;

import org.jfree.chart.ChartPanel;

/** Where a chart is drawn: takes the keyboard, shows that it has it, and never stretches. */
public final class ChartCanvas extends ChartPanel {

  private static final long serialVersionUID = 1L;
  private static final int FEWEST = 120;
  private static final int MOST = 6000;

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

  /** Does something when a key is struck here. */
  public void whenStruck(String key, Runnable work) {
    Keys.bind(this, key, work);
  }
}
