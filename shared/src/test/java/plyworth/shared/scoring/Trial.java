package plyworth.shared.scoring;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import plyworth.shared.brief.Brief;
import plyworth.shared.plant.Plant;
import plyworth.shared.route.ProcessLibrary;
import plyworth.shared.structure.Structure;

/**
 * A plugin bound to one brief under one state of the world.
 *
 * @param name brief and state of the world, for messages
 * @param plugin the plugin under test
 * @param context what it was bound to
 * @param scorer what it bound
 * @param needed figures of other plugins to hand over
 */
record Trial(
    String name,
    ScoringPlugin plugin,
    ScoringContext context,
    Scorer scorer,
    Map<Figure, Double> needed) {

  private static final Map<Figure, Double> FIGURES =
      Map.of(Figure.PACKS_PER_MINUTE, 55.0, Figure.SKELETON_WASTE, 0.04);

  /** Every brief, with nothing known of today's pack and nothing set. */
  static List<Trial> of(ScoringPlugin plugin, List<Brief> briefs) {
    return of(plugin, briefs, Today.UNKNOWN, Optional.empty(), Map.of());
  }

  /** Every brief: needed figures at hand, absent, unknown, and at hand under a random draw. */
  static List<Trial> of(
      ScoringPlugin plugin,
      List<Brief> briefs,
      Today today,
      Optional<Plant> plant,
      Map<String, Double> settings) {
    List<Trial> trials = new ArrayList<>();
    for (Brief brief : briefs) {
      ScoringContext atHand = context(plugin, brief, today, plant, settings);
      trials.add(bind("figures at hand", plugin, atHand, known(plugin)));
      trials.add(bind("figures absent", plugin, without(atHand), Map.of()));
      trials.add(bind("figures unknown", plugin, atHand, unknown(plugin)));
      trials.add(bind("random draw", plugin, atHand.with(Draw.random(7)), known(plugin)));
      trials.add(another("another draw", plugin, atHand, Draw.random(9)));
    }
    return trials;
  }

  /** Bound to one draw, and from there to another. */
  private static Trial another(
      String name, ScoringPlugin plugin, ScoringContext context, Draw draw) {
    ScoringContext there = context.with(draw);
    Scorer scorer = plugin.bindAgain(there, plugin.bind(context));
    return new Trial(name, plugin, there, scorer, known(plugin));
  }

  /** Bound anew to the same. */
  Trial again() {
    return bind("bound again", plugin, context, needed);
  }

  /** Bound with one parameter changed. */
  Trial with(Parameter parameter, double value) {
    ScoringContext other = context.with(parameter.id(), value);
    return bind(parameter.id() + " = " + value, plugin, other, needed);
  }

  Assessment score(Structure structure) {
    return scorer.score(structure, needed);
  }

  Explanation explain(Structure structure) {
    return scorer.explain(structure, needed);
  }

  /** What a message says of a structure under this trial. */
  String of(Structure structure) {
    return name + ", " + structure;
  }

  /** The needed figures in declared order; NaN for those that are absent. */
  double[] neededColumn() {
    return plugin.needs().stream().mapToDouble(f -> needed.getOrDefault(f, Double.NaN)).toArray();
  }

  private static Trial bind(
      String world, ScoringPlugin plugin, ScoringContext context, Map<Figure, Double> needed) {
    String name = plugin.card().id() + ", " + context.brief().product().name() + ", " + world;
    return new Trial(name, plugin, context, plugin.bind(context), needed);
  }

  private static ScoringContext context(
      ScoringPlugin plugin,
      Brief brief,
      Today today,
      Optional<Plant> plant,
      Map<String, Double> settings) {
    Map<String, Double> parameters = new TreeMap<>();
    plugin.parameters().forEach(p -> parameters.put(p.id(), p.standard()));
    parameters.putAll(settings);
    Set<Figure> available = EnumSet.noneOf(Figure.class);
    available.addAll(plugin.needs());
    return new ScoringContext(
        brief,
        SampleStructures.library(),
        ProcessLibrary.standard(),
        parameters,
        available,
        Draw.TYPICAL,
        today,
        plant);
  }

  private static ScoringContext without(ScoringContext context) {
    return new ScoringContext(
        context.brief(),
        context.materials(),
        context.processes(),
        context.parameters(),
        Set.of(),
        context.draw(),
        context.today(),
        context.plant());
  }

  private static Map<Figure, Double> known(ScoringPlugin plugin) {
    Map<Figure, Double> figures = new EnumMap<>(Figure.class);
    plugin.needs().forEach(f -> figures.put(f, FIGURES.get(f)));
    return figures;
  }

  private static Map<Figure, Double> unknown(ScoringPlugin plugin) {
    Map<Figure, Double> figures = new EnumMap<>(Figure.class);
    plugin.needs().forEach(f -> figures.put(f, Double.NaN));
    return figures;
  }
}
