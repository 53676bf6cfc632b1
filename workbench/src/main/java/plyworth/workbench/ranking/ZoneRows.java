package plyworth.workbench.ranking;

import plyworth.workbench.engine.table.Chunk;

/**
 * What the candidates of a zone are worth by one criterion, the unknown at 0; the same array twice
 * unless the figures are bounded.
 *
 * @param worst by row, the lowest value
 * @param best by row, the highest value
 */
record ZoneRows(double[] worst, double[] best) {

  static ZoneRows of(ValueCurve curve, Chunk chunk, int criterion, int zone) {
    int from = zone * Chunk.ZONE;
    int count = Math.min(chunk.size() - from, Chunk.ZONE);
    float[] low = chunk.low(criterion);
    return chunk.bounded(criterion)
        ? bounded(curve, low, chunk.high(criterion), from, count)
        : exact(curve, low, from, count);
  }

  private static ZoneRows exact(ValueCurve curve, float[] figures, int from, int count) {
    double[] values = new double[count];
    for (int j = 0; j < count; j++) {
      float figure = figures[from + j];
      values[j] = figure == figure ? curve.value(figure) : 0;
    }
    return new ZoneRows(values, values);
  }

  private static ZoneRows bounded(
      ValueCurve curve, float[] low, float[] high, int from, int count) {
    double[] worst = new double[count];
    double[] best = new double[count];
    for (int j = 0; j < count; j++) {
      float a = low[from + j];
      float b = high[from + j];
      worst[j] = a <= b ? curve.lowest(a, b) : 0;
      best[j] = a <= b ? curve.highest(a, b) : 0;
    }
    return new ZoneRows(worst, best);
  }
}
