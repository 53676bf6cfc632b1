package plyworth.plugins.printmethod;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plyworth.shared.scoring.Assessment;
import plyworth.shared.scoring.Explanation;
import plyworth.shared.scoring.Figure;
import plyworth.shared.scoring.Layerwise;
import plyworth.shared.scoring.Outcome;
import plyworth.shared.scoring.Scorer;
import plyworth.shared.scoring.Text;
import plyworth.shared.structure.Structure;

/** Scores the print of one structure. */
record PrintMethodScorer(Contributions contributions) implements Scorer {

  @Override
  public Map<String, Text> notApplicable() {
    return Map.of();
  }

  @Override
  public Assessment score(Structure structure, Map<Figure, Double> needed) {
    PrintJob job = PrintJob.of(structure, contributions);
    return new Assessment(outcomes(job), new Findings(job, contributions).all(), Map.of());
  }

  @Override
  public Explanation explain(Structure structure, Map<Figure, Double> needed) {
    return new Breakdown(PrintJob.of(structure, contributions), contributions).explanation();
  }

  @Override
  public Optional<Layerwise> layerwise() {
    return Optional.of(new PrintMethodLayerwise(contributions));
  }

  private Map<String, Outcome> outcomes(PrintJob job) {
    Contribution total = job.total();
    Missing missing = new Missing(job, contributions.plant().context());
    double suitability = SuitabilityBits.worst(total.bits()).figure();
    Map<String, Outcome> outcomes = new LinkedHashMap<>();
    outcomes.put(
        Criteria.EMITTED,
        Missing.outcome(total.emitted(), List.of(missing::makeUp, missing::control)));
    outcomes.put(Criteria.INPUT, Missing.outcome(total.input(), List.of(missing::makeUp)));
    outcomes.put(
        Criteria.ENERGY,
        Missing.outcome(
            total.energy(),
            List.of(missing::makeUp, missing::curing, () -> missing.ofSurface("heat-capacity"))));
    outcomes.put(Criteria.DRY, Missing.outcome(total.dry(), List.of()));
    outcomes.put(Criteria.WATER, Missing.outcome(total.water(), List.of(missing::makeUp)));
    outcomes.put(
        Criteria.SUITABILITY,
        Missing.outcome(
            suitability, List.of(() -> missing.ofSurface("surface-energy"), missing::makeUp)));
    return outcomes;
  }
}
