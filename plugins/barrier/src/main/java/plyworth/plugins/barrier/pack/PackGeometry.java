package plyworth.plugins.barrier.pack;

import plyworth.plugins.barrier.permeation.Leaks;
import plyworth.shared.brief.Pack;
import plyworth.shared.scoring.ScoringContext;

/**
 * The ways out of a pack: its faces, sideways through the sealant in its seals, and open channels.
 *
 * @param faceM2 area of the faces, m²
 * @param edgeRatio length of the sealed edge over the width of the seal
 * @param edgeTimes what the edge lets through over its standard
 * @param leaks open channels
 */
public record PackGeometry(double faceM2, double edgeRatio, double edgeTimes, Leaks leaks) {

  /** The geometry of the pack of a brief; every seal is taken as wide as its end seals. */
  static PackGeometry of(ScoringContext context) {
    Pack pack = context.brief().pack();
    double edgeRatio = pack.sealedEdgeMm() / pack.sealWidthMm();
    return new PackGeometry(pack.faceAreaM2(), edgeRatio, 1, Leaks.of(context));
  }

  /** The same with another seal edge. */
  PackGeometry edgeTimes(double times) {
    return new PackGeometry(faceM2, edgeRatio, times, leaks);
  }

  /**
   * Conductance of the seal edge, amount/(day·force): P · length · gap / width, lateral permeation
   * (form: Vacuum 104 (2014) 70, abstract).
   *
   * @param permeability of the sealant, amount·µm/(m²·day·force)
   * @param gapUm sealant between the barrier layers of a closed seal, µm
   */
  public double edge(double permeability, double gapUm) {
    return permeability * gapUm * edgeRatio * edgeTimes * 1e-12;
  }
}
