package plyworth.plugins.printmethod;

import java.util.List;
import plyworth.shared.material.PropertyDefinition;
import plyworth.shared.material.PropertyDefinition.Along;
import plyworth.shared.scoring.BlockingRule;
import plyworth.shared.scoring.Criterion;
import plyworth.shared.scoring.Figure;
import plyworth.shared.scoring.Parameter;
import plyworth.shared.scoring.PluginCard;
import plyworth.shared.scoring.Scorer;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.scoring.ScoringPlugin;
import plyworth.shared.scoring.Text;

/** Scores print: lay-down, solvent, drying, and whether the method suits the printed surface. */
public final class PrintMethodPlugin implements ScoringPlugin {

  private static final PluginCard CARD =
      new PluginCard(
          "print-method",
          Text.of("title"),
          "0.1.0",
          List.of(
              Text.of("caution.screening"),
              Text.of("caution.solvent"),
              Text.of("caution.food"),
              Text.of("caution.law")));

  private static final List<PropertyDefinition> PROPERTIES =
      List.of(
          new PropertyDefinition(
              "surface-energy", "mN/m", "property.surface-energy", Along.NOTHING, 10, 100),
          new PropertyDefinition(
              "heat-capacity", "J/(kg.K)", "property.heat-capacity", Along.NOTHING, 100, 5000));

  @Override
  public PluginCard card() {
    return CARD;
  }

  @Override
  public List<PropertyDefinition> properties() {
    return PROPERTIES;
  }

  @Override
  public List<Parameter> parameters() {
    return Parameters.ALL;
  }

  @Override
  public List<Criterion> criteria() {
    return Criteria.ALL;
  }

  @Override
  public List<BlockingRule> blockingRules() {
    return Criteria.RULES;
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
    return new PrintMethodScorer(Contributions.of(Plant.of(context)));
  }
}
