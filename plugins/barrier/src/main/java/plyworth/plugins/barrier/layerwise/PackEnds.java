package plyworth.plugins.barrier.layerwise;

import java.util.List;
import plyworth.plugins.barrier.permeation.Permeant;

/**
 * Between which conductances the packs of a block lie, by permeant: what stands in its columns.
 *
 * @param faceM2 area of the faces of a pack
 * @param humidity encloses the resistances to water and oxygen
 * @param water index of water; −1 where it does not matter
 * @param oxygen index of oxygen; −1 where it does not matter
 * @param columns by index of the permeant
 */
record PackEnds(double faceM2, HumidityBounds humidity, int water, int oxygen, Columns[] columns) {

  /**
   * What is known of one permeant in a block.
   *
   * @param low ends of the resistance of each laminate, its layers at any humidity they can see
   * @param high the upper ends; the same array where humidity does not move the permeant
   * @param edges conductance of each pack's seal edges
   * @param leak conductance of open channels
   */
  record Columns(double[] low, double[] high, double[] edges, double leak) {}

  /** The packs of a block. */
  PackEnds(List<Permeant> permeants, double faceM2, HumidityBounds humidity, Columns[] columns) {
    this(
        faceM2,
        humidity,
        permeants.indexOf(Permeant.WATER),
        permeants.indexOf(Permeant.OXYGEN),
        columns);
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
}
