package plyworth.workbench.ranking;

import java.util.concurrent.atomic.AtomicReferenceArray;
import plyworth.shared.scoring.ValueFunction;
import plyworth.workbench.engine.table.CandidateTable;
import plyworth.workbench.engine.table.Chunk;
import plyworth.workbench.engine.table.Zones;

/**
 * What one criterion of a table is worth by one value function, by chunk, zone and row: computed
 * where a ranking first looks, and kept while the value function stays. The unknown counts as 0.
 * May be asked by several threads, but for {@link #bounds}.
 */
final class CriterionValues {

  private final CandidateTable table;
  private final int criterion;
  private final ValueFunction function;
  private final ValueCurve curve;
  private final AtomicReferenceArray<double[]> highest;
  private final AtomicReferenceArray<double[]> lowest;
  private final CriterionBounds bounds;
  private double[] whole;

  CriterionValues(CandidateTable table, int criterion, ValueFunction function) {
    this.table = table;
    this.criterion = criterion;
    this.function = function;
    curve = new ValueCurve(function);
    highest = new AtomicReferenceArray<>(table.chunks());
    lowest = new AtomicReferenceArray<>(table.chunks());
    bounds = new CriterionBounds(table, criterion, curve);
  }

  /** The value function. */
  ValueFunction function() {
    return function;
  }

  /** The same, ready to be asked. */
  ValueCurve curve() {
    return curve;
  }

  /** What it is worth at most, for one thread at a time. */
  CriterionBounds bounds() {
    return bounds;
  }

  /** Highest value in every chunk. */
  synchronized double[] whole() {
    if (whole == null) {
      whole = new double[table.chunks()];
      for (int i = 0; i < whole.length; i++) {
        whole[i] = highest(table.chunk(i), table.chunk(i).whole())[0];
      }
    }
    return whole;
  }

  /** Highest value in every zone of a chunk. */
  double[] highest(int index) {
    double[] values = highest.get(index);
    if (values == null) {
      values = highest(table.chunk(index), table.chunk(index).zones());
      highest.set(index, values);
    }
    return values;
  }

  /** Lowest value in every zone of a chunk. */
  double[] lowest(int index) {
    double[] values = lowest.get(index);
    if (values == null) {
      values = lowest(table.chunk(index), table.chunk(index).zones());
      lowest.set(index, values);
    }
    return values;
  }

  private double[] highest(Chunk chunk, Zones zones) {
    double[] values = new double[zones.count()];
    for (int z = 0; chunk.has(criterion) && z < values.length; z++) {
      float low = zones.lowest(criterion)[z];
      float high = zones.highest(criterion)[z];
      values[z] = low <= high ? curve.highest(low, high) : 0;
    }
    return values;
  }

  private double[] lowest(Chunk chunk, Zones zones) {
    double[] values = new double[zones.count()];
    for (int z = 0; chunk.has(criterion) && z < values.length; z++) {
      float low = zones.lowest(criterion)[z];
      float high = zones.highest(criterion)[z];
      boolean known = low <= high && !zones.unknown(criterion)[z];
      values[z] = known ? curve.lowest(low, high) : 0;
    }
    return values;
  }

  /** Highest value of a single candidate. */
  double best(Chunk chunk, int row) {
    float low = chunk.low(criterion)[row];
    float high = chunk.high(criterion)[row];
    return low <= high ? curve.highest(low, high) : 0;
  }

  /** Lowest value of a single candidate. */
  double worst(Chunk chunk, int row) {
    float low = chunk.low(criterion)[row];
    float high = chunk.high(criterion)[row];
    return low <= high ? curve.lowest(low, high) : 0;
  }

  /** Values of the rows of a zone, kept nowhere. */
  ZoneRows rows(int index, int zone) {
    return ZoneRows.of(curve, table.chunk(index), criterion, zone);
  }
}
