package plyworth.plugins.cost;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import plyworth.shared.brief.Brief;
import plyworth.shared.brief.Climate;
import plyworth.shared.brief.Machine;
import plyworth.shared.brief.Market;
import plyworth.shared.brief.Order;
import plyworth.shared.brief.Pack;
import plyworth.shared.brief.Product;
import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.route.ProcessLibrary;
import plyworth.shared.scoring.Assessment;
import plyworth.shared.scoring.Draw;
import plyworth.shared.scoring.Figure;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.structure.LayerNotation;
import plyworth.shared.structure.Structure;

/** The worked order: two million stick packs, lane 75 mm by 110 mm, web 1.0 m, 13 lanes. */
final class Orders {

  static final Structure FOIL_ROUTE =
      LayerNotation.readStructure(
          "ink 1.4 g/m2 @press / paper 50 g/m2 / ldpe 15 um @lamination / foil 7 um"
              + " / ldpe 25 um @coating");

  private Orders() {}

  static Brief sticks() {
    return brief(33, new Order(2e6, 4, 6, 1000, 10));
  }

  /** Stick packs of a flat width with a lap of 9 mm, on a line of eight lanes. */
  static Brief brief(double widthMm, Order order) {
    Product sugar =
        new Product(
            "sugar",
            Product.Form.CRYSTALS,
            4,
            Set.of(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty());
    Pack stick = new Pack(Pack.Format.STICK, widthMm, 110, 8, 9, 2);
    return new Brief(
        sugar,
        new Climate("room", 23, 50),
        365,
        stick,
        line(),
        new Market("eu", 2026, 2030),
        order);
  }

  private static Machine line() {
    return new Machine(
        "eight-lane line",
        8,
        150,
        5,
        500,
        0.3,
        Machine.SealZone.ONE_ON_TWO,
        0.5,
        5,
        0.2,
        1.5,
        0.1,
        60,
        60,
        0.80,
        0.02);
  }

  static ScoringContext context(Brief brief) {
    return context(brief, Shop.materials(), Shop.plant());
  }

  static ScoringContext context(Brief brief, MaterialLibrary materials, ProcessLibrary plant) {
    Map<String, Double> parameters = new TreeMap<>();
    Parameters.ALL.forEach(p -> parameters.put(p.id(), p.standard()));
    return new ScoringContext(brief, materials, plant, parameters, Set.of(), Draw.TYPICAL);
  }

  static Tariff tariff(Brief brief) {
    return new Tariff(context(brief));
  }

  static Assessment score(ScoringContext context, Structure structure) {
    return new CostPlugin().bind(context).score(structure, Map.<Figure, Double>of());
  }

  static Assessment score(String structure) {
    return score(context(sticks()), LayerNotation.readStructure(structure));
  }
}
