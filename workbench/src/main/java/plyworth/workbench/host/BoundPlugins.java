package plyworth.workbench.host;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.BiFunction;
import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.route.ProcessLibrary;
import plyworth.shared.scoring.Assessment;
import plyworth.shared.scoring.Draw;
import plyworth.shared.scoring.Explanation;
import plyworth.shared.scoring.Figure;
import plyworth.shared.scoring.Outcome;
import plyworth.shared.scoring.Parameter;
import plyworth.shared.scoring.Scorer;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.scoring.ScoringPlugin;
import plyworth.shared.scoring.Today;
import plyworth.shared.structure.Structure;
import plyworth.shared.study.Study;

/**
 * All plugins bound to one study and draw, providers first.
 *
 * @param plugins bound plugins
 * @param criteria every criterion of every plugin, in the same order
 * @param available figures that some plugin provides
 */
public record BoundPlugins(
    List<BoundPlugin> plugins, List<BoundCriterion> criteria, Set<Figure> available) {

  /** Copies the lists. */
  public BoundPlugins {
    plugins = List.copyOf(plugins);
    criteria = List.copyOf(criteria);
    available = Set.copyOf(available);
  }

  /**
   * Binds every plugin of a catalogue.
   *
   * @throws UnscorableBriefException when a plugin cannot score the brief at all
   * @throws IllegalArgumentException when a setting of the study is out of its bounds
   * @throws PluginFailure when a plugin throws something else, or binds to nothing
   */
  public static BoundPlugins bind(PluginCatalog catalog, Study study, Draw draw) {
    return bind(catalog, study, draw, PluginCalls::bind);
  }

  /**
   * Binds the same plugins in another world; they may keep what no draw moves.
   *
   * @param catalog the plugins that these are
   * @param study the study that these are bound to
   * @throws PluginFailure when a plugin throws, or binds to nothing
   */
  public BoundPlugins again(PluginCatalog catalog, Study study, Draw draw) {
    Map<String, Scorer> before = new HashMap<>();
    plugins.forEach(bound -> before.put(bound.id(), bound.scorer()));
    return bind(
        catalog,
        study,
        draw,
        (loaded, context) -> PluginCalls.bindAgain(loaded, context, before.get(loaded.id())));
  }

  private static BoundPlugins bind(
      PluginCatalog catalog,
      Study study,
      Draw draw,
      BiFunction<LoadedPlugin, ScoringContext, Scorer> scorer) {
    Set<Figure> available = EnumSet.noneOf(Figure.class);
    catalog.plugins().forEach(p -> available.addAll(p.plugin().provides()));
    List<BoundPlugin> bound = new ArrayList<>();
    MaterialLibrary materials = study.materialsAtHand();
    ProcessLibrary processes = study.processesAtHand();
    Today today = new Today(Optional.of(study.baseline()), study.measurements());
    for (LoadedPlugin loaded : catalog.plugins()) {
      ScoringContext context =
          new ScoringContext(
              study.brief(),
              materials,
              processes,
              parameters(loaded.plugin(), study.settings().getOrDefault(loaded.id(), Map.of())),
              available,
              draw,
              today,
              study.plant());
      bound.add(new BoundPlugin(loaded.plugin(), scorer.apply(loaded, context)));
    }
    return of(bound, available);
  }

  /** Bound plugins that are given one by one, providers first. */
  public static BoundPlugins of(List<BoundPlugin> bound, Set<Figure> available) {
    List<BoundCriterion> criteria = new ArrayList<>();
    for (int p = 0; p < bound.size(); p++) {
      BoundPlugin plugin = bound.get(p);
      for (int c = 0; c < plugin.plugin().criteria().size(); c++) {
        String id = plugin.plugin().criteria().get(c).id();
        criteria.add(
            new BoundCriterion(
                plugin.id() + "/" + id,
                plugin.plugin().criteria().get(c),
                p,
                c,
                Optional.ofNullable(plugin.scorer().notApplicable().get(id))));
      }
    }
    return new BoundPlugins(bound, criteria, available);
  }

  private static Map<String, Double> parameters(ScoringPlugin plugin, Map<String, Double> set) {
    Map<String, Double> values = new TreeMap<>();
    for (Parameter parameter : plugin.parameters()) {
      double value = set.getOrDefault(parameter.id(), parameter.standard());
      if (!parameter.allows(value)) {
        throw new IllegalArgumentException(
            ("the setting " + plugin.card().id() + "/" + parameter.id() + " is " + value)
                + ("; it must lie between " + parameter.lowest() + " and " + parameter.highest())
                + (" " + parameter.unit()));
      }
      values.put(parameter.id(), value);
    }
    return values;
  }

  /** The criterion of a full id. */
  public Optional<BoundCriterion> criterion(String id) {
    return criteria.stream().filter(c -> c.id().equals(id)).findFirst();
  }

  /** The plugin that a criterion belongs to. */
  public ScoringPlugin plugin(BoundCriterion criterion) {
    return plugins.get(criterion.plugin()).plugin();
  }

  /** What came out for a criterion in the assessments of {@link #score}. */
  public Outcome outcome(Map<String, Assessment> assessments, BoundCriterion criterion) {
    String plugin = plugins.get(criterion.plugin()).id();
    return assessments.get(plugin).outcomes().get(criterion.criterion().id());
  }

  /** The figures of all criteria in the assessments of {@link #score}; NaN where there is none. */
  public double[] figures(Map<String, Assessment> assessments) {
    return criteria.stream().mapToDouble(c -> outcome(assessments, c).orUnknown()).toArray();
  }

  /**
   * Scores one structure with every plugin, in order; the key is the plugin id.
   *
   * @throws PluginFailure when a plugin throws, or answers what cannot be
   */
  public Map<String, Assessment> score(Structure structure) {
    Map<String, Assessment> assessments = new LinkedHashMap<>();
    Map<Figure, Double> figures = new EnumMap<>(Figure.class);
    for (BoundPlugin bound : plugins) {
      Assessment assessment = PluginCalls.score(bound, structure, needed(bound, figures));
      figures.putAll(assessment.provided());
      assessments.put(bound.id(), assessment);
    }
    return assessments;
  }

  /**
   * The figure of one criterion on one structure, NaN where there is none: scored in full by its
   * plugin and those whose figures that needs, and by no other.
   *
   * @throws PluginFailure when a plugin throws, or answers what cannot be
   */
  public double figure(Structure structure, BoundCriterion criterion) {
    return assessment(structure, criterion.plugin())
        .outcomes()
        .get(criterion.criterion().id())
        .orUnknown();
  }

  private Assessment assessment(Structure structure, int plugin) {
    BoundPlugin bound = plugins.get(plugin);
    Map<Figure, Double> figures = new EnumMap<>(Figure.class);
    for (int p = 0; p < plugin; p++) {
      if (plugins.get(p).plugin().provides().stream().anyMatch(bound.plugin().needs()::contains)) {
        figures.putAll(assessment(structure, p).provided());
      }
    }
    return PluginCalls.score(bound, structure, needed(bound, figures));
  }

  /**
   * The breakdown of every plugin on one structure; the key is the plugin id.
   *
   * @throws PluginFailure when a plugin throws, or answers what cannot be
   */
  public Map<String, Explanation> explain(Structure structure) {
    Map<String, Explanation> explanations = new LinkedHashMap<>();
    Map<Figure, Double> figures = new EnumMap<>(Figure.class);
    score(structure).values().forEach(a -> figures.putAll(a.provided()));
    for (BoundPlugin bound : plugins) {
      explanations.put(bound.id(), PluginCalls.explain(bound, structure, needed(bound, figures)));
    }
    return explanations;
  }

  private Map<Figure, Double> needed(BoundPlugin bound, Map<Figure, Double> figures) {
    Map<Figure, Double> needed = new EnumMap<>(Figure.class);
    for (Figure figure : bound.plugin().needs()) {
      if (available.contains(figure)) {
        needed.put(figure, figures.getOrDefault(figure, Double.NaN));
      }
    }
    return needed;
  }
}
