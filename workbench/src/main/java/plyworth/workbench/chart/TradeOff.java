package plyworth.workbench.chart;

import java.util.List;
import java.util.Optional;

/**
 * What a trade-off plot shows: candidates by two criteria, with a mark by a third.
 *
 * @param x the criterion across
 * @param y the criterion upwards
 * @param marks what the marks stand for: name of each class; a single one without a third criterion
 * @param marksTitle name of the third criterion; empty without one
 * @param points the candidates
 * @param today today's structure, where its two figures are known
 * @param words the words on it
 */
public record TradeOff(
    Axis x,
    Axis y,
    List<String> marks,
    String marksTitle,
    List<Point> points,
    Optional<Point> today,
    Words words) {

  /** Copies the lists. */
  public TradeOff {
    marks = List.copyOf(marks);
    points = List.copyOf(points);
  }

  /** Which way is better. */
  public enum Better {
    /** More is better. */
    MORE,
    /** Less is better. */
    LESS,
    /** Neither all the way: best within a band. */
    BETWEEN
  }

  /**
   * An axis.
   *
   * @param label criterion, unit and which way is better
   * @param classes names of the classes where figures are class numbers; else empty
   * @param better which way is better
   */
  public record Axis(String label, List<String> classes, Better better) {

    /** Copies the list. */
    public Axis {
      classes = List.copyOf(classes);
    }
  }

  /**
   * A candidate.
   *
   * @param name what it is called: its rank, or where it comes from
   * @param tip what is shown when the pointer rests on it
   * @param x figure across, finite
   * @param y figure upwards, finite
   * @param mark class of the third figure; {@link FigureClasses#UNKNOWN} where it is unknown
   * @param front whether no other candidate beats it
   */
  public record Point(String name, String tip, double x, double y, int mark, boolean front) {

    /**
     * Checks the figures.
     *
     * @throws IllegalArgumentException when a figure is not finite
     */
    public Point {
      if (!Double.isFinite(x) || !Double.isFinite(y)) {
        throw new IllegalArgumentException(name + " has no place at " + x + ", " + y);
      }
    }
  }

  /**
   * The words on the plot.
   *
   * @param front what a full mark says
   * @param beaten what a hollow mark says
   * @param unknown name of the mark of unknown figures
   */
  public record Words(String front, String beaten, String unknown) {}

  /** Whether both ends of the scale are better or worse, so that the front is a flight of steps. */
  boolean stepped() {
    return x.better() != Better.BETWEEN && y.better() != Better.BETWEEN;
  }

  /** Whether {@code a} is at least as good as {@code b} across and upwards. */
  boolean matches(Point a, Point b) {
    return atLeast(x.better(), a.x(), b.x()) && atLeast(y.better(), a.y(), b.y());
  }

  private static boolean atLeast(Better better, double a, double b) {
    return switch (better) {
      case MORE -> a >= b;
      case LESS -> a <= b;
      case BETWEEN -> a == b;
    };
  }
}
