package plyworth.plugins.barrier;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plyworth.shared.brief.Brief;
import plyworth.shared.scoring.Outcome;

/**
 * What a brief asks of the pack.
 *
 * @param days shelf life asked for
 * @param alcohol balance of the volatile content, when there is any
 * @param mechanisms all ways in which the product can reach a limit
 */
record Demand(double days, Optional<VolatileBalance> alcohol, List<Mechanism> mechanisms) {

  /** Shelf life is not promised beyond this many times the brief (common practice). */
  static final double CAP = 3;

  /** The demand of a brief. */
  static Demand of(BarrierClimates climates) {
    return of(climates, Optional.empty());
  }

  /**
   * The demand of a brief in another world.
   *
   * @param before the demand in some world, of which is kept what layers do not matter to
   */
  static Demand of(BarrierClimates climates, Optional<Demand> before) {
    Brief brief = climates.context().brief();
    StorageClimate climate = climates.climate();
    Seasons seasons = climates.seasons();
    double halfLife = climates.context().parameter(BarrierParameters.OXYGEN_HALF_LIFE);
    List<Mechanism> mechanisms = new ArrayList<>();
    brief
        .product()
        .moisture()
        .map(
            limit ->
                MoistureBalance.of(
                    limit, brief.pack().headspaceCm3(), seasons, factors(climates, Permeant.WATER)))
        .ifPresent(balance -> mechanisms.add(new Mechanism(Permeant.WATER, balance)));
    brief
        .product()
        .oxygen()
        .map(
            limit ->
                OxygenBalance.of(
                    brief, halfLife, climate.inside(), seasons, factors(climates, Permeant.OXYGEN)))
        .ifPresent(balance -> mechanisms.add(new Mechanism(Permeant.OXYGEN, balance)));
    Optional<VolatileBalance> alcohol =
        brief
            .product()
            .volatileContent()
            .filter(content -> content.massFraction() > 0)
            .map(content -> VolatileBalance.of(content, climates, before.flatMap(Demand::alcohol)));
    alcohol.ifPresent(balance -> mechanisms.add(new Mechanism(balance.permeant(), balance)));
    return new Demand(brief.shelfLifeDays(), alcohol, List.copyOf(mechanisms));
  }

  private static SeasonFactors factors(BarrierClimates climates, Permeant permeant) {
    return SeasonFactors.of(climates, permeant);
  }

  /** Whether anything harms the product. */
  boolean applies() {
    return !mechanisms.isEmpty();
  }

  /** The mechanisms that some pack could fail by. */
  List<Mechanism> canLimit() {
    return mechanisms.stream().filter(Mechanism::canLimit).toList();
  }

  /** The longest shelf life that is reported, days. */
  double cap() {
    return CAP * days;
  }

  /** What is missing to judge the volatile content, whatever the pack. */
  Optional<Outcome.DataMissing> missing() {
    return alcohol
        .filter(a -> !a.known())
        .map(a -> new Outcome.DataMissing(a.content().substance(), "vapour-pressure"));
  }
}
