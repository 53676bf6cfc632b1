package plyworth.plugins.supply;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import plyworth.shared.brief.Brief;
import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.plant.Plant;
import plyworth.shared.route.ProcessLibrary;
import plyworth.shared.scoring.Assessment;
import plyworth.shared.scoring.Draw;
import plyworth.shared.scoring.Explanation;
import plyworth.shared.scoring.Finding;
import plyworth.shared.scoring.SampleBriefs;
import plyworth.shared.scoring.SamplePlants;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.structure.LayerNotation;

/**
 * Two million sugar sticks: lane 48 mm by 120 mm, 20 lanes on a web of 1000 mm, so that 12 000 m²
 * leave slitting and 13 200 m² are bought and run.
 *
 * @param brief the brief
 * @param plant who makes it
 */
record Order(Brief brief, Plant plant) {

  static final double AREA_M2 = 13_200;

  static Order sticks() {
    return new Order(SampleBriefs.sugarStick(), SamplePlants.mill());
  }

  /** The same with another web and other colours. */
  Order on(double motherWebMm, double newColours) {
    plyworth.shared.brief.Order order = brief.order();
    return new Order(
        new Brief(
            brief.product(),
            brief.climate(),
            brief.shelfLifeDays(),
            brief.pack(),
            brief.machine(),
            brief.market(),
            new plyworth.shared.brief.Order(
                order.packs(), order.orders(), newColours, motherWebMm, order.edgeTrimMm())),
        plant);
  }

  Order of(double packs) {
    return new Order(brief.ordering(packs), plant);
  }

  ScoringContext context() {
    Map<String, Double> parameters = new LinkedHashMap<>();
    new SupplyPlugin().parameters().forEach(p -> parameters.put(p.id(), p.standard()));
    return new ScoringContext(
            brief,
            MaterialLibrary.standard(),
            ProcessLibrary.standard(),
            parameters,
            Set.of(),
            Draw.TYPICAL)
        .in(plant);
  }

  Assessment score(String structure) {
    return new SupplyPlugin()
        .bind(context())
        .score(LayerNotation.readStructure(structure), Map.of());
  }

  Explanation explain(String structure) {
    return new SupplyPlugin()
        .bind(context())
        .explain(LayerNotation.readStructure(structure), Map.of());
  }

  /** Keys of the sentences of the findings that block. */
  List<String> blocks(String structure) {
    return score(structure).findings().stream()
        .filter(f -> f.level() == Finding.Level.BLOCKS)
        .map(f -> f.text().key())
        .toList();
  }

  /** What a finding tells: the arguments of its sentence. */
  List<Object> told(String structure, String key) {
    return score(structure).findings().stream()
        .filter(f -> f.text().key().equals(key))
        .map(f -> f.text().arguments())
        .collect(Collectors.collectingAndThen(Collectors.toList(), all -> all.get(0)));
  }
}
