package plyworth.plugins.machinability;

import java.util.Set;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.structure.Layer;

/**
 * What sealing and stiffness need to know of one layer; NaN where the library does not say.
 *
 * @param gaugeMm gauge, mm
 * @param modulus modulus in machine direction, MPa
 * @param resistance thermal resistance, m²·K/W
 * @param capacity heat capacity, J/(m²·K)
 * @param initiation seal initiation, °C; {@link Sealing#NO_SEALANT_C} for what does not seal
 * @param upperLimit upper seal limit, °C
 * @param faceLimit hottest jaw face it bears, °C
 * @param kinds its tags
 */
record LayerFigures(
    double gaugeMm,
    double modulus,
    double resistance,
    double capacity,
    double initiation,
    double upperLimit,
    double faceLimit,
    Set<String> kinds) {

  static LayerFigures of(Layer layer, ScoringContext context, Settings settings) {
    Set<String> kinds = context.kinds(layer);
    boolean seals = kinds.contains("sealable");
    double gaugeMm = context.gaugeUm(layer) / 1000;
    double initiation =
        seals ? context.property(layer, Inputs.SEAL_INITIATION) : Sealing.NO_SEALANT_C;
    double heat = context.property(layer, Inputs.HEAT_CAPACITY);
    if (seals && settings.fusionHeat() > 0) {
      double rise = initiation + settings.marginK() - settings.startC();
      heat += settings.fusionHeat() / Math.max(1, rise);
    }
    return new LayerFigures(
        gaugeMm,
        context.property(layer, Inputs.MODULUS),
        gaugeMm / 1000 / context.property(layer, Inputs.CONDUCTIVITY),
        context.grammage(layer) / 1000 * heat,
        initiation,
        seals ? context.property(layer, Inputs.UPPER_SEAL_LIMIT) : settings.startC(),
        context.property(layer, Inputs.JAW_FACE_LIMIT),
        kinds);
  }

  /** Whether the layer is an unwound web. */
  boolean web() {
    return kinds.contains("web");
  }

  /** Whether the layer seals by heat or pressure. */
  boolean seals() {
    return kinds.contains("sealable");
  }

  /** Its transfer matrix; unknown as a whole when one of the two is. */
  Wall wall() {
    double unknown = 0 * (resistance + capacity);
    return Wall.layer(resistance + unknown, capacity + unknown);
  }
}
