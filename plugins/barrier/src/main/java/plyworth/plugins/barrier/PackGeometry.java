package plyworth.plugins.barrier;

import plyworth.shared.brief.Pack;

/**
 * The ways out of a pack: its faces, and sideways through the sealant in its seals.
 *
 * @param faceM2 area of the faces, m²
 * @param edgeRatio length of the sealed edge over the width of the seal
 * @param edgeTimes what the edge lets through over its standard
 */
record PackGeometry(double faceM2, double edgeRatio, double edgeTimes) {

  /** The geometry of a pack; every seal is taken as wide as its end seals. */
  static PackGeometry of(Pack pack) {
    return new PackGeometry(pack.faceAreaM2(), pack.sealedEdgeMm() / pack.sealWidthMm(), 1);
  }

  /** The same with another seal edge. */
  PackGeometry edgeTimes(double times) {
    return new PackGeometry(faceM2, edgeRatio, times);
  }

  /**
   * Conductance of the seal edge, amount/(day·force): P · length · gap / width, lateral permeation
   * (form: Vacuum 104 (2014) 70, abstract).
   *
   * @param permeability of the sealant, amount·µm/(m²·day·force)
   * @param gapUm sealant between the barrier layers of a closed seal, µm
   */
  double edge(double permeability, double gapUm) {
    return permeability * gapUm * edgeRatio * edgeTimes * 1e-12;
  }
}
