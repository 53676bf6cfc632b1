package plyworth.workbench.chart;

import java.awt.Font;
import java.awt.FontMetrics;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;

/**
 * Where the boxes and ribbons of {@link FlowColumns} stand. A candidate is equally thick wherever
 * it runs; a box is as high as what runs through it, but never lower than its two lines.
 */
final class FlowPlaces {

  static final double SWATCH = 8;
  static final double INSET = 6;

  private static final double MARGIN = 10;
  private static final double BETWEEN = 6;
  private static final double RUN = 54;
  private static final double EXTRA = 120;
  private static final int HALVINGS = 40;

  /** A ribbon with its upper edge at either end, and how thick it is. */
  record Strip(
      FlowColumns.Ribbon ribbon,
      double left,
      double right,
      double top,
      double topRight,
      double thick,
      double chosen) {

    /** Its outline, from the upper edge down to a thickness. */
    Path2D outline(double thickness) {
      double middle = (left + right) / 2;
      double lower = top + thickness;
      double lowerRight = topRight + thickness;
      Path2D path = new Path2D.Double();
      path.moveTo(left, top);
      path.curveTo(middle, top, middle, topRight, right, topRight);
      path.lineTo(right, lowerRight);
      path.curveTo(middle, lowerRight, middle, lower, left, lower);
      path.closePath();
      return path;
    }
  }

  private final FlowColumns columns;
  private final FontMetrics metrics;
  private final double line;
  private final List<List<Rectangle2D>> boxes = new ArrayList<>();
  private final List<Strip> strips = new ArrayList<>();
  private final double scale;

  /** The places in an area that begins at 0, 0. */
  FlowPlaces(FlowColumns columns, Font font, double width, double height) {
    this.columns = columns;
    metrics = metrics(font);
    line = Math.ceil(font.getSize2D() * 1.35);
    scale = scale(height);
    double spare = Math.max(0, width - width());
    double x = MARGIN;
    for (int c = 0; c < columns.columns().size(); c++) {
      boxes.add(stack(c, x));
      x += columnWidth(c) + RUN + spare / Math.max(1, columns.columns().size() - 1);
    }
    ribbons();
  }

  private static FontMetrics metrics(Font font) {
    Graphics2D g = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics();
    FontMetrics metrics = g.getFontMetrics(font);
    g.dispose();
    return metrics;
  }

  private double least() {
    return 2 * line + 4;
  }

  /** Where the boxes begin, below the headings. */
  double top() {
    return line + 8;
  }

  double line() {
    return line;
  }

  /** The width that all columns need, no label cut. */
  double width() {
    double sum = 2 * MARGIN;
    for (int c = 0; c < columns.columns().size(); c++) {
      sum += columnWidth(c) + (c > 0 ? RUN : 0);
    }
    return sum;
  }

  /** The height at which boxes begin to tell themselves apart by their height. */
  double height() {
    int most = columns.columns().stream().mapToInt(c -> c.boxes().size()).max().orElse(0);
    return top() + most * (least() + BETWEEN) + EXTRA;
  }

  private double columnWidth(int column) {
    FlowColumns.Column shown = columns.columns().get(column);
    int text = metrics.stringWidth(shown.title());
    for (FlowColumns.Box box : shown.boxes()) {
      text = Math.max(text, metrics.stringWidth(box.label()));
      text = Math.max(text, metrics.stringWidth(box.count()));
    }
    return text * 1.08 + SWATCH + 2 * INSET;
  }

  /** Pixels per candidate, so that the fullest column just fits. */
  private double scale(double height) {
    double most = Double.POSITIVE_INFINITY;
    for (int c = 0; c < columns.columns().size() && columns.candidates() > 0; c++) {
      double room = height - top() - MARGIN - BETWEEN * (columns.boxes(c) - 1);
      most = Math.min(most, scale(c, room));
    }
    return Double.isInfinite(most) ? 0 : most;
  }

  private double scale(int column, double room) {
    double low = 0;
    double high = Math.max(0, room) / columns.candidates();
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      double sum = 0;
      for (FlowColumns.Box box : columns.columns().get(column).boxes()) {
        sum += Math.max(least(), box.candidates() * middle);
      }
      low = sum <= room ? middle : low;
      high = sum <= room ? high : middle;
    }
    return low;
  }

  private List<Rectangle2D> stack(int column, double x) {
    List<Rectangle2D> stack = new ArrayList<>();
    double y = top();
    for (FlowColumns.Box box : columns.columns().get(column).boxes()) {
      double height = Math.max(least(), box.candidates() * scale);
      stack.add(new Rectangle2D.Double(x, y, columnWidth(column), height));
      y += height + BETWEEN;
    }
    return stack;
  }

  private void ribbons() {
    double[][] out = starts();
    double[][] in = starts();
    for (FlowColumns.Ribbon ribbon : columns.ribbons()) {
      int c = ribbon.column();
      double thick = ribbon.candidates() * scale;
      strips.add(
          new Strip(
              ribbon,
              boxes.get(c).get(ribbon.from()).getMaxX(),
              boxes.get(c + 1).get(ribbon.to()).getMinX(),
              out[c][ribbon.from()],
              in[c + 1][ribbon.to()],
              thick,
              ribbon.chosen() * scale));
      out[c][ribbon.from()] += thick;
      in[c + 1][ribbon.to()] += thick;
    }
  }

  /** Where the uppermost ribbon of each box begins: all of them stand about its middle. */
  private double[][] starts() {
    double[][] starts = new double[boxes.size()][];
    for (int c = 0; c < starts.length; c++) {
      starts[c] = new double[boxes.get(c).size()];
      for (int b = 0; b < starts[c].length; b++) {
        starts[c][b] =
            boxes.get(c).get(b).getCenterY() - columns.box(c, b).candidates() * scale / 2;
      }
    }
    return starts;
  }

  /** The place of a box. */
  Rectangle2D box(int column, int box) {
    return boxes.get(column).get(box);
  }

  /** The ribbons, as they are laid on each other. */
  List<Strip> strips() {
    return strips;
  }
}
