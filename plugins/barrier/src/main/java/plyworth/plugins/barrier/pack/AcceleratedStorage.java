package plyworth.plugins.barrier.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plyworth.plugins.barrier.course.Balance;
import plyworth.plugins.barrier.course.Course;
import plyworth.plugins.barrier.course.Mechanism;
import plyworth.plugins.barrier.permeation.BarrierParameters;
import plyworth.plugins.barrier.permeation.Permeant;
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
public record AcceleratedStorage(
    Optional<Mechanism> mechanism, List<Pull> pulls, Optional<Text> refusal) {

  /** A layer that humidity opens this much more in the chamber behaves as another layer. */
  private static final double OPENED = 3;

  private static final List<Double> SHARES = List.of(0.25, 0.5, 0.75, 1.0);

  /**
   * A moment at which samples are taken.
   *
   * @param storageDay day in storage
   * @param chamberDay day in the chamber that stands for it
   */
  public record Pull(double storageDay, double chamberDay) {

    /** How many times faster the chamber is up to here. */
    public double times() {
      return storageDay / chamberDay;
    }
  }

  /** One structure in one climate. */
  private record Place(BarrierModel model, Structure structure, PackBarrier barrier) {

    static Place of(BarrierModel model, Structure structure) {
      return new Place(model, structure, PackBarrier.of(model, structure));
    }

    boolean unknown() {
      return Double.isNaN(barrier.days());
    }

    boolean canLimit(Permeant permeant) {
      return model.demand().canLimit().stream().anyMatch(m -> m.permeant() == permeant);
    }

    double humidityFactor(Layer layer) {
      return model.layers().curve(layer, Permeant.OXYGEN).value(model.climate().within());
    }

    /** The way to the limit that ends the shelf life. */
    Course course(double days) {
      Balance balance = barrier.limiting().orElseThrow().mechanism().balance();
      return balance.course(new FormedPack(model, structure), days);
    }
  }

  /** The chamber of the parameters, for one structure. */
  public static AcceleratedStorage of(BarrierModel model, Structure structure) {
    Place storage = Place.of(model, structure);
    Place chamber = Place.of(model.in(chamber(model.context())), structure);
    return refusal(storage, chamber)
        .map(AcceleratedStorage::refused)
        .orElseGet(() -> accelerated(storage, chamber));
  }

  private static AcceleratedStorage refused(Text reason) {
    return new AcceleratedStorage(Optional.empty(), List.of(), Optional.of(reason));
  }

  private static Climate chamber(ScoringContext context) {
    return new Climate(
        "chamber",
        context.parameter(BarrierParameters.CHAMBER_TEMPERATURE),
        context.parameter(BarrierParameters.CHAMBER_HUMIDITY));
  }

  private static Optional<Text> refusal(Place storage, Place chamber) {
    if (storage.unknown() || chamber.unknown()) {
      return Optional.of(Text.of("refusal.unknown"));
    }
    return dissolves(storage, chamber)
        .or(() -> otherMechanism(storage, chamber))
        .or(() -> opened(storage, chamber));
  }

  /** Crystals that keep dry in storage and dissolve in the chamber show nothing. */
  private static Optional<Text> dissolves(Place storage, Place chamber) {
    if (storage.canLimit(Permeant.WATER) || !chamber.canLimit(Permeant.WATER)) {
      return Optional.empty();
    }
    return storage
        .model()
        .context()
        .brief()
        .product()
        .moisture()
        .map(limit -> limit.isotherm(chamber.model().climate().celsius()))
        .filter(isotherm -> isotherm instanceof Isotherm.Deliquescent)
        .map(isotherm -> 100 * ((Isotherm.Deliquescent) isotherm).deliquescence())
        .map(point -> Text.of("refusal.dissolves", point));
  }

  private static Optional<Text> otherMechanism(Place storage, Place chamber) {
    Optional<PackBarrier.Path> here = storage.barrier().limiting();
    Optional<PackBarrier.Path> there = chamber.barrier().limiting();
    if (here.isEmpty() || here.get().days() == 0) {
      return Optional.of(Text.of("refusal.nothing-to-show"));
    }
    String word = here.get().mechanism().word();
    if (there.isEmpty()) {
      return Optional.of(Text.of("refusal.no-drive", word));
    }
    String other = there.get().mechanism().word();
    return other.equals(word)
        ? Optional.empty()
        : Optional.of(Text.of("refusal.other-mechanism", other, word));
  }

  /** Polymers that the humidity of the chamber opens, where oxygen decides. */
  private static Optional<Text> opened(Place storage, Place chamber) {
    if (storage.barrier().limiting().orElseThrow().mechanism().permeant() != Permeant.OXYGEN) {
      return Optional.empty();
    }
    for (Layer layer : storage.structure().layers()) {
      double times = chamber.humidityFactor(layer) / storage.humidityFactor(layer);
      if (times > OPENED) {
        return Optional.of(Text.of("refusal.opened", layer.material(), times));
      }
    }
    return Optional.empty();
  }

  private static AcceleratedStorage accelerated(Place storage, Place chamber) {
    PackBarrier.Path path = storage.barrier().limiting().orElseThrow();
    double end = Math.min(path.days(), storage.barrier().demand().days());
    Course slow = storage.course(end);
    Course fast = chamber.course(end);
    List<Pull> pulls = new ArrayList<>();
    for (double share : SHARES) {
      double gain = slow.after(share * end) - slow.amounts().get(0);
      double day = fast.dayOf(fast.amounts().get(0) + gain);
      if (Double.isInfinite(day)) {
        return refused(Text.of("refusal.slower"));
      }
      pulls.add(new Pull(share * end, day));
    }
    return new AcceleratedStorage(Optional.of(path.mechanism()), pulls, Optional.empty());
  }
}
