package plyworth.plugins.machinability;

import java.util.List;
import java.util.Set;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Structure;

/**
 * All that the figures of a whole structure follow from; NaN where it is unknown.
 *
 * @param tensile tensile stiffness in machine direction, N/mm
 * @param bending bending stiffness in machine direction, N·mm
 * @param wall how it passes heat, outside to inside
 * @param initiation seal initiation of the innermost layer, °C
 * @param upperLimit upper seal limit of the innermost layer, °C
 * @param faceLimit hottest jaw face that its outside bears, °C
 * @param sealantUm gauge of the sealable layers that lie together at the inside, µm
 * @param attacks attack rules that fired, as a set
 */
record LaminateState(
    double tensile,
    double bending,
    Wall wall,
    double initiation,
    double upperLimit,
    double faceLimit,
    double sealantUm,
    long attacks) {

  /** The state of a whole structure, worked out over all layers at once. */
  static LaminateState of(
      Structure structure,
      ScoringContext context,
      Settings settings,
      Attack attack,
      SealantGauge gauge) {
    List<LayerFigures> layers =
        structure.layers().stream().map(l -> LayerFigures.of(l, context, settings)).toList();
    Wall wall = Wall.NONE;
    for (LayerFigures layer : layers) {
      wall = wall.then(layer.wall());
    }
    Beam beam = Beam.of(layers);
    LayerFigures innermost = layers.get(layers.size() - 1);
    return new LaminateState(
        beam.tensile(),
        beam.bending(),
        wall,
        innermost.initiation(),
        innermost.upperLimit(),
        faceLimit(layers),
        sealant(layers, gauge),
        attacks(structure, context, attack));
  }

  /**
   * What bears the jaw: the outermost layer of all, and the outermost web under print and varnish.
   */
  static double faceLimit(List<LayerFigures> layers) {
    double web =
        layers.stream()
            .filter(LayerFigures::web)
            .findFirst()
            .map(LayerFigures::faceLimit)
            .orElse(Double.POSITIVE_INFINITY);
    return Math.min(layers.get(0).faceLimit(), web);
  }

  private static double sealant(List<LayerFigures> layers, SealantGauge gauge) {
    double run = 0;
    for (int i = layers.size() - 1; i >= 0; i--) {
      run += gauge.counted(layers.get(i));
      if (!gauge.goesOn(layers.get(i))) {
        break;
      }
    }
    return run;
  }

  private static long attacks(Structure structure, ScoringContext context, Attack attack) {
    long fired = 0;
    Set<String> outer = Set.of();
    for (Layer layer : structure.layers()) {
      Set<String> kinds = context.kinds(layer);
      fired |= attack.fired(AttackRule.Place.ANY, kinds, outer);
      outer = kinds;
    }
    return fired | attack.fired(AttackRule.Place.INNERMOST, outer, Set.of());
  }
}
