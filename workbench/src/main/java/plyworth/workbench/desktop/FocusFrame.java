package plyworth.workbench.desktop;

import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.UIManager;

/** A frame that shows whether a part has the keyboard. */
final class FocusFrame implements FocusListener {

  private static final int WIDTH = 2;

  private final JComponent framed;

  private FocusFrame(JComponent framed) {
    this.framed = framed;
  }

  /** Draws a frame around one part while another, or the same, has the keyboard. */
  static void around(JComponent framed, JComponent target) {
    FocusFrame frame = new FocusFrame(framed);
    target.addFocusListener(frame);
    frame.draw(false);
  }

  private void draw(boolean focused) {
    framed.setBorder(
        focused
            ? BorderFactory.createLineBorder(
                UIManager.getColor("Component.focusColor"), WIDTH, true)
            : BorderFactory.createEmptyBorder(WIDTH, WIDTH, WIDTH, WIDTH));
  }

  @Override
  public void focusGained(FocusEvent event) {
    draw(true);
  }

  @Override
  public void focusLost(FocusEvent event) {
    draw(false);
  }
}
