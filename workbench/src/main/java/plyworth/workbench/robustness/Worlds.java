package plyworth.workbench.robustness;

import java.util.HashSet;
import java.util.List;
import java.util.Queue;
import java.util.Set;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.function.LongFunction;
import java.util.stream.Collectors;
import plyworth.shared.scoring.Draw;
import plyworth.shared.structure.Structure;
import plyworth.shared.study.Study;
import plyworth.workbench.analysis.Prepared;
import plyworth.workbench.engine.table.ListScorer;
import plyworth.workbench.engine.table.ListedFigures;
import plyworth.workbench.engine.table.ListedStructures;
import plyworth.workbench.host.BoundCriterion;
import plyworth.workbench.host.BoundPlugins;
import plyworth.workbench.host.LoadedPlugin;
import plyworth.workbench.host.PluginCatalog;
import plyworth.workbench.ranking.ValueModel;
import plyworth.workbench.ranking.Weighed;

/**
 * Possible worlds: one draw of every uncertain input binds all plugins, so that structures that
 * share a layer share its figures, and a lead that they share is not lost in noise.
 *
 * <p>Layers are contributed and joined once for all structures. Plugins that no draw can move are
 * asked once for all worlds, those that neither weigh, exclude nor block never.
 */
final class Worlds implements LongFunction<World> {

  private final Study study;
  private final PluginCatalog moved;
  private final BoundPlugins typical;
  private final WorldValues values;
  private final ListedStructures listed;
  private final Set<String> wanted;
  private final Queue<ListScorer> scorers = new ConcurrentLinkedQueue<>();

  /**
   * The worlds of a study.
   *
   * @param prepared the study and its plugins
   * @param model value functions, limits and which criteria can have weight
   * @param structures the structures to score, at most {@link ListedStructures#MOST}
   */
  Worlds(Prepared prepared, ValueModel model, List<Structure> structures) {
    study = prepared.study();
    listed = new ListedStructures(structures);
    wanted = wanted(model);
    PluginCatalog speaking = prepared.catalog().only(speaking(prepared.catalog()));
    Set<String> steady = SteadyPlugins.of(speaking, study, listed, this::wanted);
    Set<String> others =
        speaking.plugins().stream()
            .map(LoadedPlugin::id)
            .filter(id -> !steady.contains(id))
            .collect(Collectors.toSet());
    moved = speaking.only(others);
    typical = BoundPlugins.bind(moved, study, Draw.TYPICAL);
    BoundPlugins bound = BoundPlugins.bind(speaking.only(steady), study, Draw.TYPICAL);
    values =
        new WorldValues(
            model, structures, bound, new ListScorer(listed, this::wanted).score(bound));
  }

  private static Set<String> wanted(ValueModel model) {
    Set<String> wanted = new HashSet<>();
    model.criteria().stream()
        .filter(Weighed::counts)
        .forEach(weighed -> wanted.add(weighed.criterion().id()));
    model.limits().forEach(limit -> wanted.add(limit.criterion()));
    return wanted;
  }

  private boolean wanted(BoundCriterion criterion) {
    return wanted.contains(criterion.id());
  }

  private Set<String> speaking(PluginCatalog catalog) {
    return catalog.plugins().stream()
        .filter(this::speaks)
        .map(LoadedPlugin::id)
        .collect(Collectors.toSet());
  }

  private boolean speaks(LoadedPlugin loaded) {
    return !loaded.plugin().blockingRules().isEmpty()
        || loaded.plugin().criteria().stream()
            .anyMatch(criterion -> wanted.contains(loaded.id() + "/" + criterion.id()));
  }

  /** What the structures are worth in the world of a seed. */
  @Override
  public World apply(long seed) {
    ListScorer free = scorers.poll();
    ListScorer scorer = free == null ? new ListScorer(listed, this::wanted) : free;
    BoundPlugins bound = typical.again(moved, study, Draw.random(seed));
    ListedFigures figures = scorer.score(bound);
    scorers.add(scorer);
    return values.of(bound, figures);
  }
}
