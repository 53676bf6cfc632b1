package plyworth.plugins.machinability;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import plyworth.shared.scoring.Assessment;
import plyworth.shared.scoring.Criterion;
import plyworth.shared.scoring.Explanation;
import plyworth.shared.scoring.Figure;
import plyworth.shared.scoring.Layerwise;
import plyworth.shared.scoring.Outcome;
import plyworth.shared.scoring.Scorer;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.scoring.Text;
import plyworth.shared.structure.Structure;

/**
 * Machinability for one brief.
 *
 * @param context what it is bound to
 * @param settings machine, pack and parameters
 * @param agents what in the product can attack
 * @param attack the rules for those
 * @param gauge how thick the sealant must be
 * @param band what the machine type takes
 * @param judge what turns states into figures
 */
record MachinabilityScorer(
    ScoringContext context,
    Settings settings,
    Set<Agent> agents,
    Attack attack,
    SealantGauge gauge,
    MachineBand band,
    Judge judge)
    implements Scorer {

  static MachinabilityScorer of(ScoringContext context) {
    Set<Agent> agents = Agent.in(context.brief().product());
    Settings settings = Settings.of(context);
    Attack attack = Attack.by(agents);
    return new MachinabilityScorer(
        context,
        settings,
        agents,
        attack,
        SealantGauge.of(context.brief().pack().format(), agents),
        MachineBand.of(context.brief().pack().format()),
        new Judge(settings, attack));
  }

  @Override
  public Map<String, Text> notApplicable() {
    return agents.isEmpty() ? Map.of(Criteria.ATTACK, Text.of("attack.no-agent")) : Map.of();
  }

  @Override
  public Assessment score(Structure structure, Map<Figure, Double> needed) {
    LaminateState state = state(structure);
    Verdict verdict = verdict(state);
    double[] figures = MachinabilityLayerwise.figures(state.tensile(), state.bending(), verdict);
    Missing missing = new Missing(structure, context);
    Map<String, Outcome> outcomes = new LinkedHashMap<>();
    for (int i = 0; i < figures.length; i++) {
      Criterion criterion = Criteria.ALL.get(i);
      outcomes.put(criterion.id(), outcome(criterion.id(), figures[i], missing));
    }
    return new Assessment(
        outcomes,
        new Findings(this, structure, state, verdict).all(),
        Map.of(Figure.PACKS_PER_MINUTE, verdict.packs()));
  }

  @Override
  public Explanation explain(Structure structure, Map<Figure, Double> needed) {
    return new MachinabilityExplanation(this, structure).whole();
  }

  @Override
  public Optional<Layerwise> layerwise() {
    return Optional.of(new MachinabilityLayerwise(context, settings, attack, gauge, judge));
  }

  LaminateState state(Structure structure) {
    return LaminateState.of(structure, context, settings, attack, gauge);
  }

  Verdict verdict(LaminateState state) {
    return judge.verdict(state);
  }

  List<LayerFigures> layers(Structure structure) {
    return structure.layers().stream().map(l -> LayerFigures.of(l, context, settings)).toList();
  }

  private Outcome outcome(String criterion, double figure, Missing missing) {
    Text why = notApplicable().get(criterion);
    if (why != null) {
      return new Outcome.NotApplicable(why);
    }
    return Double.isNaN(figure) ? missing.of(criterion) : new Outcome.Scored(figure);
  }
}
