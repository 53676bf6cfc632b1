package plyworth.workbench.analysis;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import plyworth.shared.data.Spelling;
import plyworth.shared.scoring.Criterion;
import plyworth.shared.scoring.Parameter;
import plyworth.shared.study.Limit;
import plyworth.shared.study.Study;
import plyworth.shared.study.Weighting;
import plyworth.workbench.host.LoadedPlugin;
import plyworth.workbench.host.PluginCatalog;

/** Checks that the criteria and settings a study speaks of exist in the plugins at hand. */
public final class References {

  /**
   * Something the study speaks of that is not there.
   *
   * @param path where in the study
   * @param plugin the plugin that is not loaded; empty when the plugin is there
   * @param problem what is wrong
   * @param remedy what would be right
   */
  public record Dangling(String path, Optional<String> plugin, String problem, String remedy) {

    @Override
    public String toString() {
      return "at " + path + ": " + problem + ". " + remedy;
    }
  }

  private final PluginCatalog catalog;
  private final Set<String> leftOut;
  private final List<Dangling> found = new ArrayList<>();

  private References(PluginCatalog catalog, Set<String> leftOut) {
    this.catalog = catalog;
    this.leftOut = leftOut;
  }

  /**
   * Everything that dangles, in the order of the study.
   *
   * @param leftOut plugins that are left out on purpose
   */
  public static List<Dangling> check(Study study, PluginCatalog catalog, Set<String> leftOut) {
    References references = new References(catalog, leftOut);
    for (Weighting weighting : study.weightings()) {
      weighting
          .weights()
          .keySet()
          .forEach(id -> references.criterion("weightings, \"" + weighting.name() + "\"", id));
    }
    study.valueFunctions().keySet().forEach(id -> references.criterion("value functions", id));
    study.limits().stream().map(Limit::criterion).forEach(id -> references.criterion("limits", id));
    study.settings().forEach(references::settings);
    return List.copyOf(references.found);
  }

  private void criterion(String path, String id) {
    int slash = id.indexOf('/');
    if (slash <= 0) {
      add(path, Optional.empty(), "\"" + id + "\" is not a criterion", "Write plugin/criterion.");
      return;
    }
    String name = id.substring(slash + 1);
    Optional<LoadedPlugin> plugin = pluginOf(path, id.substring(0, slash));
    if (plugin.isPresent()) {
      List<String> known = plugin.get().plugin().criteria().stream().map(Criterion::id).toList();
      if (!known.contains(name)) {
        add(
            path,
            Optional.empty(),
            "the plugin " + plugin.get().id() + " has no criterion \"" + name + "\"",
            Spelling.suggestion(name, known));
      }
    }
  }

  private void settings(String pluginId, Map<String, Double> values) {
    Optional<LoadedPlugin> plugin = catalog.find(pluginId);
    if (plugin.isEmpty()) {
      return;
    }
    List<String> known = plugin.get().plugin().parameters().stream().map(Parameter::id).toList();
    for (String id : values.keySet()) {
      if (!known.contains(id)) {
        add(
            "settings, " + pluginId,
            Optional.empty(),
            "the plugin " + pluginId + " has no setting \"" + id + "\"",
            Spelling.suggestion(id, known));
      }
    }
  }

  private Optional<LoadedPlugin> pluginOf(String path, String id) {
    Optional<LoadedPlugin> plugin = catalog.find(id);
    if (plugin.isEmpty() && !leftOut.contains(id)) {
      Set<String> known = new LinkedHashSet<>();
      catalog.plugins().forEach(p -> known.add(p.id()));
      add(
          path,
          Optional.of(id),
          "the study uses the plugin \"" + id + "\", which is not loaded",
          Spelling.nearest(id, known)
              .map(near -> "Did you mean \"" + near + "\"?")
              .orElse("Put its jar into " + catalog.folder() + ", or leave it out on purpose."));
    }
    return plugin;
  }

  private void add(String path, Optional<String> plugin, String problem, String remedy) {
    Dangling dangling = new Dangling(path, plugin, problem, remedy);
    if (found.stream().noneMatch(d -> d.equals(dangling))) {
      found.add(dangling);
    }
  }
}
