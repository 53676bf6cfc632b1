package plyworth.workbench.chart;

import java.util.List;
import org.jfree.data.xy.AbstractXYDataset;

/** Some points of a trade-off plot as series; an item knows which point it is. */
final class PointData extends AbstractXYDataset {

  private static final long serialVersionUID = 1L;

  private final transient List<TradeOff.Point> points;
  private final transient List<List<Integer>> series;
  private final List<String> names;

  /**
   * Series of points.
   *
   * @param series places in {@code points}, by series
   */
  PointData(List<TradeOff.Point> points, List<List<Integer>> series, List<String> names) {
    this.points = points;
    this.series = series;
    this.names = names;
  }

  /** The place of an item among all points. */
  int place(int seriesIndex, int item) {
    return series.get(seriesIndex).get(item);
  }

  TradeOff.Point point(int seriesIndex, int item) {
    return points.get(place(seriesIndex, item));
  }

  @Override
  public int getSeriesCount() {
    return series.size();
  }

  @Override
  public Comparable<?> getSeriesKey(int index) {
    return names.get(index);
  }

  @Override
  public int getItemCount(int index) {
    return series.get(index).size();
  }

  @Override
  public Number getX(int index, int item) {
    return point(index, item).x();
  }

  @Override
  public Number getY(int index, int item) {
    return point(index, item).y();
  }
}
