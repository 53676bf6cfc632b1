package plyworth.plugins.barrier;

import java.util.LinkedHashMap;
import java.util.Map;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.scoring.Text;

/**
 * Everything that is fixed for one brief, library, set of parameters and draw.
 *
 * @param context what the plugin may know
 * @param climates climate of storage, and what each layer lets through in it
 * @param pack geometry of the pack
 * @param demand what the brief asks for
 */
record BarrierModel(
    ScoringContext context, BarrierClimates climates, PackGeometry pack, Demand demand) {

  /** The model of a context. */
  static BarrierModel of(ScoringContext context) {
    BarrierClimates climates = BarrierClimates.of(context);
    return new BarrierModel(
        context, climates, PackGeometry.of(context.brief().pack()), Demand.of(climates));
  }

  /** Climate of storage. */
  StorageClimate climate() {
    return climates.climate();
  }

  /** What each layer lets through at the storage climate. */
  LayerTransmission layers() {
    return climates.storage();
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
