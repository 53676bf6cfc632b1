package plyworth.plugins.supply;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import plyworth.shared.plant.BoughtWeb;
import plyworth.shared.route.ProcessRole;
import plyworth.shared.structure.Layer;

/**
 * The bought web that stands for a layer, or why there is none.
 *
 * @param layer a web, or a part of one
 * @param offer the offer taken: the approved one that is there first; empty when the web is not on
 *     offer
 * @param reach how far the offers go
 * @param neededKg mass that the order takes, kg
 * @param minimumKg least mass delivered, kg; NaN when not known
 * @param price EUR/kg; NaN when not known
 */
record Sourcing(
    Layer layer,
    Optional<BoughtWeb> offer,
    Reach reach,
    double neededKg,
    double minimumKg,
    double price) {

  static final String PRICE = "price";

  /** How far the offers for a layer go. */
  enum Reach {
    /** Nobody offers the material. */
    NO_MATERIAL,
    /** Nobody offers it in the gauge. */
    NO_GAUGE,
    /** Nobody offers that gauge in the width. */
    NO_WIDTH,
    /** Nobody who offers it is approved. */
    NOT_APPROVED,
    /** It can be bought. */
    ON_OFFER
  }

  /** Whether a layer is bought as a web or as a part of one. */
  static boolean concerns(Layer layer, Floor floor) {
    ProcessRole role = floor.context().processes().role(layer);
    return role == ProcessRole.WEB || role == ProcessRole.WEB_PART;
  }

  static Sourcing of(Layer layer, Floor floor) {
    double density = floor.context().material(layer).density();
    List<BoughtWeb> ofMaterial = offers(layer, floor);
    List<BoughtWeb> ofGauge =
        ofMaterial.stream()
            .filter(w -> w.gauges().stream().anyMatch(g -> g.holds(layer, density)))
            .toList();
    List<BoughtWeb> ofWidth =
        ofGauge.stream()
            .filter(w -> w.widthsMm().stream().anyMatch(s -> s.holds(floor.demand().webMm())))
            .toList();
    List<BoughtWeb> approved = ofWidth.stream().filter(BoughtWeb::approved).toList();
    Reach reach = reach(ofMaterial, ofGauge, ofWidth, approved);
    double grammage = floor.context().grammage(layer);
    Optional<BoughtWeb> offer = first(approved.isEmpty() ? ofWidth : approved, grammage);
    return new Sourcing(
        layer,
        offer,
        reach,
        floor.demand().areaM2() * grammage / 1000,
        offer.map(w -> w.minimumOrder().kilograms(grammage)).orElse(Double.NaN),
        floor.context().property(layer, PRICE));
  }

  /** Everybody's offers of a layer's material, as a web or as a part of one. */
  static List<BoughtWeb> offers(Layer layer, Floor floor) {
    String id = floor.context().material(layer).id();
    return floor.plant().webs().stream()
        .filter(w -> w.material().equals(id) && w.process().equals(layer.process()))
        .toList();
  }

  private static Reach reach(
      List<BoughtWeb> ofMaterial,
      List<BoughtWeb> ofGauge,
      List<BoughtWeb> ofWidth,
      List<BoughtWeb> approved) {
    if (ofMaterial.isEmpty()) {
      return Reach.NO_MATERIAL;
    }
    if (ofGauge.isEmpty()) {
      return Reach.NO_GAUGE;
    }
    if (ofWidth.isEmpty()) {
      return Reach.NO_WIDTH;
    }
    return approved.isEmpty() ? Reach.NOT_APPROVED : Reach.ON_OFFER;
  }

  /** The one that is there first; among equals the one with the smaller minimum order. */
  private static Optional<BoughtWeb> first(List<BoughtWeb> offers, double grammage) {
    return offers.stream()
        .min(
            Comparator.comparingDouble(BoughtWeb::leadDays)
                .thenComparingDouble(w -> w.minimumOrder().kilograms(grammage)));
  }

  /** What stands in the way; empty when the web can be bought. */
  Optional<Problem> problem() {
    return switch (reach) {
      case NO_MATERIAL, NO_GAUGE, NO_WIDTH -> Optional.of(Problem.NO_WEB);
      case NOT_APPROVED -> Optional.of(Problem.WEB_NOT_APPROVED);
      case ON_OFFER -> Optional.empty();
    };
  }

  /** Days until it is there; NaN when not known. */
  double leadDays() {
    return offer.map(BoughtWeb::leadDays).orElse(Double.NaN);
  }

  /** Mass left over, kg; NaN when the minimum order is not known. */
  double surplusKg() {
    return Math.max(0, minimumKg - neededKg);
  }

  /** Price of what is left over, EUR; 0 for nothing, whatever its price. */
  double surplusEur() {
    double surplus = surplusKg();
    return surplus == 0 ? 0 : surplus * price;
  }
}
