package plyworth.workbench.ranking;

import java.util.Arrays;
import plyworth.workbench.engine.table.Chunk;

/**
 * The values of the candidates of a zone, computed column by column. Columns without weight are not
 * read.
 */
final class RowValues {

  private final ZoneValues zones;
  private final ValueCurve[] curves;
  private final int[] criteria;
  private final double[] weights;

  /** The lowest value of each row, the unknown at 0: what it is ranked by. */
  final double[] worst = new double[Chunk.ZONE];

  /** The highest value of each row, the unknown at 0 all the same, as no refining can mend it. */
  final double[] best = new double[Chunk.ZONE];

  RowValues(ValueModel model, ValueCurve[] all, ZoneValues zones) {
    this.zones = zones;
    criteria = Weights.counting(model);
    weights = new double[criteria.length];
    curves = new ValueCurve[criteria.length];
    for (int i = 0; i < criteria.length; i++) {
      weights[i] = model.criteria().get(criteria[i]).weight();
      curves[i] = all[criteria[i]];
    }
  }

  /**
   * Computes {@link #worst} and {@link #best} of the rows from {@code from} to {@code to}.
   *
   * @param path path number of the row {@code from}
   */
  void compute(Chunk chunk, long path, int from, int to) {
    int count = to - from;
    Arrays.fill(worst, 0, count, 0);
    Arrays.fill(best, 0, count, 0);
    for (int i = 0; i < criteria.length; i++) {
      int criterion = criteria[i];
      if (chunk.bounded(criterion)) {
        addBounded(i, chunk.low(criterion), chunk.high(criterion), from, count);
      } else {
        addExact(weights[i], zones.of(criterion, chunk, path, from, to), count);
      }
    }
  }

  private void addExact(double weight, double[] values, int count) {
    for (int j = 0; j < count; j++) {
      double contribution = weight * values[j];
      worst[j] += contribution;
      best[j] += contribution;
    }
  }

  private void addBounded(int i, float[] low, float[] high, int from, int count) {
    for (int j = 0; j < count; j++) {
      float a = low[from + j];
      float b = high[from + j];
      if (a <= b) {
        worst[j] += weights[i] * curves[i].lowest(a, b);
        best[j] += weights[i] * curves[i].highest(a, b);
      }
    }
  }
}
