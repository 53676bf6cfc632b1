package plyworth.plugins.machinability;

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

/** Attack on the seal, stiffness, sealing and packs per minute. */
public final class MachinabilityPlugin implements ScoringPlugin {

  /** For the service loader. */
  public MachinabilityPlugin() {}

  @Override
  public PluginCard card() {
    return new PluginCard(
        "machinability",
        Text.of("title"),
        "0.1.0",
        List.of(
            Text.of("caution.screening"),
            Text.of("caution.contact"),
            Text.of("caution.alcohol"),
            Text.of("caution.attack")));
  }

  @Override
  public List<PropertyDefinition> properties() {
    return Inputs.PROPERTIES;
  }

  @Override
  public List<Parameter> parameters() {
    return Inputs.PARAMETERS;
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
    return List.of(Figure.PACKS_PER_MINUTE);
  }

  @Override
  public List<Figure> needs() {
    return List.of();
  }

  @Override
  public Scorer bind(ScoringContext context) {
    return MachinabilityScorer.of(context);
  }
}
