package plyworth.plugins.barrier.pack;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import plyworth.plugins.barrier.climate.BarrierClimates;
import plyworth.plugins.barrier.climate.StorageClimate;
import plyworth.plugins.barrier.course.Demand;
import plyworth.plugins.barrier.permeation.BarrierParameters;
import plyworth.plugins.barrier.permeation.LayerTransmission;
import plyworth.shared.brief.Climate;
import plyworth.shared.brief.Handling;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.scoring.Text;

/**
 * Everything that is fixed for one brief, library, set of parameters and draw.
 *
 * @param context what the plugin may know
 * @param climates climate of storage, and what each layer lets through in it
 * @param pack geometry of the pack
 * @param demand what the brief asks for
 * @param calibration what measurements of today's pack say
 */
public record BarrierModel(
    ScoringContext context,
    BarrierClimates climates,
    PackGeometry pack,
    Demand demand,
    Calibration calibration) {

  /** The model of a context, calibrated on what is known of today's pack. */
  public static BarrierModel of(ScoringContext context) {
    return of(context, Optional.empty());
  }

  /** The same, keeping what layers do not matter to of a model of the same brief. */
  public static BarrierModel again(ScoringContext context, BarrierModel before) {
    return of(context, Optional.of(before.demand));
  }

  private static BarrierModel of(ScoringContext context, Optional<Demand> before) {
    BarrierClimates climates = BarrierClimates.of(context, 1);
    PackGeometry pack = PackGeometry.of(context);
    BarrierModel standard =
        new BarrierModel(context, climates, pack, Demand.of(climates, before), Calibration.NONE);
    return standard.calibrated(Calibration.of(standard));
  }

  private BarrierModel calibrated(Calibration found) {
    BarrierModel shared = found.times() == 1 ? this : with(found.times());
    return new BarrierModel(context, shared.climates, shared.pack, demand, found);
  }

  /** The same pack with damage and seal edge so many times their standard. */
  public BarrierModel with(double times) {
    return new BarrierModel(
        context, BarrierClimates.of(context, times), pack.edgeTimes(times), demand, calibration);
  }

  /** The same packs, as calibrated, with another value of a parameter that no layer depends on. */
  public BarrierModel with(String parameter, double value) {
    return elsewhere(context.with(parameter, value));
  }

  /** The same packs, as calibrated, handled otherwise. */
  public BarrierModel handled(Handling handling) {
    return elsewhere(context.with(context.brief().handled(handling)));
  }

  /** The same packs, as calibrated, in another climate. */
  BarrierModel in(Climate climate) {
    return elsewhere(context.with(context.brief().in(climate)));
  }

  private BarrierModel elsewhere(ScoringContext other) {
    BarrierClimates there = BarrierClimates.of(other, calibration.times());
    PackGeometry packs = PackGeometry.of(other).edgeTimes(pack.edgeTimes());
    return new BarrierModel(other, there, packs, Demand.of(there), calibration);
  }

  /** Climate of storage. */
  public StorageClimate climate() {
    return climates.climate();
  }

  /** What each layer lets through at the storage climate. */
  public LayerTransmission layers() {
    return climates.storage();
  }

  /** The margin below which a candidate is blocked. */
  public double blockMargin() {
    return context.parameter(BarrierParameters.BLOCK_MARGIN);
  }

  /** Criteria that the brief gives no meaning, with the reason. */
  public Map<String, Text> notApplicable() {
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
