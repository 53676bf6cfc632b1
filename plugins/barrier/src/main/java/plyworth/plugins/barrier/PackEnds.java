package plyworth.plugins.barrier;

import java.util.List;

/**
 * Between which conductances the packs of a block lie, by permeant; reused from pack to pack, which
 * are read one after the other.
 */
final class PackEnds {

  private final Permeant[] permeants;
  private final double faceM2;
  private final HumidityBounds humidity;
  private final double[][] edges;
  private final double[][] alone;
  private final double[] least;
  private final double[] largest;

  /**
   * The packs of a block.
   *
   * @param faceM2 area of the faces of a pack
   * @param humidity encloses the resistances to water and oxygen
   * @param edges conductance of the seal edges, by permeant
   * @param alone resistance to a permeant that follows no humidity, by permeant; of no matter for
   *     the others
   */
  PackEnds(
      List<Permeant> permeants,
      double faceM2,
      HumidityBounds humidity,
      double[][] edges,
      double[][] alone) {
    this.permeants = permeants.toArray(Permeant[]::new);
    this.faceM2 = faceM2;
    this.humidity = humidity;
    this.edges = edges;
    this.alone = alone;
    this.least = new double[edges.length];
    this.largest = new double[edges.length];
  }

  /** Least conductance to a permeant, by its index. */
  double least(int permeant) {
    return least[permeant];
  }

  /** Largest conductance to a permeant. */
  double largest(int permeant) {
    return largest[permeant];
  }

  /** Reads a pack, its layers at any humidity they can ever see. */
  void read(int row) {
    humidity.ends(row);
    conduct(row);
  }

  /** Narrows the ends of the same pack by the humidity within. */
  void narrow(int row) {
    humidity.narrow(row);
    conduct(row);
  }

  private void conduct(int row) {
    for (int p = 0; p < least.length; p++) {
      double edge = edges[p][row];
      switch (permeants[p]) {
        case WATER -> set(p, humidity.waterLow, humidity.waterHigh, edge);
        case OXYGEN -> set(p, humidity.oxygenLow, humidity.oxygenHigh, edge);
        case ALCOHOL, ETHANOL -> set(p, alone[p][row], alone[p][row], edge);
      }
    }
  }

  private void set(int permeant, double low, double high, double edge) {
    least[permeant] = faceM2 / high + edge;
    largest[permeant] = faceM2 / low + edge;
  }
}
