package plyworth.plugins.recyclability;

import java.util.Optional;
import plyworth.shared.material.Material;
import plyworth.shared.quantity.Range;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Structure;

/**
 * What a structure weighs by family, and on which sides of its paper polymer lies.
 *
 * @param gsm grammage by {@link Family}, g/m²
 * @param state the layerwise state, see {@link Ledger}
 * @param unknown the first material whose mass shares are missing or do not add up
 */
record Composition(double[] gsm, double[] state, Optional<String> unknown) {

  /** Shares of a material may miss 1 by this much; more means that something is not declared. */
  private static final double SLACK = 0.01;

  /** Weighs a structure. */
  static Composition of(Structure structure, ScoringContext context) {
    double[] gsm = new double[Family.COUNT];
    double[] state = Ledger.neutral();
    Optional<String> unknown = Optional.empty();
    for (Layer layer : structure.layers()) {
      double[] one = layer(layer, context);
      if (Double.isNaN(one[0]) && unknown.isEmpty()) {
        unknown = Optional.of(context.material(layer).id());
      }
      for (int k = 0; k < gsm.length; k++) {
        gsm[k] += one[k];
      }
      state = Ledger.join(state, Ledger.contribution(one));
    }
    return new Composition(gsm, state, unknown);
  }

  /** Grammage of one layer by {@link Family}, g/m²; NaN throughout when its shares are unknown. */
  static double[] layer(Layer layer, ScoringContext context) {
    double[] shares = shares(context.material(layer), context);
    double gsm = context.grammage(layer);
    for (int k = 0; k < shares.length; k++) {
      shares[k] *= gsm;
    }
    return shares;
  }

  /** Mass shares as drawn, scaled to add up to 1. */
  private static double[] shares(Material material, ScoringContext context) {
    double[] shares = new double[Family.COUNT];
    double typical = 0;
    double drawn = 0;
    for (Family family : Family.values()) {
      Range range = material.figure(family.property(), Double.NaN);
      if (range.known()) {
        typical += range.typical();
        shares[family.ordinal()] = context.property(material, family.property(), Double.NaN);
        drawn += shares[family.ordinal()];
      }
    }
    double scale = Math.abs(typical - 1) <= SLACK && drawn > 0 ? 1 / drawn : Double.NaN;
    for (int k = 0; k < shares.length; k++) {
      shares[k] *= scale;
    }
    return shares;
  }

  /** Total grammage, g/m². */
  double total() {
    double total = 0;
    for (double one : gsm) {
      total += one;
    }
    return total;
  }

  /** Grammage of a family, g/m². */
  double of(Family family) {
    return gsm[family.ordinal()];
  }

  /** Mass share of a family, 0 to 1. */
  double share(Family family) {
    return of(family) / total();
  }
}
