package plyworth.plugins.barrier;

import java.util.List;
import plyworth.plugins.barrier.pack.BarrierCriteria;
import plyworth.plugins.barrier.pack.BarrierModel;
import plyworth.plugins.barrier.permeation.BarrierParameters;
import plyworth.plugins.barrier.permeation.BarrierProperties;
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

/** Scores oxygen, water vapour and volatile contents against the shelf life of the brief. */
public final class BarrierPlugin implements ScoringPlugin {

  private static final PluginCard CARD =
      new PluginCard(
          BarrierCriteria.PLUGIN,
          Text.of("title"),
          "0.1.0",
          List.of(
              Text.of("caution.screening"),
              Text.of("caution.leaks"),
              Text.of("caution.contact"),
              Text.of("caution.alcohol")));

  /** The plugin as the service loader makes it. */
  public BarrierPlugin() {}

  @Override
  public PluginCard card() {
    return CARD;
  }

  @Override
  public List<PropertyDefinition> properties() {
    return BarrierProperties.all();
  }

  @Override
  public List<Parameter> parameters() {
    return BarrierParameters.all();
  }

  @Override
  public List<Criterion> criteria() {
    return BarrierCriteria.all();
  }

  @Override
  public List<BlockingRule> blockingRules() {
    return BarrierCriteria.rules();
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
    return new BarrierScorer(BarrierModel.of(context));
  }

  @Override
  public Scorer bindAgain(ScoringContext context, Scorer before) {
    return new BarrierScorer(BarrierModel.again(context, ((BarrierScorer) before).model()));
  }
}
