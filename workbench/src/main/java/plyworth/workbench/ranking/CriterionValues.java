package plyworth.workbench.ranking;

import java.util.concurrent.atomic.AtomicReferenceArray;
import plyworth.shared.scoring.ValueFunction;
import plyworth.workbench.engine.table.CandidateTable;
import plyworth.workbench.engine.table.Chunk;
import plyworth.workbench.engine.table.Zones;

/**
 * What one criterion of a table is worth by one value function, on three levels of bounds and row
 * by row: computed where a ranking first looks, and kept while the value function stays. The
 * unknown counts as 0. Bounds of chunks and zones may be asked for by several threads.
 */
final class CriterionValues {

  private final CandidateTable table;
  private final int criterion;
  private final ValueFunction function;
  private final ValueCurve curve;
  private final AtomicReferenceArray<double[]> highest;
  private final AtomicReferenceArray<double[]> lowest;
  private final SlotValues strips = new SlotValues(Strips.PER_ZONE);
  private final SlotValues worst = new SlotValues(Strips.ROWS);
  private final SlotValues best = new SlotValues(Strips.ROWS);
  private double[] whole;
  private double[] bands;

  CriterionValues(CandidateTable table, int criterion, ValueFunction function) {
    this.table = table;
    this.criterion = criterion;
    this.function = function;
    curve = new ValueCurve(function);
    highest = new AtomicReferenceArray<>(table.chunks());
    lowest = new AtomicReferenceArray<>(table.chunks());
  }

  /** The value function. */
  ValueFunction function() {
    return function;
  }

  /** The same, ready to be asked. */
  ValueCurve curve() {
    return curve;
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

  /** Highest value in every band of the table. */
  synchronized double[] bands() {
    if (bands == null) {
      bands = new double[Bands.in(table.rows())];
      for (int i = 0; i < bands.length; i++) {
        bands[i] = band(table.chunk(i / Bands.PER_CHUNK), i % Bands.PER_CHUNK * Bands.ZONES);
      }
    }
    return bands;
  }

  private double band(Chunk chunk, int from) {
    float least = Float.POSITIVE_INFINITY;
    float most = Float.NEGATIVE_INFINITY;
    Zones zones = chunk.zones();
    int end = chunk.has(criterion) ? Math.min(zones.count(), from + Bands.ZONES) : from;
    for (int zone = from; zone < end; zone++) {
      least = Math.min(least, zones.lowest(criterion)[zone]);
      most = Math.max(most, zones.highest(criterion)[zone]);
    }
    return least <= most ? curve.highest(least, most) : 0;
  }

  /** Highest value in every zone of a chunk, and 0 up to the end of its last band. */
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
    int count = zones.count();
    double[] values = new double[(count + Bands.ZONES - 1) / Bands.ZONES * Bands.ZONES];
    for (int z = 0; chunk.has(criterion) && z < count; z++) {
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

  /** Lowest value of a single candidate. */
  double worst(Chunk chunk, int row) {
    float low = chunk.low(criterion)[row];
    float high = chunk.high(criterion)[row];
    return low <= high ? curve.lowest(low, high) : 0;
  }

  /**
   * Makes sure that the highest values of the strips of a zone are in its slot; for one thread at a
   * time, as what follows.
   */
  void fillStrips(int index, int zone, int slot, int round) {
    if (!strips.has(slot, round)) {
      double[] values = strips.fill(slot, round);
      int at = slot * Strips.PER_ZONE;
      for (int s = 0; s < Strips.PER_ZONE; s++) {
        values[at + s] = strip(table.chunk(index), zone * Chunk.ZONE + s * Strips.ROWS);
      }
    }
  }

  /** Highest values of strips, by slot of their zone. */
  double[] strips() {
    return strips.all();
  }

  private double strip(Chunk chunk, int from) {
    float[] low = chunk.low(criterion);
    float[] high = chunk.high(criterion);
    byte[] codes = chunk.codes();
    float least = Float.POSITIVE_INFINITY;
    float most = Float.NEGATIVE_INFINITY;
    for (int row = from; row < Math.min(chunk.size(), from + Strips.ROWS); row++) {
      if (codes[row] != Chunk.BLOCKED) {
        least = low[row] < least ? low[row] : least;
        most = high[row] > most ? high[row] : most;
      }
    }
    return least <= most ? curve.highest(least, most) : 0;
  }

  /** Makes sure that the values of the rows of a strip are in its slot. */
  void fillRows(int index, int strip, int slot, int round) {
    if (!best.has(slot, round)) {
      ZoneRows rows =
          ZoneRows.of(curve, table.chunk(index), criterion, strip * Strips.ROWS, Strips.ROWS);
      int count = rows.best().length;
      System.arraycopy(rows.best(), 0, best.fill(slot, round), slot * Strips.ROWS, count);
      if (rows.bounded()) {
        System.arraycopy(rows.worst(), 0, worst.fill(slot, round), slot * Strips.ROWS, count);
      }
    }
  }

  /** Highest values of rows, by slot of their strip. */
  double[] best() {
    return best.all();
  }

  /** Lowest value of a row, by its place in the slot of its strip. */
  double worst(int at, int round) {
    return (worst.has(at / Strips.ROWS, round) ? worst : best).all()[at];
  }

  /** Values of the rows of a zone, kept nowhere; for any number of threads. */
  ZoneRows rows(int index, int zone) {
    return ZoneRows.of(curve, table.chunk(index), criterion, zone);
  }
}
