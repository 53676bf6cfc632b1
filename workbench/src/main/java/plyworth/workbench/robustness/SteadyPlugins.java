package plyworth.workbench.robustness;

import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import plyworth.shared.scoring.Draw;
import plyworth.shared.study.Study;
import plyworth.workbench.engine.table.ListScorer;
import plyworth.workbench.engine.table.ListedStructures;
import plyworth.workbench.host.BoundCriterion;
import plyworth.workbench.host.BoundPlugins;
import plyworth.workbench.host.LoadedPlugin;
import plyworth.workbench.host.PluginCatalog;

/**
 * The plugins that say the same in every world: those that ask for no uncertain input, nor does a
 * plugin whose figures they take. A plugin is a pure function, so what never asked cannot differ.
 */
final class SteadyPlugins {

  private SteadyPlugins() {}

  /** Ids of the plugins of a catalogue that say the same of the listed structures in any world. */
  static Set<String> of(
      PluginCatalog catalog,
      Study study,
      ListedStructures listed,
      Predicate<BoundCriterion> wanted) {
    return catalog.plugins().stream()
        .map(LoadedPlugin::id)
        .filter(id -> steady(catalog.only(Set.of(id)), study, listed, wanted))
        .collect(Collectors.toSet());
  }

  private static boolean steady(
      PluginCatalog catalog,
      Study study,
      ListedStructures listed,
      Predicate<BoundCriterion> wanted) {
    HeardInputs heard = new HeardInputs();
    BoundPlugins bound = BoundPlugins.bind(catalog, study, heard.through(Draw.TYPICAL));
    new ListScorer(listed, wanted).score(bound);
    return heard.uncertain().isEmpty();
  }
}
