package plyworth.workbench.speed;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.ServiceLoader;
import java.util.Set;
import java.util.TreeMap;
import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.route.ProcessLibrary;
import plyworth.shared.scoring.Draw;
import plyworth.shared.scoring.Figure;
import plyworth.shared.scoring.Parameter;
import plyworth.shared.scoring.SampleBriefs;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.scoring.ScoringPlugin;
import plyworth.shared.structure.LayerNotation;
import plyworth.shared.structure.NeighbourRules;
import plyworth.shared.structure.Option;
import plyworth.shared.structure.Position;
import plyworth.shared.study.Weighting;
import plyworth.workbench.engine.CompiledGraph;
import plyworth.workbench.engine.graph.CandidateGraph;
import plyworth.workbench.engine.table.CandidateTable;
import plyworth.workbench.engine.table.Chunk;
import plyworth.workbench.engine.table.Progress;
import plyworth.workbench.engine.table.Tabulation;
import plyworth.workbench.host.BoundCriterion;
import plyworth.workbench.host.BoundPlugin;
import plyworth.workbench.host.BoundPlugins;
import plyworth.workbench.ranking.Ranker;
import plyworth.workbench.ranking.Ranking;
import plyworth.workbench.ranking.ValueModel;

/** Prints how fast a made-up study of a few million candidates is scored and ranked. */
public final class TableSpeed {

  private TableSpeed() {}

  private static final List<String> OUTER =
      List.of(
          "kraft-paper 40 g/m2",
          "kraft-paper 45 g/m2",
          "kraft-paper 55 g/m2",
          "kraft-paper 70 g/m2",
          "kraft-paper 80 g/m2",
          "clay-coated-paper 40 g/m2",
          "clay-coated-paper 50 g/m2",
          "clay-coated-paper 70 g/m2",
          "bopp 15 um",
          "bopp 25 um",
          "bopp 30 um",
          "bopet 10 um",
          "bopet 15 um",
          "glassine 50 g/m2",
          "glassine 60 g/m2",
          "recycled-kraft 50 g/m2",
          "recycled-kraft 70 g/m2",
          "kraft-paper 50 g/m2",
          "kraft-paper 60 g/m2",
          "clay-coated-paper 45 g/m2",
          "clay-coated-paper 60 g/m2",
          "glassine 40 g/m2",
          "bopp 20 um",
          "bopet 12 um",
          "mdo-pe 25 um",
          "recycled-kraft 60 g/m2",
          "kraft-paper-unbleached 50 g/m2");
  private static final List<String> PRINT =
      List.of(
          "ink-wb 1.5 g/m2 @flexo-water 40 %",
          "ink-nc 1.5 g/m2 @flexo-solvent 40 %",
          "ink-wb 1.5 g/m2 @gravure-water 40 %",
          "ink-nc 1.5 g/m2 @gravure-solvent 40 %",
          "ink-uv 2 g/m2 @flexo-uv 40 %");
  private static final List<String> BOND =
      List.of(
          "ldpe 10 um @extrusion-lamination",
          "ldpe 12 um @extrusion-lamination",
          "ldpe 15 um @extrusion-lamination",
          "eaa 12 um @extrusion-lamination",
          "eaa 15 um @extrusion-lamination",
          "adhesive-pu-solventless 1.8 g/m2 @solventless",
          "adhesive-pu-solventless 2.2 g/m2 @solventless",
          "adhesive-pu-solvent 3 g/m2 @dry-bond",
          "adhesive-acrylic-wb 2.5 g/m2 @water-based-lamination");
  private static final List<String> BARRIER =
      List.of(
          "aluminium-foil 6.35 um !bright-out",
          "aluminium-foil 7 um !bright-out",
          "aluminium-foil 9 um !bright-out",
          "bopet-met 12 um !metal-in",
          "bopet-met 10 um !metal-in",
          "bopp-met 18 um !metal-out",
          "bopet-alox 12 um !metal-in",
          "bopet-siox 12 um !metal-in",
          "metallised-paper 50 g/m2",
          "mdo-pe-evoh 25 um",
          "bopa 15 um");
  private static final List<String> SEALANT =
      List.of(
          "ldpe 30 um",
          "ldpe 40 um",
          "ldpe 50 um",
          "ldpe 20 um",
          "ldpe 25 um",
          "ldpe 60 um",
          "lldpe 25 um",
          "lldpe 45 um",
          "mlldpe 25 um",
          "mlldpe 60 um",
          "cpp 25 um",
          "cpp 50 um",
          "lldpe 30 um",
          "lldpe 40 um",
          "lldpe 50 um",
          "lldpe 60 um",
          "mlldpe 30 um",
          "mlldpe 40 um",
          "mlldpe 50 um",
          "cpp 30 um",
          "cpp 40 um",
          "cpp-terpolymer 30 um",
          "pe-evoh-pe-film 50 um",
          "pe-evoh-pe-film 60 um");

