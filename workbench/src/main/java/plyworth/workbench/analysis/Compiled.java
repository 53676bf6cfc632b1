package plyworth.workbench.analysis;

import java.util.List;
import java.util.function.BooleanSupplier;
import plyworth.shared.scoring.Draw;
import plyworth.shared.structure.Structure;
import plyworth.shared.study.Study;
import plyworth.workbench.engine.CompiledGraph;
import plyworth.workbench.engine.Objection;
import plyworth.workbench.engine.graph.CandidateGraph;
import plyworth.workbench.engine.graph.Objections;
import plyworth.workbench.host.BoundPlugins;
import plyworth.workbench.host.PluginCatalog;

/**
 * A study with its candidates counted, and none of them enumerated.
 *
 * @param prepared the step before
 * @param graph the candidate graph
 * @param paths the same graph in flat arrays
 * @param seconds time this step took
 */
public record Compiled(
    Prepared prepared, CandidateGraph graph, CompiledGraph paths, double seconds) {

  /**
   * Builds the candidate graph.
   *
   * @param cancelled asked now and then; true gives up
   * @throws plyworth.workbench.engine.TooManyCandidatesException when the study leads to more
   *     candidates than can be numbered
   * @throws java.util.concurrent.CancellationException when cancelled
   */
  public static Compiled of(Prepared prepared, BooleanSupplier cancelled) {
    Stopwatch watch = new Stopwatch();
    Study study = prepared.study();
    CandidateGraph graph =
        CandidateGraph.of(
            study.positions(),
            study.rules(),
            study.materialsAtHand(),
            study.processesAtHand(),
            cancelled);
    return new Compiled(prepared, graph, graph.compile(), watch.seconds());
  }

  /** The same candidates with other plugins; itself when they are the same. */
  Compiled with(PluginCatalog catalog) {
    return catalog.equals(prepared.catalog())
        ? this
        : new Compiled(Prepared.of(prepared.study(), catalog), graph, paths, seconds);
  }

  /** The same plugins with the candidates of another. */
  public Compiled withPathsOf(Compiled other) {
    return new Compiled(prepared, other.graph(), other.paths(), other.seconds());
  }

  /**
   * The same candidates with the plugins bound to another world.
   *
   * @param study a study of the same positions and rules
   * @param draw the figure of each uncertain input
   */
  public Compiled in(Study study, Draw draw) {
    PluginCatalog catalog = prepared.catalog();
    BoundPlugins bound = BoundPlugins.bind(catalog, study, draw);
    return new Compiled(new Prepared(study, catalog, bound), graph, paths, seconds);
  }

  /** Why a structure is not on offer; empty when it is. */
  public List<Objection> objections(Structure structure) {
    Study study = prepared.study();
    return Objections.of(
        structure,
        study.positions(),
        study.rules(),
        study.materialsAtHand(),
        study.processesAtHand());
  }
}
