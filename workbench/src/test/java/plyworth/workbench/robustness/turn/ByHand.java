package plyworth.workbench.robustness.turn;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plyworth.shared.material.PropertyDefinition;
import plyworth.shared.scoring.Assessment;
import plyworth.shared.scoring.BlockingRule;
import plyworth.shared.scoring.Criterion;
import plyworth.shared.scoring.Explanation;
import plyworth.shared.scoring.Figure;
import plyworth.shared.scoring.Finding;
import plyworth.shared.scoring.Layerwise;
import plyworth.shared.scoring.Outcome;
import plyworth.shared.scoring.Parameter;
import plyworth.shared.scoring.PluginCard;
import plyworth.shared.scoring.Scorer;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.scoring.ScoringPlugin;
import plyworth.shared.scoring.Text;
import plyworth.shared.scoring.ValueFunction;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Structure;
import plyworth.workbench.host.LoadedPlugin;
import plyworth.workbench.host.PluginCatalog;

/**
 * A plugin whose turns follow by hand. The price of the materials, EUR/m², is worth 1 at 0 and 0 at
 * 1; each layer is worth 0.1; the dial, which only structures of several layers feel, is worth 1 at
 * 5 and 0 at 0 and 10, and 0.5 for the others; single layers are blocked where the parameter {@code
 * strict} is 0.5 or more.
 */
record ByHand(ScoringContext context) implements ScoringPlugin, Scorer {

  static final PluginCatalog CATALOG =
      new PluginCatalog(
          Path.of("none"),
          List.of(new LoadedPlugin("hand", new ByHand(null), Path.of("none"))),
          List.of());

  @Override
  public PluginCard card() {
    return new PluginCard("hand", Text.of("t"), "1", List.of(Text.of("t")));
  }

  @Override
  public List<PropertyDefinition> properties() {
    return List.of(
        new PropertyDefinition(
            "price", "EUR/kg", "Price.", PropertyDefinition.Along.GAUGE, 0, 1000));
  }

  @Override
  public List<Parameter> parameters() {
    return List.of(parameter("dial", 1, 9), parameter("strict", 0.1, 1));
  }

  private static Parameter parameter(String id, double standard, double highest) {
    return new Parameter(id, Text.of("t"), "", standard, 0, highest, Text.of("t"));
  }

  @Override
  public List<Criterion> criteria() {
    return List.of(
        criterion("price", ValueFunction.linear(0, 1, 1, 0)),
        criterion("layers", ValueFunction.linear(0, 0, 10, 1)),
        criterion("dial", ValueFunction.linear(0, 0, 5, 1, 10, 0)));
  }

  private static Criterion criterion(String id, ValueFunction value) {
    return new Criterion(
        id,
        Text.of("t"),
        "",
        "",
        Criterion.Direction.HIGHER,
        value,
        1,
        List.of(),
        Text.of("formula"));
  }

  @Override
  public List<BlockingRule> blockingRules() {
    return List.of(new BlockingRule("strict", Text.of("t")));
  }

  @Override
  public List<Figure> provides() {
    return List.of();
  }

  @Override
  public List<Figure> needs() {
    return List.of();
  }

  @Override
  public Scorer bind(ScoringContext bound) {
    return new ByHand(bound);
  }

  @Override
  public Map<String, Text> notApplicable() {
    return Map.of();
  }

  @Override
  public Optional<Layerwise> layerwise() {
    return Optional.empty();
  }

  @Override
  public Assessment score(Structure structure, Map<Figure, Double> needed) {
    double price = 0;
    for (Layer layer : structure.layers()) {
      price += context.property(layer, "price") * context.grammage(layer) / 1000;
    }
    int layers = structure.layers().size();
    double dial = layers > 1 ? context.parameter("dial") : 2.5;
    boolean blocked = layers == 1 && context.parameter("strict") >= 0.5;
    Finding strict = new Finding(Finding.Level.BLOCKS, "strict", Text.of("t"), "made up for tests");
    return new Assessment(
        Map.of(
            "price", new Outcome.Scored(price),
            "layers", new Outcome.Scored(layers),
            "dial", new Outcome.Scored(dial)),
        blocked ? List.of(strict) : List.of(),
        Map.of());
  }

  @Override
  public Explanation explain(Structure structure, Map<Figure, Double> needed) {
    return new Explanation(List.of());
  }
}
