package plyworth.plugins.recyclability;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import plyworth.shared.scoring.Assessment;
import plyworth.shared.scoring.Explanation;
import plyworth.shared.scoring.Figure;
import plyworth.shared.scoring.Layerwise;
import plyworth.shared.scoring.Outcome;
import plyworth.shared.scoring.Scorer;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.scoring.Text;
import plyworth.shared.structure.Structure;

/** The plugin bound to one brief. */
record RecyclabilityScorer(ScoringContext context, Judge judge) implements Scorer {

  private static final List<String> CRITERIA =
      List.of("class", "recyclable-share", "target-share", "fibre-yield");

  /** The criteria that need the rules of a region. */
  private static final List<String> BY_REGION = List.of("class", "recyclable-share");

  static RecyclabilityScorer of(ScoringContext context) {
    Judge judge =
        new Judge(
            Proxy.STANDARD,
            Region.named(context.brief().market().region()),
            FibreYield.of(context),
            context.brief().market().endYear(),
            context.parameter("enforce-market-access") >= 1);
    return new RecyclabilityScorer(context, judge);
  }

  @Override
  public Map<String, Text> notApplicable() {
    Map<String, Text> reasons = new LinkedHashMap<>();
    if (judge.region().isEmpty()) {
      Text why =
          Text.of(
              "region.unknown",
              context.brief().market().region(),
              String.join(", ", Region.known()));
      BY_REGION.forEach(id -> reasons.put(id, why));
    }
    return reasons;
  }

  @Override
  public Assessment score(Structure structure, Map<Figure, Double> needed) {
    Composition composition = Composition.of(structure, context);
    Map<String, Text> notApplicable = notApplicable();
    if (composition.unknown().isPresent()) {
      String material = composition.unknown().get();
      Outcome missing = new Outcome.DataMissing(material, Family.FIBRE.property());
      return new Assessment(
          outcomes(notApplicable, id -> missing),
          List.of(Findings.compositionUnknown(material)),
          Map.of());
    }
    Case scored = Case.of(structure, composition, context, judge);
    return new Assessment(
        outcomes(notApplicable, id -> scored(scored, id)),
        new Findings(scored, judge, context.brief()).all(),
        Map.of());
  }

  private static Map<String, Outcome> outcomes(
      Map<String, Text> notApplicable, Function<String, Outcome> otherwise) {
    Map<String, Outcome> outcomes = new LinkedHashMap<>();
    for (String id : CRITERIA) {
      outcomes.put(
          id,
          notApplicable.containsKey(id)
              ? new Outcome.NotApplicable(notApplicable.get(id))
              : otherwise.apply(id));
    }
    return outcomes;
  }

  private static Outcome scored(Case scored, String id) {
    int at = CRITERIA.indexOf(id);
    Measure measure = RecyclabilityLayerwise.CRITERIA[at];
    return new Outcome.Scored(scored.of(measure) * RecyclabilityLayerwise.FACTORS[at]);
  }

  @Override
  public Explanation explain(Structure structure, Map<Figure, Double> needed) {
    Composition composition = Composition.of(structure, context);
    if (composition.unknown().isPresent()) {
      return new Explanation(
          List.of(
              new Explanation.Note(
                  Text.of("finding.composition-unknown", composition.unknown().get()),
                  Text.of("basis.practice"))));
    }
    Case scored = Case.of(structure, composition, context, judge);
    return new Breakdown(structure, scored, judge, context).explanation();
  }

  @Override
  public Optional<Layerwise> layerwise() {
    return Optional.of(new RecyclabilityLayerwise(context, judge));
  }
}
