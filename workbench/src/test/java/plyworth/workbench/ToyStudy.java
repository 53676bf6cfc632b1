package plyworth.workbench;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import plyworth.shared.scoring.Figure;
import plyworth.shared.scoring.Join;
import plyworth.shared.structure.Structure;
import plyworth.shared.study.Limit;
import plyworth.workbench.engine.CompiledGraph;
import plyworth.workbench.host.BoundCriterion;
import plyworth.workbench.host.BoundPlugin;
import plyworth.workbench.host.BoundPlugins;

/**
 * A random graph with three random plugins: one that provides a figure, one that needs it, and one
 * without a layerwise form.
 *
 * @param graph the graph
 * @param plugins the plugins
 * @param scored every structure as the oracle scores it, by path number
 * @param oracle the oracle
 */
public record ToyStudy(
    CompiledGraph graph, BoundPlugins plugins, List<Oracle.Scored> scored, Oracle oracle) {

  /** A random study. */
  public static ToyStudy random(long seed) {
    Random random = new Random(seed);
    return of(ToyGraph.random(seed), plugins(random).stream().map(ToyPlugin::bound).toList());
  }

  /** A random study whose materials come in several amounts, each with figures of its own. */
  public static ToyStudy stepped(long seed) {
    Random random = new Random(seed);
    return of(
        ToyGraph.stepped(seed),
        plugins(random).stream().map(plugin -> plugin.byAmount().bound()).toList());
  }

  private static List<ToyPlugin> plugins(Random random) {
    return List.of(
        new ToyPlugin("one", joins(random), PACKS, List.of(), true, true),
        new ToyPlugin("two", joins(random), List.of(), PACKS, true, random.nextBoolean())
            .unknown(random.nextInt(3) * 0.02)
            .apart(random.nextInt(3) * 0.4)
            .notApplicable(1),
        new ToyPlugin("three", List.of(Join.SUM), List.of(), PACKS, false, true));
  }

  private static final List<Figure> PACKS = List.of(Figure.PACKS_PER_MINUTE);

  private static List<Join> joins(Random random) {
    List<Join> joins = new ArrayList<>();
    for (int i = 0; i < 4; i++) {
      joins.add(Join.values()[random.nextInt(Join.values().length)]);
    }
    return joins;
  }

  /** A study of given plugins. */
  public static ToyStudy of(ToyGraph toy, List<BoundPlugin> plugins) {
    CompiledGraph graph = toy.graph();
    Oracle oracle = new Oracle(plugins, Map.of());
    Oracle.Scored[] scored = new Oracle.Scored[(int) graph.count()];
    for (Structure structure : toy.structures()) {
      int path = (int) graph.pathOf(structure).orElseThrow();
      scored[path] = oracle.score(path, structure);
    }
    return new ToyStudy(graph, bound(plugins), List.of(scored), oracle);
  }

  /** Plugins bound together. */
  public static BoundPlugins bound(List<BoundPlugin> plugins) {
    Set<Figure> available = EnumSet.noneOf(Figure.class);
    plugins.forEach(p -> available.addAll(p.plugin().provides()));
    return BoundPlugins.of(plugins, available);
  }

  /** The figures of a structure in the order of the criteria, NaN where there is none. */
  public double[] figures(long path) {
    return plugins.criteria().stream()
        .mapToDouble(c -> scored.get((int) path).figures().getOrDefault(c.id(), Double.NaN))
        .toArray();
  }

  /** Random weights, some of them 0. */
  public Map<String, Double> weights(long seed) {
    Random random = new Random(seed);
    Map<String, Double> weights = new TreeMap<>();
    for (BoundCriterion criterion : plugins.criteria()) {
      weights.put(criterion.id(), (double) Math.max(0, random.nextInt(6) - 2));
    }
    return weights;
  }

  /** Limits at the figures of some structures, so that some are exactly met. */
  public List<Limit> limits(long seed) {
    Random random = new Random(seed);
    List<Limit> limits = new ArrayList<>();
    for (BoundCriterion criterion :
        scored.isEmpty() ? List.<BoundCriterion>of() : plugins.criteria()) {
      double figure = figures(random.nextInt(scored.size()))[plugins.criteria().indexOf(criterion)];
      if (random.nextInt(4) == 0 && Double.isFinite(figure)) {
        Limit.Bound bound = Limit.Bound.values()[random.nextInt(2)];
        limits.add(new Limit(criterion.id(), bound, figure, ""));
      }
    }
    return limits;
  }
}
