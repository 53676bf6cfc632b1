package plyworth.plugins.barrier.course;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plyworth.plugins.barrier.climate.BarrierClimates;
import plyworth.plugins.barrier.climate.SeasonFactors;
import plyworth.plugins.barrier.climate.Seasons;
import plyworth.plugins.barrier.climate.StorageClimate;
import plyworth.plugins.barrier.permeation.BarrierParameters;
import plyworth.plugins.barrier.permeation.Permeant;
import plyworth.shared.brief.Brief;
import plyworth.shared.scoring.Outcome;

/**
 * What a brief asks of the pack.
 *
 * @param days shelf life asked for
 * @param alcohol balance of the volatile content, when there is any
 * @param mechanisms all ways in which the product can reach a limit
 */
public record Demand(double days, Optional<VolatileBalance> alcohol, List<Mechanism> mechanisms) {

  /** The demand of a brief. */
  public static Demand of(BarrierClimates climates) {
    return of(climates, Optional.empty());
  }

  /**
   * The demand of a brief in another world.
   *
   * @param before the demand in some world, of which is kept what layers do not matter to
   */
  public static Demand of(BarrierClimates climates, Optional<Demand> before) {
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
  public boolean applies() {
    return !mechanisms.isEmpty();
  }

  /** The mechanisms that some pack could fail by. */
  public List<Mechanism> canLimit() {
    return mechanisms.stream().filter(Mechanism::canLimit).toList();
  }

  /** The longest shelf life that is reported, days. */
  public double cap() {
    return BarrierParameters.CAP * days;
  }

  /** What is missing to judge the volatile content, whatever the pack. */
  public Optional<Outcome.DataMissing> missing() {
    return alcohol
        .filter(a -> !a.known())
        .map(a -> new Outcome.DataMissing(a.content().substance(), "vapour-pressure"));
  }
}