  /** Scores, ranks and prints. */
  public static void main(String[] arguments) {
    BoundPlugins plugins = plugins();
    CompiledGraph graph = graph();
    for (int round = 0; round < 3; round++) {
      for (BoundPlugin plugin : plugins.plugins()) {
        score(plugin.id(), graph, BoundPlugins.of(List.of(plugin), plugins.available()), 1);
      }
      score("all", graph, plugins, 1);
    }
    rank(new Ranker(score("all", graph, plugins, 2), path -> new double[0]), plugins);
  }

  private static CandidateTable score(
      String title, CompiledGraph graph, BoundPlugins plugins, int threads) {
    Tabulation tabulation = Tabulation.of(graph, plugins);
    ThreadMXBean clock = ManagementFactory.getThreadMXBean();
    long wall = System.nanoTime();
    long busy = clock.getCurrentThreadCpuTime();
    CandidateTable table = tabulation.run(Progress.NONE, threads);
    busy = clock.getCurrentThreadCpuTime() - busy;
    wall = System.nanoTime() - wall;
    print(
        "%-16s %d threads: %,d candidates, %.0f ms, %.0f ms busy in one thread, %d blocked",
        title, threads, table.rows(), wall / 1e6, busy / 1e6, table.count(Chunk.BLOCKED));
    return table;
  }

  private static void rank(Ranker ranker, BoundPlugins plugins) {
    Random random = new Random(1);
    for (int round = 0; round < 40; round++) {
      Map<String, Double> weights = new TreeMap<>();
      for (BoundCriterion c : plugins.criteria()) {
        weights.put(c.id(), c.criterion().weight() * random.nextDouble());
      }
      ThreadMXBean clock = ManagementFactory.getThreadMXBean();
      long start = clock.getCurrentThreadCpuTime();
      ValueModel model =
          ValueModel.of(plugins.criteria(), new Weighting("w", weights), Map.of(), List.of());
      Ranking ranking = ranker.rank(model, 100);
      double ms = (clock.getCurrentThreadCpuTime() - start) / 1e6;
      if (round % 8 == 0) {
        print("%s", ranking.counts());
      }
      print("ranked in %.2f ms busy, best %.4f", ms, ranking.best().get(0).value());
    }
  }

  private static CompiledGraph graph() {
    List<Position> positions =
        List.of(
            position("Varnish", List.of("overprint-varnish-wb 1 g/m2 @flexo-water"), true),
            position("Print", PRINT, false),
            position("Outer web", OUTER, false),
            position("Bond", BOND, false),
            position("Barrier", BARRIER, false),
            position("Inner bond", BOND, false),
            position("Sealant", SEALANT, false));
    return CandidateGraph.of(
            positions,
            NeighbourRules.standard(),
            MaterialLibrary.standard(),
            ProcessLibrary.standard())
        .compile();
  }

  private static Position position(String title, List<String> layers, boolean nothing) {
    List<Option> options = new ArrayList<>();
    if (nothing) {
      options.add(Option.NOTHING);
    }
    layers.forEach(layer -> options.add(Option.of(LayerNotation.readLayer(layer))));
    return new Position(title, options);
  }

  private static BoundPlugins plugins() {
    List<ScoringPlugin> found = new ArrayList<>();
    ServiceLoader.load(ScoringPlugin.class).forEach(found::add);
    found.sort((a, b) -> Integer.compare(a.needs().size(), b.needs().size()));
    Set<Figure> available = EnumSet.noneOf(Figure.class);
    found.forEach(p -> available.addAll(p.provides()));
    List<BoundPlugin> bound = new ArrayList<>();
    for (ScoringPlugin plugin : found) {
      Map<String, Double> parameters = new HashMap<>();
      for (Parameter parameter : plugin.parameters()) {
        parameters.put(parameter.id(), parameter.standard());
      }
      ScoringContext context =
          new ScoringContext(
              SampleBriefs.sugarStick(),
              MaterialLibrary.standard(),
              ProcessLibrary.standard(),
              parameters,
              available,
              Draw.TYPICAL);
      bound.add(new BoundPlugin(plugin, plugin.bind(context)));
      print("%s", plugin.card().id());
    }
    return BoundPlugins.of(bound, available);
  }

  private static void print(String format, Object... arguments) {
    System.out.println(String.format(Locale.ROOT, format, arguments));
  }
}
