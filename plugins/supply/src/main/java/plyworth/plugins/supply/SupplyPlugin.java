package plyworth.plugins.supply;

import java.util.List;
import plyworth.shared.material.PropertyDefinition;
import plyworth.shared.material.PropertyDefinition.Along;
import plyworth.shared.plant.Plant;
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
 * Scores lead time, passes sent out and surplus webs in the plant of the study, and blocks what the
 * plant cannot make. Without a plant nothing of it applies.
 */
public final class SupplyPlugin implements ScoringPlugin {

  @Override
  public PluginCard card() {
    return new PluginCard(
        "supply",
        Text.of("title"),
        "0.1.0",
        List.of(Text.of("caution.quotations"), Text.of("caution.approval")));
  }

  @Override
  public List<PropertyDefinition> properties() {
    return List.of(
        new PropertyDefinition(Sourcing.PRICE, "EUR/kg", "property.price", Along.GAUGE, 0, 1000));
  }

  @Override
  public List<Parameter> parameters() {
    return List.of(
        new Parameter(
            Demand.WASTE_ALLOWANCE,
            Text.of("parameter.waste-allowance"),
            "1",
            0.1,
            0,
            1,
            Text.of("parameter.waste-allowance.help")));
  }

  @Override
  public List<Criterion> criteria() {
    return Criteria.ALL;
  }

  @Override
  public List<BlockingRule> blockingRules() {
    return Problem.rules();
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
    return context
        .plant()
        .<Scorer>map((Plant plant) -> new SupplyScorer(Floor.of(context, plant)))
        .orElseGet(WithoutPlant::new);
  }
}
