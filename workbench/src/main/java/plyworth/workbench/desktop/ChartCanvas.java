package plyworth.workbench.desktop;

import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import javax.swing.BorderFactory;
import javax.swing.UIManager;
import org.jfree.chart.ChartPanel;

/** Where a chart is drawn: takes the keyboard, shows that it has it, and never stretches. */
final class ChartCanvas extends ChartPanel {

  private static final long serialVersionUID = 1L;
  private static final int FOCUS_WIDTH = 2;
  private static final int FEWEST = 120;
  private static final int MOST = 6000;

  ChartCanvas(String name, String accessibleName, String accessibleDescription) {
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
    addFocusListener(new FocusFrame());
    drawFocus(false);
  }

  /** Does something when a key is struck here. */
  void whenStruck(String key, Runnable work) {
    Keys.bind(this, key, work);
  }

  /** Draws the frame that shows who has the keyboard, in the colours of the look and feel. */
  void drawFocus(boolean focused) {
    setBorder(
        focused
            ? BorderFactory.createLineBorder(
                UIManager.getColor("Component.focusColor"), FOCUS_WIDTH, true)
            : BorderFactory.createEmptyBorder(FOCUS_WIDTH, FOCUS_WIDTH, FOCUS_WIDTH, FOCUS_WIDTH));
  }

  /** Shows who has the keyboard. */
  private final class FocusFrame implements FocusListener {
    @Override
    public void focusGained(FocusEvent event) {
      drawFocus(true);
    }

    @Override
    public void focusLost(FocusEvent event) {
      drawFocus(false);
    }
  }
}
