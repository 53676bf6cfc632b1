package plyworth.workbench.desktop.part;

import java.awt.BasicStroke;
import java.awt.Component;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.Insets;
import java.awt.event.FocusEvent;
import java.awt.event.FocusListener;
import javax.swing.JComponent;
import javax.swing.UIManager;
import javax.swing.border.AbstractBorder;

/** A frame that shows whether a part has the keyboard, in the colour of the look and feel. */
public final class FocusFrame extends AbstractBorder implements FocusListener {

  private static final long serialVersionUID = 1L;
  private static final int WIDTH = 2;

  private final transient JComponent framed;
  private final transient JComponent target;

  private FocusFrame(JComponent framed, JComponent target) {
    this.framed = framed;
    this.target = target;
  }

  /** Draws a frame around one part while another, or the same, has the keyboard. */
  public static void around(JComponent framed, JComponent target) {
    FocusFrame frame = new FocusFrame(framed, target);
    target.addFocusListener(frame);
    framed.setBorder(frame);
  }

  @Override
  public Insets getBorderInsets(Component part, Insets insets) {
    insets.set(WIDTH, WIDTH, WIDTH, WIDTH);
    return insets;
  }

  @Override
  public void paintBorder(Component part, Graphics graphics, int x, int y, int width, int height) {
    if (target.isFocusOwner()) {
      Graphics2D g = (Graphics2D) graphics.create();
      g.setColor(UIManager.getColor("Component.focusColor"));
      g.setStroke(new BasicStroke(WIDTH));
      g.drawRect(x + WIDTH / 2, y + WIDTH / 2, width - WIDTH, height - WIDTH);
      g.dispose();
    }
  }

  @Override
  public void focusGained(FocusEvent event) {
    framed.repaint();
  }

  @Override
  public void focusLost(FocusEvent event) {
    framed.repaint();
  }
}
