package plyworth.plugins.cost;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plyworth.shared.data.Choice;
import plyworth.shared.scoring.Assessment;
import plyworth.shared.scoring.Explanation;
import plyworth.shared.scoring.Figure;
import plyworth.shared.scoring.Finding;
import plyworth.shared.scoring.Layerwise;
import plyworth.shared.scoring.Outcome;
import plyworth.shared.scoring.Outcome.DataMissing;
import plyworth.shared.scoring.Outcome.Scored;
import plyworth.shared.scoring.Scorer;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.scoring.Text;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Structure;

/** Cost, bound to one brief. */
final class CostScorer implements Scorer {

  private final Tariff tariff;
  private final boolean speedProvided;

  CostScorer(ScoringContext context) {
    tariff = new Tariff(context);
    speedProvided = context.available().contains(Figure.PACKS_PER_MINUTE);
  }

  @Override
  public Map<String, Text> notApplicable() {
    return Map.of();
  }

  @Override
  public Assessment score(Structure structure, Map<Figure, Double> needed) {
    Bill bill = Bill.of(structure, tariff, tariff.brief().order().packs());
    return new Assessment(
        outcomes(structure, bill, packsPerMinute(needed)), findings(structure, bill), Map.of());
  }

  /** Packs per minute and lane; NaN when the plugin that provides it does not know. */
  private double packsPerMinute(Map<Figure, Double> needed) {
    return FillingLine.runnable(
        speedProvided
            ? needed.getOrDefault(Figure.PACKS_PER_MINUTE, Double.NaN)
            : tariff.context().parameter(Parameters.PACKS_PER_MINUTE));
  }

  private Map<String, Outcome> outcomes(Structure structure, Bill bill, double packsPerMinute) {
    FillingLine line = new FillingLine(tariff.brief().machine());
    double film = bill.pricePerThousand();
    double packed = line.perThousandGood(film, line.perThousand(packsPerMinute));
    double gauge = 0;
    for (Layer layer : structure.layers()) {
      gauge += tariff.context().gaugeUm(layer);
    }
    double[] figures = new double[Criteria.ALL.size()];
    figures[Criteria.PACKED] = packed;
    figures[Criteria.PRICE_PER_1000] = film;
    figures[Criteria.PRICE_PER_1000_M2] = bill.pricePerThousandM2();
    figures[Criteria.GRAMMAGE] = bill.grammage();
    figures[Criteria.GAUGE] = gauge;
    figures[Criteria.YIELD] = 1000 / bill.grammage();
    Optional<DataMissing> missing = MissingData.of(bill, tariff);
    Map<String, Outcome> outcomes = new LinkedHashMap<>();
    for (int c = 0; c < figures.length; c++) {
      outcomes.put(Criteria.ALL.get(c).id(), outcome(figures[c], missing));
    }
    return outcomes;
  }

  private static Outcome outcome(double figure, Optional<DataMissing> missing) {
    if (Double.isNaN(figure)) {
      String speed = Choice.plain(Figure.PACKS_PER_MINUTE);
      return missing.orElse(new DataMissing(speed, speed));
    }
    return new Scored(figure);
  }

  private List<Finding> findings(Structure structure, Bill bill) {
    List<Finding> findings = new ArrayList<>(AppliedWeight.findings(structure, bill, tariff));
    RecalledInput.finding(bill, tariff).ifPresent(findings::add);
    LaneStep.finding(tariff.brief()).ifPresent(findings::add);
    if (!speedProvided) {
      double assumed = tariff.context().parameter(Parameters.PACKS_PER_MINUTE);
      findings.add(
          new Finding(
              Finding.Level.INFORMS,
              "line-speed-assumed",
              Text.of("finding.line-speed-assumed", assumed),
              "common practice"));
    }
    return findings;
  }

  @Override
  public Explanation explain(Structure structure, Map<Figure, Double> needed) {
    return CostExplanation.of(structure, tariff, packsPerMinute(needed));
  }

  @Override
  public Optional<Layerwise> layerwise() {
    return Optional.of(new CostLayers(tariff, speedProvided));
  }
}
