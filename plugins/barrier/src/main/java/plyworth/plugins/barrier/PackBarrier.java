package plyworth.plugins.barrier;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Structure;

/**
 * The barrier of one structure and of the pack made of it.
 *
 * @param otr oxygen transmission rate, flat, cm³/(m²·day·bar) at 23 °C 50 % RH
 * @param wvtr water vapour transmission rate, flat, g/(m²·day) at 38 °C 90 % RH
 * @param light class of light
 * @param volatileLoss loss of the volatile content over the shelf life, % of the charge; NaN when
 *     unknown or without one
 * @param paths one for every mechanism that applies
 * @param demand what the brief asks for
 */
record PackBarrier(
    double otr, double wvtr, int light, double volatileLoss, List<Path> paths, Demand demand) {

  /**
   * The way of one permeant out of, or into, the pack.
   *
   * @param mechanism what it leads to
   * @param face conductance of the faces, amount/(day·force)
   * @param edge conductance of the seal edge, amount/(day·force)
   * @param water conductance of the whole pack to water, g/(day·Pa)
   * @param life when the limit is reached
   */
  record Path(Mechanism mechanism, double face, double edge, double water, Life life) {

    /** Conductance of the pack: faces plus edge. */
    double total() {
      return face + edge;
    }

    /** The most days, as far as the conductances at the storage climate show. */
    double atMost() {
      return mechanism.balance().atMost(total(), water);
    }

    /** Days until the limit; infinite when the climate never drives the product there. */
    double days() {
      return life.days();
    }
  }

  /**
   * The barrier of a structure: layers in series, 1/TR = Σ L/P + Σ 1/TR of the layers given as a
   * whole (standard; confirmed for three layers by Polymer Journal 36 (2004) 386).
   */
  static PackBarrier of(BarrierModel model, Structure structure) {
    PackConductance pack = conductance(model, structure);
    List<Path> paths =
        model.demand().mechanisms().stream().map(m -> path(model, structure, m, pack)).toList();
    return new PackBarrier(
        1 / flatResistance(model, structure, Permeant.OXYGEN),
        1 / flatResistance(model, structure, Permeant.WATER),
        light(model, structure),
        model
            .demand()
            .alcohol()
            .map(a -> a.lossPercent(pack, model.demand().days()))
            .orElse(Double.NaN),
        paths,
        model.demand());
  }

  private static double flatResistance(BarrierModel model, Structure structure, Permeant permeant) {
    double sum = 0;
    for (Layer layer : structure.layers()) {
      sum += 1 / model.layers().flat(layer, permeant);
    }
    return sum;
  }

  private static Path path(
      BarrierModel model, Structure structure, Mechanism mechanism, PackConductance pack) {
    Permeant permeant = mechanism.permeant();
    double face = face(model, model.layers(), structure, permeant);
    double edge = edge(model, model.layers(), structure, permeant);
    double water =
        face(model, model.layers(), structure, Permeant.WATER)
            + edge(model, model.layers(), structure, Permeant.WATER);
    return new Path(mechanism, face, edge, water, mechanism.life(pack));
  }

  /** Conductance of the pack in any season. */
  static PackConductance conductance(BarrierModel model, Structure structure) {
    return (permeant, season, inside) -> {
      LayerTransmission layers = model.climates().layers(season);
      return face(model, layers, structure, permeant) + edge(model, layers, structure, permeant);
    };
  }

  private static double face(
      BarrierModel model, LayerTransmission layers, Structure structure, Permeant permeant) {
    double resistance = 0;
    Layer outer = null;
    for (Layer layer : structure.layers()) {
      resistance += 1 / layers.inPack(layer, outer, permeant);
      outer = layer;
    }
    return model.pack().faceM2() / resistance;
  }

  private static double edge(
      BarrierModel model, LayerTransmission layers, Structure structure, Permeant permeant) {
    Layer sealant = structure.innermost();
    double gap = 2 * model.context().gaugeUm(sealant);
    return model.pack().edge(layers.asSealant(sealant, permeant), gap);
  }

  private static int light(BarrierModel model, Structure structure) {
    return structure.layers().stream()
        .mapToInt(layer -> LightClass.of(model.context().material(layer).kinds()))
        .max()
        .orElse(LightClass.TRANSPARENT);
  }

  /** Days the product keeps, not capped; NaN when a mechanism is unknown. */
  double days() {
    return paths.stream().mapToDouble(Path::days).reduce(Double.POSITIVE_INFINITY, Math::min);
  }

  /** Shelf life in days, capped at three times the brief. */
  double shelfLife() {
    return Math.min(demand.cap(), days());
  }

  /** Shelf life over the one asked for, capped at three. */
  double margin() {
    return shelfLife() / demand.days();
  }

  /** The mechanism that ends the shelf life among those that are known. */
  Optional<Path> limiting() {
    return known().filter(p -> !Double.isInfinite(p.days())).min(Comparator.comparing(Path::days));
  }

  /**
   * Whether a mechanism that is known keeps the product for less than a margin, as far as the
   * conductance at the storage climate shows it for certain.
   */
  boolean failsBelow(double margin) {
    return known()
        .filter(p -> p.mechanism().canLimit())
        .map(Path::atMost)
        .anyMatch(days -> days < margin * demand.days());
  }

  private Stream<Path> known() {
    return paths.stream().filter(p -> !Double.isNaN(p.days()));
  }

  /** Whether more of the volatile content leaves than is allowed, for certain. */
  boolean losesTooMuch() {
    return alcohol()
        .filter(p -> p.mechanism().canLimit() && p.atMost() < demand.days())
        .isPresent();
  }

  /** The path of a permeant, when it matters to the brief. */
  Optional<Path> path(Permeant permeant) {
    return paths.stream().filter(p -> p.mechanism().permeant() == permeant).findFirst();
  }

  /** The path of the volatile content, when there is any. */
  Optional<Path> alcohol() {
    return paths.stream().filter(p -> p.mechanism().permeant().alcohol()).findFirst();
  }

  /** The permeants whose layers are worth showing: oxygen, water, and what else matters. */
  List<Permeant> permeants() {
    List<Permeant> shown = new ArrayList<>(List.of(Permeant.OXYGEN, Permeant.WATER));
    alcohol().ifPresent(p -> shown.add(p.mechanism().permeant()));
    return shown;
  }
}
