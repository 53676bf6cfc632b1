package plyworth.workbench.desktop.brief;

import java.awt.BasicStroke;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;

/** Draws a length as technical drawings do: a line with an arrow at each end, the figure beside. */
final class DimensionLine {

  private static final float ARROW = 6;
  private static final int GAP = 5;

  private final Graphics2D g;

  DimensionLine(Graphics2D g) {
    this.g = g;
  }

  /** A length across, the figure below its middle. */
  void across(double x1, double x2, double y, String text) {
    line(x1, y, x2, y);
    FontMetrics font = g.getFontMetrics();
    g.drawString(
        text,
        (float) ((x1 + x2 - font.stringWidth(text)) / 2),
        (float) (y + font.getAscent() + GAP));
  }

  /** A length downwards, the figure at the right of its middle. */
  void down(double x, double y1, double y2, String text) {
    line(x, y1, x, y2);
    FontMetrics font = g.getFontMetrics();
    float middle = (float) ((y1 + y2 + font.getAscent() - font.getDescent()) / 2);
    g.drawString(text, (float) (x + GAP + 2), middle);
  }

  private void line(double x1, double y1, double x2, double y2) {
    g.setStroke(new BasicStroke(1));
    g.draw(new Line2D.Double(x1, y1, x2, y2));
    double length = Math.hypot(x2 - x1, y2 - y1);
    double size = Math.min(ARROW, length / 2);
    double dx = (x2 - x1) / length * size;
    double dy = (y2 - y1) / length * size;
    arrow(x1, y1, dx, dy);
    arrow(x2, y2, -dx, -dy);
  }

  private void arrow(double x, double y, double dx, double dy) {
    Path2D head = new Path2D.Double();
    head.moveTo(x, y);
    head.lineTo(x + dx - dy / 2, y + dy + dx / 2);
    head.lineTo(x + dx + dy / 2, y + dy - dx / 2);
    head.closePath();
    g.fill(head);
  }
}
