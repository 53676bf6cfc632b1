package plyworth.workbench.chart;

import java.awt.Color;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.util.ShapeUtils;

/** The mark of each class on a plot: a shape and a hue, so that no two differ by colour alone. */
final class ClassMark {

  /** Room a mark takes on each side of its point. */
  static final RectangleInsets ROOM = new RectangleInsets(4, 8, 4, 4);

  private static final double R = 4.6;
  private static final Shape[] SHAPES = {
    new Ellipse2D.Double(-R, -R, 2 * R, 2 * R),
    new Rectangle2D.Double(-R * 0.9, -R * 0.9, R * 1.8, R * 1.8),
    corners(3, -90, R * 1.25),
    corners(4, -90, R * 1.25),
    corners(3, 90, R * 1.25),
    corners(6, 0, R * 1.1),
    new Rectangle2D.Double(-R * 1.2, -R * 0.5, R * 2.4, R),
    new Rectangle2D.Double(-R * 0.5, -R * 1.2, R, R * 2.4),
  };

  private ClassMark() {}

  /** How many classes can be told apart. */
  static int most() {
    return SHAPES.length;
  }

  /** The shape of a class around the origin; a cross for {@link FigureClasses#UNKNOWN}. */
  static Shape shape(int index) {
    return index == FigureClasses.UNKNOWN
        ? ShapeUtils.createDiagonalCross((float) R, 0.6f)
        : SHAPES[index % SHAPES.length];
  }

  /** The colour of a class, which stands out from the ground. */
  static Color colour(int index, ChartTheme theme) {
    return index == FigureClasses.UNKNOWN ? theme.muted() : theme.legible(PartPaint.hue(index));
  }

  private static Shape corners(int n, double firstDegrees, double radius) {
    Path2D path = new Path2D.Double();
    for (int i = 0; i < n; i++) {
      double turn = Math.toRadians(firstDegrees + 360.0 * i / n);
      double x = radius * Math.cos(turn);
      double y = radius * Math.sin(turn);
      if (i == 0) {
        path.moveTo(x, y);
      } else {
        path.lineTo(x, y);
      }
    }
    path.closePath();
    return path;
  }

  /** A shape made larger. */
  static Shape larger(Shape shape, double times) {
    return AffineTransform.getScaleInstance(times, times).createTransformedShape(shape);
  }
}
