package plyworth.plugins.barrier;

import java.util.List;

/**
 * Between which conductances the packs of a block lie, by permeant. Ends of the resistances stand
 * in columns; conductances are reckoned for one pack at a time and reused from pack to pack.
 */
final class PackEnds {

  /**
   * What is known of one permeant in a block.
   *
   * @param low ends of the resistance of each laminate, its layers at any humidity they can see
   * @param high the upper ends
   * @param edges conductance of each pack's seal edges
   * @param leak conductance of open channels
   */
  record Columns(double[] low, double[] high, double[] edges, double leak) {}

  private final double faceM2;
  private final HumidityBounds humidity;
  private final int water;
  private final int oxygen;
  private final Columns[] columns;
  private final double[] least;
  private final double[] largest;

  /**
   * The packs of a block.
   *
   * @param faceM2 area of the faces of a pack
   * @param humidity encloses the resistances to water and oxygen
   */
  PackEnds(List<Permeant> permeants, double faceM2, HumidityBounds humidity, Columns[] columns) {
    this.faceM2 = faceM2;
    this.humidity = humidity;
    this.water = permeants.indexOf(Permeant.WATER);
    this.oxygen = permeants.indexOf(Permeant.OXYGEN);
    this.columns = columns;
    this.least = new double[columns.length];
    this.largest = new double[columns.length];
  }

  double faceM2() {
    return faceM2;
  }

  /** The columns of a permeant, by its index. */
  Columns of(int permeant) {
    return columns[permeant];
  }

  /** Whether something else must be known, before anything is known of what passes by a way. */
  boolean follows(Way way) {
    return way.mixed() || way.permeant() == oxygen;
  }

  /** Whether that is unknown of a pack: the water beside an alcohol, the humidity of a polymer. */
  boolean unknown(Way way, int row) {
    return way.mixed()
        ? Double.isNaN(columns[way.with()].low[row] + columns[way.with()].edges[row])
        : humidity.unknown(row);
  }

  /** Least conductance of the pack that was read to a permeant. */
  double least(int permeant) {
    return least[permeant];
  }

  /** Largest conductance to a permeant. */
  double largest(int permeant) {
    return largest[permeant];
  }

  /** Reads a pack, narrowed by the humidity within. */
  void read(int row) {
    for (int p = 0; p < columns.length; p++) {
      set(p, columns[p].low[row], columns[p].high[row], row);
    }
    if ((wide(water) || wide(oxygen)) && humidity.narrow(row)) {
      if (water >= 0) {
        set(water, humidity.waterLow, humidity.waterHigh, row);
      }
      if (oxygen >= 0) {
        set(oxygen, humidity.oxygenLow, humidity.oxygenHigh, row);
      }
    }
    if (oxygen >= 0 && humidity.unknown(row)) {
      least[oxygen] = Double.NaN;
      largest[oxygen] = Double.NaN;
    }
  }

  private boolean wide(int permeant) {
    return permeant >= 0
        && largest[permeant] - least[permeant] > HumidityBounds.NARROW * least[permeant];
  }

  private void set(int permeant, double low, double high, int row) {
    double edge = columns[permeant].edges[row] + columns[permeant].leak;
    least[permeant] = faceM2 / high + edge;
    largest[permeant] = low == high ? least[permeant] : faceM2 / low + edge;
  }
}
