package plyworth.plugins.recyclability;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import plyworth.shared.brief.Brief;
import plyworth.shared.brief.Market;
import plyworth.shared.material.Material;
import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.material.Property;
import plyworth.shared.material.SourceKind;
import plyworth.shared.material.Sourced;
import plyworth.shared.quantity.Range;
import plyworth.shared.route.ProcessLibrary;
import plyworth.shared.scoring.Assessment;
import plyworth.shared.scoring.Draw;
import plyworth.shared.scoring.Explanation;
import plyworth.shared.scoring.Parameter;
import plyworth.shared.scoring.SampleBriefs;
import plyworth.shared.scoring.Scorer;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.structure.LayerNotation;
import plyworth.shared.structure.Structure;

/** The plugin bound to an invented sugar stick in some market, on the standard library. */
record Trial(ScoringContext context) {

  static Trial in(String region) {
    return in(region, 2027, 2035, Map.of());
  }

  static Trial in(String region, int launch, int end, Map<String, Double> set) {
    Brief sugar = SampleBriefs.sugarStick();
    Brief brief =
        new Brief(
            sugar.product(),
            sugar.climate(),
            sugar.shelfLifeDays(),
            sugar.pack(),
            sugar.machine(),
            new Market(region, launch, end),
            sugar.order());
    Map<String, Double> parameters = new HashMap<>();
    for (Parameter parameter : new RecyclabilityPlugin().parameters()) {
      parameters.put(parameter.id(), parameter.standard());
    }
    parameters.putAll(set);
    return new Trial(
        new ScoringContext(
            brief,
            MaterialLibrary.standard().with(List.of(vapourMetal())),
            ProcessLibrary.standard(),
            parameters,
            Set.of(),
            Draw.TYPICAL));
  }

  /** Vapour-deposited aluminium as a layer of its own. */
  private static Material vapourMetal() {
    return new Material(
        "vapour-metal",
        "Vapour-deposited aluminium",
        "aluminium-vapour",
        Set.of("coating"),
        "coating",
        List.of(),
        Map.of(
            Material.DENSITY,
            exactly(Material.DENSITY, "kg/m3", 2700),
            "share-aluminium-vapour",
            exactly("share-aluminium-vapour", "1", 1)),
        "");
  }

  private static Property exactly(String id, String unit, double figure) {
    return new Property(
        id,
        unit,
        List.of(new Sourced(Double.NaN, Range.exactly(figure), SourceKind.JUDGEMENT, "invented")));
  }

  Scorer scorer() {
    return new RecyclabilityPlugin().bind(context);
  }

  Assessment score(String notation) {
    return score(LayerNotation.readStructure(notation));
  }

  Assessment score(Structure structure) {
    return scorer().score(structure, Map.of());
  }

  double figure(String notation, String criterion) {
    return score(notation).figure(criterion);
  }

  Explanation explain(String notation) {
    return scorer().explain(LayerNotation.readStructure(notation), Map.of());
  }

  Composition composition(String notation) {
    return Composition.of(LayerNotation.readStructure(notation), context);
  }

  Case measured(String notation) {
    RecyclabilityScorer bound = (RecyclabilityScorer) scorer();
    Structure structure = LayerNotation.readStructure(notation);
    return Case.of(structure, Composition.of(structure, context), context, bound.judge());
  }

  /** What a rule set of the region says. */
  Verdict verdict(String setId, String notation) {
    Region region = Region.named(context.brief().market().region()).orElseThrow();
    return region.set(setId).orElseThrow().decide(measured(notation).figures());
  }

  /** Fee of a scheme, per 1000 m². */
  double fee(String feeId, String notation) {
    Region region = Region.named(context.brief().market().region()).orElseThrow();
    FeeTable table =
        region.fees().stream().filter(f -> f.id().equals(feeId)).findFirst().orElseThrow();
    return table.per1000m2(composition(notation), verdict(table.set(), notation));
  }
}
