package plyworth.workbench.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import org.jfree.chart.ui.Drawable;

/**
 * Draws {@link StabilityStrips}: within the broad part of a strip the leader stays first; the
 * pointer stands at the share now; at each end stands who leads beyond.
 */
public final class StabilityDrawing implements Drawable {

  private static final double LEFT = 10;
  private static final double RIGHT = 26;
  private static final double BROAD = 10;
  private static final double GAP = 6;
  private static final BasicStroke FINE = new BasicStroke(0.8f);

  private final StabilityStrips strips;
  private final ChartTheme theme;
  private final int selected;

  /**
   * A drawing.
   *
   * @param selected the row that is marked; negative for none
   */
  public StabilityDrawing(StabilityStrips strips, ChartTheme theme, int selected) {
    this.strips = strips;
    this.theme = theme;
    this.selected = selected;
  }

  private double line() {
    return Math.ceil(theme.font().getSize2D() * 1.35);
  }

  /** Height of a row. */
  public double rowHeight() {
    return 2 * line() + BROAD + 3 * GAP;
  }

  /** Height of the whole. */
  public double height() {
    return line() + GAP + rowHeight() * strips.rows().size();
  }

  /** The row at a height; negative where there is none. */
  public int row(double y) {
    int row = (int) Math.floor((y - line() - GAP) / rowHeight());
    return row < strips.rows().size() ? row : -1;
  }

  /** Where a row begins. */
  public double top(int row) {
    return line() + GAP + row * rowHeight();
  }

  @Override
  public void draw(Graphics2D graphics, Rectangle2D area) {
    Graphics2D g = (Graphics2D) graphics.create();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(
        RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
    g.setPaint(theme.background());
    g.fill(area);
    g.translate(area.getX(), area.getY());
    g.setFont(theme.font());
    scale(g, area.getWidth());
    for (int i = 0; i < strips.rows().size(); i++) {
      row(g, i, area.getWidth());
    }
    g.dispose();
  }

  private double x(double share, double width) {
    return LEFT + share * (width - LEFT - RIGHT);
  }

  private void scale(Graphics2D g, double width) {
    FontMetrics metrics = g.getFontMetrics();
    double bottom = line() + GAP + rowHeight() * strips.rows().size();
    g.setStroke(FINE);
    for (int quarter = 0; quarter <= 4; quarter++) {
      double x = x(quarter / 4.0, width);
      String text = 25 * quarter + " %";
      g.setPaint(theme.grid());
      g.draw(new Line2D.Double(x, line(), x, bottom));
      g.setPaint(theme.muted());
      int wide = metrics.stringWidth(text);
      double left = quarter == 0 ? x : Math.min(x - wide / 2.0, width - wide);
      g.drawString(text, (float) left, metrics.getAscent());
    }
  }

  private void row(Graphics2D g, int index, double width) {
    StabilityStrips.Row row = strips.rows().get(index);
    double top = top(index);
    if (index == selected) {
      g.setPaint(theme.selection());
      g.fill(new Rectangle2D.Double(0, top, width, rowHeight()));
    }
    FontMetrics metrics = g.getFontMetrics();
    double text = top + GAP / 2 + metrics.getAscent();
    g.setPaint(theme.text());
    g.setFont(theme.bold(0));
    g.drawString(row.title(), (float) LEFT, (float) text);
    double after = LEFT + g.getFontMetrics().stringWidth(row.title()) + 3 * GAP;
    g.setFont(fitting(g, row.said(), width - after - GAP));
    g.drawString(row.said(), (float) after, (float) text);
    g.setFont(theme.font());
    double middle = top + line() + GAP + BROAD / 2;
    strip(g, row, middle, width);
    ends(g, row, middle + BROAD / 2 + metrics.getAscent() + 1, width);
  }

  /** The font of the theme, made smaller where a text would not fit. */
  private Font fitting(Graphics2D g, String text, double width) {
    double wide = g.getFontMetrics(theme.font()).stringWidth(text);
    return wide <= width
        ? theme.font()
        : theme.font().deriveFont((float) (theme.font().getSize2D() * Math.max(0, width) / wide));
  }

  private void strip(Graphics2D g, StabilityStrips.Row row, double middle, double width) {
    g.setStroke(FINE);
    g.setPaint(theme.muted());
    g.draw(new Line2D.Double(x(0, width), middle, x(1, width), middle));
    Color hue = theme.legible(PartPaint.hue(2));
    if (!Double.isNaN(row.from())) {
      double from = x(row.from(), width);
      double to = x(row.to(), width);
      g.setPaint(hue);
      g.fill(new Rectangle2D.Double(from, middle - BROAD / 2, Math.max(1, to - from), BROAD));
      g.setPaint(theme.text());
      stop(g, from, middle, !row.below().isEmpty());
      stop(g, to, middle, !row.above().isEmpty());
    }
    double now = x(row.weight(), width);
    Path2D pointer = new Path2D.Double();
    pointer.moveTo(now - 5, middle - BROAD / 2 - 5);
    pointer.lineTo(now + 5, middle - BROAD / 2 - 5);
    pointer.lineTo(now, middle + BROAD / 2);
    pointer.closePath();
    g.setPaint(theme.text());
    g.fill(pointer);
    g.setPaint(theme.background());
    g.draw(pointer);
  }

  /** A bar across where another leads beyond; where nobody does, the strip just ends. */
  private static void stop(Graphics2D g, double x, double middle, boolean turns) {
    if (turns) {
      g.fill(new Rectangle2D.Double(x - 1, middle - BROAD / 2 - 3, 2, BROAD + 6));
    }
  }

  private void ends(Graphics2D g, StabilityStrips.Row row, double baseline, double width) {
    FontMetrics metrics = g.getFontMetrics();
    g.setPaint(theme.text());
    double below = metrics.stringWidth(row.below());
    double above = metrics.stringWidth(row.above());
    double left = Math.max(LEFT, (Double.isNaN(row.from()) ? 0 : x(row.from(), width)) - below);
    double right = Double.isNaN(row.to()) ? LEFT : x(row.to(), width);
    right = Math.min(right, width - above - GAP);
    if (!row.below().isEmpty() && right < left + below + 2 * GAP) {
      right = Math.min(width - above - GAP, left + below + 2 * GAP);
      left = Math.max(LEFT, Math.min(left, right - 2 * GAP - below));
    }
    g.drawString(row.below(), (float) left, (float) baseline);
    g.drawString(row.above(), (float) right, (float) baseline);
  }
}
