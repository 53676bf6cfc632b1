package plyworth.plugins.supply;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plyworth.shared.route.Process;
import plyworth.shared.scoring.Assessment;
import plyworth.shared.scoring.Explanation;
import plyworth.shared.scoring.Explanation.Section;
import plyworth.shared.scoring.Figure;
import plyworth.shared.scoring.Layerwise;
import plyworth.shared.scoring.Outcome;
import plyworth.shared.scoring.Outcome.DataMissing;
import plyworth.shared.scoring.Outcome.Scored;
import plyworth.shared.scoring.Scorer;
import plyworth.shared.scoring.Text;
import plyworth.shared.structure.Structure;

/** Supply, bound to one brief and plant. */
record SupplyScorer(Floor floor) implements Scorer {

  @Override
  public Map<String, Text> notApplicable() {
    return Map.of();
  }

  @Override
  public Assessment score(Structure structure, Map<Figure, Double> needed) {
    Plan plan = Plan.of(structure, floor);
    Map<String, Outcome> outcomes = new LinkedHashMap<>();
    put(outcomes, Criteria.LEAD_TIME, plan.leadDays(), leadMissing(plan));
    double perThousand = floor.demand().perThousand(plan.sentOut());
    put(outcomes, Criteria.SENT_OUT, perThousand, passMissing(plan));
    put(outcomes, Criteria.SURPLUS, plan.surplusKg(), missing(plan, "minimum order"));
    put(outcomes, Criteria.SURPLUS_VALUE, plan.surplusEur(), valueMissing(plan));
    return new Assessment(outcomes, SupplyFindings.of(plan, floor), Map.of());
  }

  private static void put(
      Map<String, Outcome> outcomes, int criterion, double figure, DataMissing otherwise) {
    outcomes.put(
        Criteria.ALL.get(criterion).id(), Double.isNaN(figure) ? otherwise : new Scored(figure));
  }

  /** The process that nobody runs. */
  private static DataMissing passMissing(Plan plan) {
    String process =
        plan.jobs().values().stream()
            .filter(j -> j.centre().isEmpty())
            .map(j -> j.runners().process())
            .map(Process::id)
            .findFirst()
            .orElse("");
    return new DataMissing("@" + process, "machine or service");
  }

  private static DataMissing leadMissing(Plan plan) {
    return Double.isNaN(plan.passDays()) ? passMissing(plan) : missing(plan, "lead time");
  }

  private static DataMissing valueMissing(Plan plan) {
    return missing(plan, Double.isNaN(plan.surplusKg()) ? "minimum order" : Sourcing.PRICE);
  }

  /** The first web that lacks it. */
  private static DataMissing missing(Plan plan, String what) {
    String material =
        plan.webs().stream()
            .filter(w -> Double.isNaN(lacking(w, what)))
            .map(w -> w.layer().material())
            .findFirst()
            .orElse("");
    return new DataMissing(material, what);
  }

  private static double lacking(Sourcing web, String what) {
    return switch (what) {
      case "lead time" -> web.leadDays();
      case Sourcing.PRICE -> web.surplusEur();
      default -> web.surplusKg();
    };
  }

  @Override
  public Explanation explain(Structure structure, Map<Figure, Double> needed) {
    Plan plan = Plan.of(structure, floor);
    List<Section> sections = new ArrayList<>();
    sections.add(PlanTables.route(plan, floor));
    sections.add(PlanTables.leadTime(plan));
    sections.add(PlanTables.webs(plan));
    PlanTables.refusals(plan).ifPresent(sections::add);
    return new Explanation(sections);
  }

  @Override
  public Optional<Layerwise> layerwise() {
    return Optional.of(new SupplyLayers(floor));
  }
}
