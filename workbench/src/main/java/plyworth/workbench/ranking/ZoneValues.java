package plyworth.workbench.ranking;

import java.util.HashMap;
import java.util.Map;
import plyworth.workbench.engine.table.Chunk;

/**
 * The values of candidates in the zones that a ranking looks at. A moved weight leads to nearly the
 * same zones again, and leaves these values as they are, so they are kept for a while. For one
 * thread at a time.
 */
final class ZoneValues {

  /** Most zones kept: at twenty criteria about 20 MiB. */
  private static final int MOST = 1024;

  private final ValueCurve[] curves;
  private final Map<Long, double[][]> kept = new HashMap<>();

  ZoneValues(ValueCurve[] curves) {
    this.curves = curves;
  }

  /**
   * The values of the rows of a zone, the unknown as 0.
   *
   * @param path path number of the first row
   * @param from first row within the chunk
   * @param to row after the last
   */
  double[] of(int criterion, Chunk chunk, long path, int from, int to) {
    if (kept.size() > MOST) {
      kept.clear();
    }
    double[][] zone = kept.computeIfAbsent(path, p -> new double[curves.length][]);
    if (zone[criterion] == null) {
      zone[criterion] = values(curves[criterion], chunk.low(criterion), from, to);
    }
    return zone[criterion];
  }

  private static double[] values(ValueCurve curve, float[] column, int from, int to) {
    double[] values = new double[to - from];
    for (int j = 0; j < values.length; j++) {
      float figure = column[from + j];
      values[j] = figure == figure ? curve.value(figure) : 0;
    }
    return values;
  }
}
