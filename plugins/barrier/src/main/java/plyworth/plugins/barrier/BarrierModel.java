package plyworth.plugins.barrier;

import java.util.LinkedHashMap;
import java.util.Map;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.scoring.Text;

/**
 * Everything that is fixed for one brief, library, set of parameters and draw.
 *
 * @param context what the plugin may know
 * @param climate climate of storage
 * @param layers what each layer lets through
 * @param pack geometry of the pack
 * @param demand what the brief asks for
 */
record BarrierModel(
    ScoringContext context,
    StorageClimate climate,
    LayerTransmission layers,
    PackGeometry pack,
    Demand demand) {

  /** The model of a context. */
  static BarrierModel of(ScoringContext context) {
    StorageClimate climate = StorageClimate.of(context.brief());
    return new BarrierModel(
        context,
        climate,
        new LayerTransmission(context, climate),
        PackGeometry.of(context.brief().pack()),
        Demand.of(context.brief(), climate));
  }

  /** The margin below which a candidate is blocked. */
  double blockMargin() {
    return context.parameter(BarrierParameters.BLOCK_MARGIN);
  }

  /** Criteria that the brief gives no meaning, with the reason. */
  Map<String, Text> notApplicable() {
    Map<String, Text> without = new LinkedHashMap<>();
    if (!demand.applies()) {
      without.put(BarrierCriteria.SHELF_LIFE_ID, Text.of("no-limit"));
      without.put(BarrierCriteria.MARGIN_ID, Text.of("no-limit"));
    }
    if (demand.alcohol().isEmpty()) {
      without.put(BarrierCriteria.VOLATILE_LOSS_ID, Text.of("no-volatile"));
    }
    return without;
  }
}
