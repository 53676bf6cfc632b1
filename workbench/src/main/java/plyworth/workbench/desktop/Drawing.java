package plyworth.workbench.desktop;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import javax.accessibility.AccessibleContext;
import javax.swing.JComponent;
import javax.swing.plaf.basic.BasicGraphicsUtils;

/** A part of the window that is drawn by hand, and can be read by those who do not see it. */
abstract class Drawing extends JComponent {

  private static final long serialVersionUID = 1L;
  private static final double SMALLEST = 0.7;

  /**
   * Writes a text, in smaller letters where it would not fit; where even these do not fit, writes
   * what says the same in short.
   */
  final void write(Graphics2D g, String text, String inShort, Point2D at, double room) {
    double fit = room / g.getFontMetrics().stringWidth(text);
    String fitting = fit < SMALLEST ? inShort : text;
    double share = Math.min(1, room / g.getFontMetrics().stringWidth(fitting));
    Font usual = g.getFont();
    g.setFont(usual.deriveFont((float) (usual.getSize2D() * Math.max(SMALLEST, share))));
    g.drawString(
        BasicGraphicsUtils.getClippedString(this, g.getFontMetrics(), fitting, (int) room),
        (float) at.getX(),
        (float) at.getY());
    g.setFont(usual);
  }

  @Override
  public AccessibleContext getAccessibleContext() {
    if (accessibleContext == null) {
      accessibleContext =
          new AccessibleJComponent() {
            private static final long serialVersionUID = 1L;
          };
    }
    return accessibleContext;
  }
}
