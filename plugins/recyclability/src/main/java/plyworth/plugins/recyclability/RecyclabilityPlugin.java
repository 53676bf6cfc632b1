package plyworth.plugins.recyclability;

import java.util.Arrays;
import java.util.List;
import plyworth.shared.material.PropertyDefinition;
import plyworth.shared.scoring.BlockingRule;
import plyworth.shared.scoring.Criterion;
import plyworth.shared.scoring.Figure;
import plyworth.shared.scoring.Parameter;
import plyworth.shared.scoring.PluginCard;
import plyworth.shared.scoring.Scorer;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.scoring.ScoringPlugin;
import plyworth.shared.scoring.Text;
import plyworth.shared.scoring.ValueFunction;
import plyworth.shared.scoring.ValueFunction.Point;

/** Recyclability by mass shares and published rule sets of the market. */
public final class RecyclabilityPlugin implements ScoringPlugin {

  /** For the service loader. */
  public RecyclabilityPlugin() {}

  @Override
  public PluginCard card() {
    return new PluginCard(
        "recyclability",
        Text.of("title"),
        "1",
        List.of(
            Text.of("caution.legal"),
            Text.of("caution.proxy"),
            Text.of("caution.food"),
            Text.of("caution.medical")));
  }

  @Override
  public List<PropertyDefinition> properties() {
    return Arrays.stream(Family.values())
        .map(
            family ->
                new PropertyDefinition(
                    family.property(),
                    "1",
                    "property." + family.property(),
                    PropertyDefinition.Along.NOTHING,
                    0,
                    1))
        .toList();
  }

  @Override
  public List<Parameter> parameters() {
    return List.of(
        parameter("enforce-market-access", "", 0, 1),
        parameter("fines-loss", "1", 0.05, 0.3),
        parameter("carry-out", "1", 0.15, 1),
        parameter("carry-out-two-sided", "1", 0.10, 1),
        parameter("carry-out-foil", "1", 0.10, 1),
        parameter("laboratory-certificate", "", 0, 1),
        parameter("take-back-evidence", "", 0, 1),
        parameter("recycled-content", "%", 0, 100));
  }

  private static Parameter parameter(String id, String unit, double standard, double highest) {
    return new Parameter(
        id,
        Text.of("parameter." + id),
        unit,
        standard,
        0,
        highest,
        Text.of("parameter." + id + ".help"));
  }

  @Override
  public List<Criterion> criteria() {
    List<Text> classes =
        List.of(Text.of("class.none"), Text.of("class.c"), Text.of("class.b"), Text.of("class.a"));
    ValueFunction byClass =
        new ValueFunction(
            false,
            List.of(
                new Point(0, 0, "none"),
                new Point(1, 0.4, "C"),
                new Point(2, 0.8, "B"),
                new Point(3, 1, "A")));
    ValueFunction byShare =
        new ValueFunction(
            false,
            List.of(
                new Point(50, 0, "half"),
                new Point(70, 0.4, "grade C"),
                new Point(80, 0.8, "grade B"),
                new Point(95, 1, "grade A")));
    return List.of(
        criterion("class", "", byClass, 1, classes),
        criterion("recyclable-share", "%", byShare, 0, List.of()),
        criterion("target-share", "%", ValueFunction.linear(0, 0, 100, 1), 0, List.of()),
        criterion("fibre-yield", "%", ValueFunction.linear(0, 0, 100, 1), 0, List.of()));
  }

  private static Criterion criterion(
      String id, String unit, ValueFunction value, double weight, List<Text> classes) {
    String key = "criterion." + id;
    return new Criterion(
        id,
        Text.of(key),
        unit,
        "",
        Criterion.Direction.HIGHER,
        value,
        weight,
        classes,
        Text.of(key + ".formula"));
  }

  @Override
  public List<BlockingRule> blockingRules() {
    return List.of(new BlockingRule("market-access", Text.of("blocking.market-access")));
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
  public Scorer bind(ScoringContext context) {
    return RecyclabilityScorer.of(context);
  }
}
