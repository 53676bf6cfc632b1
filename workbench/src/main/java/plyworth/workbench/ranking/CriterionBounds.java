package plyworth.workbench.ranking;

import plyworth.workbench.engine.table.CandidateTable;
import plyworth.workbench.engine.table.Chunk;
import plyworth.workbench.engine.table.Zones;

/**
 * What one criterion of a table is worth at most: in every band, and in the zones, strips and rows
 * that a ranking looks at. The unknown counts as 0. For one thread at a time.
 */
final class CriterionBounds {

  private final CandidateTable table;
  private final int criterion;
  private final ValueCurve curve;
  private final SlotBounds zones = new SlotBounds(Bands.PER_CHUNK * Bands.ZONES, this::zone);
  private final SlotBounds strips = new SlotBounds(Strips.PER_ZONE, this::strip);
  private final SlotBounds rows = new SlotBounds(Strips.ROWS, this::row);
  private double[] bands;

  CriterionBounds(CandidateTable table, int criterion, ValueCurve curve) {
    this.table = table;
    this.criterion = criterion;
    this.curve = curve;
  }

  /** Highest value in every band of the table. */
  double[] bands() {
    if (bands == null) {
      bands = new double[Bands.in(table.rows())];
      for (int i = 0; i < bands.length; i++) {
        int from = i % Bands.PER_CHUNK * Bands.ZONES;
        bands[i] = zones(table.chunk(i / Bands.PER_CHUNK), from, from + Bands.ZONES);
      }
    }
    return bands;
  }

  /** By slot of a chunk, the highest value of each of its zones. */
  SlotBounds zones() {
    return zones;
  }

  /** By slot of a zone, the highest value of each of its strips. */
  SlotBounds strips() {
    return strips;
  }

  /** By slot of a strip, the highest value of each of its rows. */
  SlotBounds rows() {
    return rows;
  }

  private double zone(int chunk, int whole, int zone) {
    return zones(table.chunk(chunk), zone, zone + 1);
  }

  private double zones(Chunk chunk, int from, int to) {
    float least = Float.POSITIVE_INFINITY;
    float most = Float.NEGATIVE_INFINITY;
    Zones all = chunk.zones();
    int end = chunk.has(criterion) ? Math.min(all.count(), to) : from;
    for (int zone = from; zone < end; zone++) {
      least = Math.min(least, all.lowest(criterion)[zone]);
      most = Math.max(most, all.highest(criterion)[zone]);
    }
    return between(least, most);
  }

  private double strip(int index, int zone, int strip) {
    Chunk chunk = table.chunk(index);
    float[] low = chunk.low(criterion);
    float[] high = chunk.high(criterion);
    byte[] codes = chunk.codes();
    float least = Float.POSITIVE_INFINITY;
    float most = Float.NEGATIVE_INFINITY;
    int from = zone * Chunk.ZONE + strip * Strips.ROWS;
    int end = Math.min(chunk.size(), from + Strips.ROWS);
    for (int row = from; row < end; row++) {
      boolean counts = codes[row] != Chunk.BLOCKED;
      least = counts && low[row] < least ? low[row] : least;
      most = counts && high[row] > most ? high[row] : most;
    }
    return between(least, most);
  }

  private double row(int index, int strip, int place) {
    Chunk chunk = table.chunk(index);
    int row = strip * Strips.ROWS + place;
    return row < chunk.size() ? between(chunk.low(criterion)[row], chunk.high(criterion)[row]) : 0;
  }

  /** The highest value between two figures; 0 where there are none. */
  private double between(float low, float high) {
    return low < high ? curve.highest(low, high) : low == high ? curve.value(low) : 0;
  }
}
