package plyworth.plugins.barrier;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plyworth.shared.brief.Brief;
import plyworth.shared.brief.Climate;
import plyworth.shared.brief.Isotherm;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.scoring.Text;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Structure;

/**
 * Storage in a chamber that brings the product of this very pack as far as the brief's storage
 * does, by the same model at both climates and never by a fixed factor.
 *
 * @param mechanism what ends the shelf life, in storage and in the chamber; empty when refused
 * @param pulls when to take samples; none when refused
 * @param refusal why no such time can be given
 */
record AcceleratedStorage(Optional<Mechanism> mechanism, List<Pull> pulls, Optional<Text> refusal) {

  /** A layer that humidity opens this much more in the chamber behaves as another layer. */
  private static final double OPENED = 3;

  private static final List<Double> SHARES = List.of(0.25, 0.5, 0.75, 1.0);

  /**
   * A moment at which samples are taken.
   *
   * @param storageDay day in storage
   * @param chamberDay day in the chamber that stands for it
   */
  record Pull(double storageDay, double chamberDay) {

    /** How many times faster the chamber is up to here. */
    double times() {
      return storageDay / chamberDay;
    }
  }

  /** The chamber of the parameters, for one structure. */
  static AcceleratedStorage of(BarrierModel model, Structure structure, PackBarrier storage) {
    BarrierModel chamber = BarrierModel.of(inChamber(model.context()));
    PackBarrier there = PackBarrier.of(chamber, structure);
    return refusal(model, chamber, structure, storage, there)
        .map(reason -> new AcceleratedStorage(Optional.empty(), List.of(), Optional.of(reason)))
        .orElseGet(() -> accelerated(model, chamber, structure, storage, there));
  }

  private static ScoringContext inChamber(ScoringContext context) {
    Brief brief = context.brief();
    Climate climate =
        new Climate(
            "chamber",
            context.parameter(BarrierParameters.CHAMBER_TEMPERATURE),
            context.parameter(BarrierParameters.CHAMBER_HUMIDITY));
    return new ScoringContext(
        new Brief(
            brief.product(),
            climate,
            brief.shelfLifeDays(),
            brief.pack(),
            brief.machine(),
            brief.market(),
            brief.order(),
            brief.handling()),
        context.materials(),
        context.processes(),
        context.parameters(),
        context.available(),
        context.draw(),
        context.today());
  }

  private static Optional<Text> refusal(
      BarrierModel model,
      BarrierModel chamber,
      Structure structure,
      PackBarrier storage,
      PackBarrier there) {
    if (Double.isNaN(storage.days()) || Double.isNaN(there.days())) {
      return Optional.of(Text.of("refusal.unknown"));
    }
    return dissolves(model, chamber)
        .or(() -> otherMechanism(storage, there))
        .or(() -> opened(model, chamber, structure, storage));
  }

  /** Crystals that keep dry in storage and dissolve in the chamber show nothing. */
  private static Optional<Text> dissolves(BarrierModel model, BarrierModel chamber) {
    return model
        .context()
        .brief()
        .product()
        .moisture()
        .filter(limit -> limit.isotherm() instanceof Isotherm.Deliquescent)
        .map(limit -> ((Isotherm.Deliquescent) limit.isotherm()).deliquescence())
        .filter(point -> chamber.climate().outside() > point)
        .filter(point -> !canLimit(model, Permeant.WATER))
        .map(point -> Text.of("refusal.dissolves", 100 * point));
  }

  private static boolean canLimit(BarrierModel model, Permeant permeant) {
    return model.demand().canLimit().stream().anyMatch(m -> m.permeant() == permeant);
  }

  private static Optional<Text> otherMechanism(PackBarrier storage, PackBarrier there) {
    Optional<PackBarrier.Path> here = storage.limiting();
    Optional<PackBarrier.Path> chamber = there.limiting();
    if (here.isEmpty() || here.get().days() == 0) {
      return Optional.of(Text.of("refusal.nothing-to-show"));
    }
    Mechanism mechanism = here.get().mechanism();
    if (chamber.isEmpty()) {
      return Optional.of(Text.of("refusal.no-drive", mechanism.word()));
    }
    String other = chamber.get().mechanism().word();
    return other.equals(mechanism.word())
        ? Optional.empty()
        : Optional.of(Text.of("refusal.other-mechanism", other, mechanism.word()));
  }

  /** Polymers that the humidity of the chamber opens, where oxygen decides. */
  private static Optional<Text> opened(
      BarrierModel model, BarrierModel chamber, Structure structure, PackBarrier storage) {
    if (storage.limiting().orElseThrow().mechanism().permeant() != Permeant.OXYGEN) {
      return Optional.empty();
    }
    for (Layer layer : structure.layers()) {
      double times = humidityFactor(chamber, layer) / humidityFactor(model, layer);
      if (times > OPENED) {
        return Optional.of(Text.of("refusal.opened", layer.material(), times));
      }
    }
    return Optional.empty();
  }

  private static double humidityFactor(BarrierModel model, Layer layer) {
    return model.layers().humidityFactor(layer, Permeant.OXYGEN, model.climate().withinPercent());
  }

  private static AcceleratedStorage accelerated(
      BarrierModel model,
      BarrierModel chamber,
      Structure structure,
      PackBarrier storage,
      PackBarrier there) {
    PackBarrier.Path path = storage.limiting().orElseThrow();
    double end = Math.min(path.days(), storage.demand().days());
    Course here = path.mechanism().balance().course(PackBarrier.conductance(model, structure), end);
    Course fast =
        there
            .limiting()
            .orElseThrow()
            .mechanism()
            .balance()
            .course(PackBarrier.conductance(chamber, structure), end);
    List<Pull> pulls = new ArrayList<>();
    for (double share : SHARES) {
      double gain = here.after(share * end) - here.amounts().get(0);
      pulls.add(new Pull(share * end, fast.dayOf(fast.amounts().get(0) + gain)));
    }
    if (pulls.stream().anyMatch(pull -> Double.isInfinite(pull.chamberDay()))) {
      return new AcceleratedStorage(
          Optional.empty(), List.of(), Optional.of(Text.of("refusal.slower")));
    }
    return new AcceleratedStorage(Optional.of(path.mechanism()), pulls, Optional.empty());
  }
}
