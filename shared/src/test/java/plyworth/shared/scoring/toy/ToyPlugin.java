package plyworth.shared.scoring.toy;

import java.util.List;
import plyworth.shared.material.PropertyDefinition;
import plyworth.shared.scoring.BlockingRule;
import plyworth.shared.scoring.Criterion;
import plyworth.shared.scoring.Criterion.Direction;
import plyworth.shared.scoring.Figure;
import plyworth.shared.scoring.Parameter;
import plyworth.shared.scoring.PluginCard;
import plyworth.shared.scoring.Scorer;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.scoring.ScoringPlugin;
import plyworth.shared.scoring.Text;
import plyworth.shared.scoring.ValueFunction;

/** A plugin that keeps to every rule and uses every part of the interface. */
public class ToyPlugin implements ScoringPlugin {

  static final String PRICE = "price";
  static final String SPEED = "speed";
  static final String HEAVIEST = "heaviest";

  @Override
  public PluginCard card() {
    return new PluginCard("toy", Text.of("title"), "1", List.of(Text.of("caution")));
  }

  @Override
  public List<PropertyDefinition> properties() {
    return List.of(
        new PropertyDefinition(
            PRICE, "EUR/kg", "price of the material", PropertyDefinition.Along.GAUGE, 0, 1e4));
  }

  @Override
  public List<Parameter> parameters() {
    return List.of(
        new Parameter(SPEED, Text.of("speed"), "packs/min", 40, 1, 200, Text.of("speed.help")),
        new Parameter(
            HEAVIEST, Text.of("heaviest"), "g/m2", 150, 1, 5000, Text.of("heaviest.help")));
  }

  @Override
  public List<Criterion> criteria() {
    return List.of(
        criterion("mass", "g/m2", Direction.LOWER, ValueFunction.linear(40, 1, 200, 0)),
        criterion("price", "EUR/m2", Direction.LOWER, ValueFunction.logarithmic(0.05, 1, 1, 0)),
        criterion("flow", "g/min", Direction.HIGHER, ValueFunction.linear(0, 0, 9000, 1)),
        criterion("loss", "g/m2", Direction.LOWER, ValueFunction.linear(0, 1, 50, 0)),
        new Criterion(
            "opacity",
            Text.of("opacity"),
            "",
            "",
            Direction.HIGHER,
            ValueFunction.linear(0, 0, 1, 1),
            1,
            List.of(Text.of("opacity.clear"), Text.of("opacity.opaque")),
            Text.of("formula")));
  }

  private static Criterion criterion(
      String id, String unit, Direction direction, ValueFunction value) {
    return new Criterion(
        id, Text.of(id), unit, "", direction, value, 1, List.of(), Text.of("formula"));
  }

  @Override
  public List<BlockingRule> blockingRules() {
    return List.of(new BlockingRule("too-heavy", Text.of("rule.too-heavy")));
  }

  @Override
  public List<Figure> provides() {
    return List.of(Figure.SKELETON_WASTE);
  }

  @Override
  public List<Figure> needs() {
    return List.of(Figure.PACKS_PER_MINUTE);
  }

  @Override
  public Scorer bind(ScoringContext context) {
    return new ToyScorer(context);
  }
}
