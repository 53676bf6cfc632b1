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
 * @param moisture balance of water, when the product has a moisture limit
 * @param oxygen balance of oxygen, when it has an oxygen limit
 * @param alcohol balance of the volatile content, when there is any
 * @param mechanisms all that apply
 */
record Demand(
    double days,
    Optional<MoistureBalance> moisture,
    Optional<OxygenBalance> oxygen,
    Optional<VolatileBalance> alcohol,
    List<Mechanism> mechanisms) {

  /** Shelf life is not promised beyond this many times the brief (common practice). */
  static final double CAP = 3;

  /** The demand of a brief. */
  static Demand of(Brief brief, StorageClimate climate) {
    Optional<MoistureBalance> moisture =
        brief
            .product()
            .moisture()
            .map(limit -> new MoistureBalance(limit, climate.outside(), climate.saturatedPa()));
    Optional<OxygenBalance> oxygen = brief.product().oxygen().map(limit -> OxygenBalance.of(brief));
    Optional<VolatileBalance> alcohol =
        brief
            .product()
            .volatileContent()
            .filter(content -> content.massFraction() > 0)
            .map(content -> VolatileBalance.of(content, climate.celsius()));
    List<Mechanism> mechanisms = new ArrayList<>();
    moisture.ifPresent(m -> mechanisms.add(new Mechanism(Permeant.WATER, m.allowance())));
    oxygen.ifPresent(o -> mechanisms.add(new Mechanism(Permeant.OXYGEN, o.allowance())));
    alcohol.ifPresent(a -> mechanisms.add(new Mechanism(Permeant.ALCOHOL, a.allowance())));
    return new Demand(brief.shelfLifeDays(), moisture, oxygen, alcohol, List.copyOf(mechanisms));
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
        .filter(a -> Double.isNaN(a.vapour().alcoholActivity()))
        .map(a -> new Outcome.DataMissing(a.content().substance(), "vapour-pressure"));
  }
}
