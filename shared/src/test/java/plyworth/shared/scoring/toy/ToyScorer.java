package plyworth.shared.scoring.toy;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plyworth.shared.scoring.Assessment;
import plyworth.shared.scoring.Explanation;
import plyworth.shared.scoring.Figure;
import plyworth.shared.scoring.Finding;
import plyworth.shared.scoring.Layerwise;
import plyworth.shared.scoring.Outcome;
import plyworth.shared.scoring.Scorer;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.scoring.Text;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Structure;

/** Scores mass, price, mass flow, a loss that layerwise is only bounded, and opacity. */
class ToyScorer implements Scorer {

  final ScoringContext context;

  ToyScorer(ScoringContext context) {
    this.context = context;
  }

  @Override
  public Map<String, Text> notApplicable() {
    return context.brief().product().volatileContent().isPresent()
        ? Map.of()
        : Map.of("loss", Text.of("loss.none", context.brief().product().name()));
  }

  @Override
  public Assessment score(Structure structure, Map<Figure, Double> needed) {
    double mass = mass(structure);
    Map<String, Outcome> outcomes = new LinkedHashMap<>();
    outcomes.put("mass", new Outcome.Scored(mass));
    outcomes.put("price", price(structure));
    outcomes.put("flow", flow(mass, needed));
    outcomes.put("loss", loss(mass, structure));
    outcomes.put("opacity", new Outcome.Scored(opaque(structure) ? 1 : 0));
    return new Assessment(outcomes, findings(mass), Map.of(Figure.SKELETON_WASTE, waste()));
  }

  double mass(Structure structure) {
    return structure.layers().stream().mapToDouble(context::grammage).sum();
  }

  private Outcome price(Structure structure) {
    double sum = 0;
    for (Layer layer : structure.layers()) {
      double price = context.property(layer, ToyPlugin.PRICE);
      if (Double.isNaN(price)) {
        return new Outcome.DataMissing(layer.material(), ToyPlugin.PRICE);
      }
      sum += context.grammage(layer) / 1000 * price;
    }
    return new Outcome.Scored(sum);
  }

  private Outcome flow(double mass, Map<Figure, Double> needed) {
    double speed = speed(needed.getOrDefault(Figure.PACKS_PER_MINUTE, Double.NaN));
    return Double.isNaN(speed)
        ? new Outcome.DataMissing("packs per minute", "speed")
        : new Outcome.Scored(mass * speed);
  }

  double speed(double needed) {
    return context.available().contains(Figure.PACKS_PER_MINUTE)
        ? needed
        : context.parameter(ToyPlugin.SPEED);
  }

  /** Not local: depends on the number of layers. */
  private Outcome loss(double mass, Structure structure) {
    Text why = notApplicable().get("loss");
    return why == null
        ? new Outcome.Scored(mass / structure.layers().size())
        : new Outcome.NotApplicable(why);
  }

  private boolean opaque(Structure structure) {
    return structure.layers().stream().anyMatch(l -> context.kinds(l).contains("opaque"));
  }

  List<Finding> findings(double mass) {
    double heaviest = context.parameter(ToyPlugin.HEAVIEST);
    Text text = Text.of("too-heavy", mass, heaviest);
    return mass > heaviest
        ? List.of(new Finding(Finding.Level.BLOCKS, "too-heavy", text, "common practice"))
        : List.of();
  }

  double waste() {
    return 1 - context.brief().layoutEfficiency();
  }

  @Override
  public Explanation explain(Structure structure, Map<Figure, Double> needed) {
    List<List<Object>> rows =
        structure.layers().stream()
            .map(l -> List.<Object>of(l.toString(), context.grammage(l)))
            .toList();
    List<Text> columns = List.of(Text.of("layer"), Text.of("mass"));
    return new Explanation(
        List.of(new Explanation.Table(Text.of("mass"), columns, rows, Text.of("formula"))));
  }

  @Override
  public Optional<Layerwise> layerwise() {
    return Optional.of(new ToyLayerwise(this));
  }
}
