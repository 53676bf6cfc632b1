package plyworth.plugins.barrier.pack;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import plyworth.plugins.barrier.course.Demand;
import plyworth.plugins.barrier.course.Life;
import plyworth.plugins.barrier.course.Mechanism;
import plyworth.plugins.barrier.permeation.Permeant;
import plyworth.shared.structure.Structure;

/**
 * The barrier of one structure and of the pack made of it.
 *
 * @param otr oxygen transmission rate, flat, cm³/(m²·day·bar) at 23 °C 50 % RH
 * @param wvtr water vapour transmission rate, flat, g/(m²·day) at 38 °C 90 % RH
 * @param packOtr oxygen into the formed and handled pack, cm³/day in air at 23 °C 50 % RH
 * @param packWvtr water into it, mg/day from 38 °C 90 % RH into dry
 * @param leakRisk of leaks at the seals
 * @param light class of light
 * @param volatileLoss loss of the volatile content over the shelf life, % of the charge; NaN when
 *     unknown or without one
 * @param paths one for every mechanism that applies
 * @param demand what the brief asks for
 */
public record PackBarrier(
    double otr,
    double wvtr,
    double packOtr,
    double packWvtr,
    LeakRisk leakRisk,
    int light,
    double volatileLoss,
    List<Path> paths,
    Demand demand) {

  /**
   * The way of one permeant out of, or into, the pack.
   *
   * @param mechanism what it leads to
   * @param terms conductance of the pack at the storage climate
   * @param life when the limit is reached
   * @param mostDays the most days until then that a block allows for
   */
  public record Path(Mechanism mechanism, PackTerms terms, Life life, double mostDays) {

    /** Conductance of the pack. */
    public double total() {
      return terms.total();
    }

    /** Days until the limit; infinite when the climate never drives the product there. */
    public double days() {
      return life.days();
    }
  }

  /** The barrier of a structure. */
  public static PackBarrier of(BarrierModel model, Structure structure) {
    return of(new FormedPack(model, structure));
  }

  /** The barrier of a pack. */
  public static PackBarrier of(FormedPack pack) {
    BarrierModel model = pack.model();
    Structure structure = pack.structure();
    return new PackBarrier(
        FlatSheet.oxygen(model, structure),
        FlatSheet.water(model, structure),
        LaboratoryPack.oxygen(model, structure),
        LaboratoryPack.water(model, structure),
        LeakRisk.of(model, structure),
        light(model, structure),
        model
            .demand()
            .alcohol()
            .map(a -> a.lossPercent(pack, model.demand().days()))
            .orElse(Double.NaN),
        model.demand().mechanisms().stream().map(m -> path(pack, m)).toList(),
        model.demand());
  }

  private static Path path(FormedPack pack, Mechanism mechanism) {
    Permeant permeant = mechanism.permeant();
    Life life = mechanism.life(pack);
    boolean constant = pack.model().climates().seasons().constant();
    double most = constant ? life.days() : mechanism.balance().atMost(pack.tightest(permeant));
    return new Path(mechanism, pack.atStorage(permeant), life, most);
  }

  private static int light(BarrierModel model, Structure structure) {
    return structure.layers().stream()
        .mapToInt(layer -> LightClass.of(model.context().material(layer).kinds()))
        .max()
        .orElse(LightClass.TRANSPARENT);
  }

  /** Days the product keeps, not capped; NaN when a mechanism is unknown. */
  public double days() {
    return paths.stream().mapToDouble(Path::days).reduce(Double.POSITIVE_INFINITY, Math::min);
  }

  /** Shelf life in days, capped at three times the brief. */
  public double shelfLife() {
    return Math.min(demand.cap(), days());
  }

  /** Shelf life over the one asked for, capped at three. */
  public double margin() {
    return shelfLife() / demand.days();
  }

  /** The mechanism that ends the shelf life among those that are known. */
  public Optional<Path> limiting() {
    return known().filter(p -> !Double.isInfinite(p.days())).min(Comparator.comparing(Path::days));
  }

  /**
   * Whether a mechanism that is known keeps the product for less than a margin: in a constant
   * climate by its days; through seasons, which are dear to follow, as far as the tightest
   * conductance at the storage climate shows it for certain.
   */
  public boolean failsBelow(double margin) {
    return known()
        .filter(p -> p.mechanism().canLimit())
        .anyMatch(p -> p.mostDays() < margin * demand.days());
  }

  private Stream<Path> known() {
    return paths.stream().filter(p -> !Double.isNaN(p.days()));
  }

  /** Whether more of the volatile content leaves than is allowed, for certain. */
  public boolean losesTooMuch() {
    return alcohol()
        .filter(p -> p.mechanism().canLimit() && p.mostDays() < demand.days())
        .isPresent();
  }

  /** The path of a permeant, when it matters to the brief. */
  public Optional<Path> path(Permeant permeant) {
    return paths.stream().filter(p -> p.mechanism().permeant() == permeant).findFirst();
  }

  /** The path of the volatile content, when there is any. */
  public Optional<Path> alcohol() {
    return paths.stream().filter(p -> p.mechanism().permeant().alcohol()).findFirst();
  }

  /** The permeants whose layers are worth showing: oxygen, water, and what else matters. */
  public List<Permeant> permeants() {
    List<Permeant> shown = new ArrayList<>(List.of(Permeant.OXYGEN, Permeant.WATER));
    alcohol().ifPresent(p -> shown.add(p.mechanism().permeant()));
    return shown;
  }
}
