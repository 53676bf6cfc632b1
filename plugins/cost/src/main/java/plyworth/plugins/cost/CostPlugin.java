package plyworth.plugins.cost;

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

/**
 * Scores grammage, the price of the film in the order of the brief, and the cost of 1000 good packs
 * with the packing line included. It never blocks: a dear pack can still be the right one.
 */
public final class CostPlugin implements ScoringPlugin {

  @Override
  public PluginCard card() {
    return new PluginCard(
        "cost",
        Text.of("title"),
        "0.1.0",
        List.of(
            Text.of("caution.screening"),
            Text.of("caution.currency"),
            Text.of("caution.process-figures")));
  }

  @Override
  public List<PropertyDefinition> properties() {
    return List.of(
        new PropertyDefinition(Tariff.PRICE, "EUR/kg", "property.price", Along.GAUGE, 0, 1000),
        new PropertyDefinition(
            Tariff.SUPPLIED_SOLIDS, "1", "property.supplied-solids", Along.NOTHING, 0.01, 1));
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
    return List.of();
  }

  @Override
  public List<Figure> provides() {
    return List.of();
  }

  @Override
  public List<Figure> needs() {
    return List.of(Figure.PACKS_PER_MINUTE);
  }

  @Override
  public Scorer bind(ScoringContext context) {
    return new CostScorer(context);
  }
}
