package plyworth.plugins.barrier;

import java.util.List;

/**
 * Between which conductances the packs of a block lie, by permeant; reused from pack to pack, which
 * are read one after the other.
 */
final class PackEnds {

  private final int water;
  private final int oxygen;
  private final int mixed;
  private final double faceM2;
  private final HumidityBounds humidity;
  private final double[][] edges;
  private final double[] leaks;
  private final double[] alcohol;
  private final double[] least;
  private final double[] largest;

  /**
   * The packs of a block.
   *
   * @param faceM2 area of the faces of a pack
   * @param humidity encloses the resistances to water and oxygen
   * @param edges conductance of the seal edges, by permeant
   * @param leaks conductance of open channels, by permeant
   * @param alcohol resistances to the alcohol, if there is any
   */
  PackEnds(
      List<Permeant> permeants,
      double faceM2,
      HumidityBounds humidity,
      double[][] edges,
      double[] leaks,
      double[] alcohol) {
    this.water = permeants.indexOf(Permeant.WATER);
    this.oxygen = permeants.indexOf(Permeant.OXYGEN);
    this.mixed =
        permeants.stream().filter(Permeant::alcohol).mapToInt(permeants::indexOf).max().orElse(-1);
    this.faceM2 = faceM2;
    this.humidity = humidity;
    this.edges = edges;
    this.leaks = leaks;
    this.alcohol = alcohol;
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
    if (mixed >= 0) {
      set(mixed, alcohol[row], alcohol[row], row);
    }
  }

  /** Narrows the ends of the same pack by the humidity within. */
  void narrow(int row) {
    humidity.narrow(row);
    conduct(row);
  }

  private void conduct(int row) {
    if (water >= 0) {
      set(water, humidity.waterLow, humidity.waterHigh, row);
    }
    if (oxygen >= 0) {
      set(oxygen, humidity.oxygenLow, humidity.oxygenHigh, row);
    }
  }

  private void set(int permeant, double low, double high, int row) {
    double edge = edges[permeant][row] + leaks[permeant];
    least[permeant] = faceM2 / high + edge;
    largest[permeant] = faceM2 / low + edge;
  }
}
