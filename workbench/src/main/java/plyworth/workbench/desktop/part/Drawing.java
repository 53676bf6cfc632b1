package plyworth.workbench.desktop.part;

import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import javax.accessibility.AccessibleContext;
import javax.swing.JComponent;
import javax.swing.plaf.basic.BasicGraphicsUtils;

/** A part of the window that is drawn by hand, and can be read by those who do not see it. */
public abstract class Drawing extends JComponent {

  private static final long serialVersionUID = 1L;
  private static final double SMALLEST = 0.7;

  /** Letters are hinted to whole pixels, so that smaller ones are a little wider than reckoned. */
  private static final double ROUNDING = 0.95;

  /**
   * Writes a text, in smaller letters where it would not fit; where even these do not fit, writes
   * what says the same in short.
   */
  protected final void write(Graphics2D g, String text, String inShort, Point2D at, double room) {
    FontMetrics metrics = g.getFontMetrics();
    double fits = ROUNDING * room;
    String fitting = fits / metrics.stringWidth(text) < SMALLEST ? inShort : text;
    double share = Math.min(1, fits / metrics.stringWidth(fitting));
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
