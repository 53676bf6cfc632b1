package plyworth.workbench.analysis;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import plyworth.shared.data.Spelling;
import plyworth.shared.scoring.Criterion;
import plyworth.shared.scoring.Measurement;
import plyworth.shared.scoring.Parameter;
import plyworth.shared.study.PluginSettings;
import plyworth.shared.study.Study;
import plyworth.shared.study.WeightsBy;
import plyworth.workbench.host.LoadedPlugin;
import plyworth.workbench.host.PluginCatalog;

/** Checks that what a study speaks of exists, and that its settings and material figures can be. */
public final class References {

  /**
   * Something the study speaks of that is not there, or cannot be.
   *
   * @param path keys that lead there in the study file, for example {@code limits[0].criterion}
   * @param plugin the plugin that is not loaded; empty when that is not what is wrong
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
   * Everything that dangles, in the order of the study file.
   *
   * @param leftOut plugins that are left out on purpose, beside those that the study leaves out
   */
  public static List<Dangling> check(Study study, PluginCatalog catalog, Set<String> leftOut) {
    Set<String> meant = new TreeSet<>(leftOut);
    meant.addAll(PluginSettings.leftOut(study));
    References references = new References(catalog, meant);
    references.found.addAll(RuleTags.check(study));
    for (int i = 0; i < study.measurements().size(); i++) {
      references.measurement("measurements[" + i + "]", study.measurements().get(i));
    }
    for (int i = 0; i < study.results().candidates().size(); i++) {
      references.measurement(
          "results.measured_candidates[" + i + "]", study.results().candidates().get(i).reading());
    }
    for (int i = 0; i < study.weightings().size(); i++) {
      references.weighting("weightings[" + i + "].", study.weightings().get(i).by());
    }
    study
        .valueFunctions()
        .keySet()
        .forEach(id -> references.criterion("value_functions." + id, id));
    for (int i = 0; i < study.limits().size(); i++) {
      references.criterion("limits[" + i + "].criterion", study.limits().get(i).criterion());
    }
    study.settings().forEach(references::settings);
    references.plant(study);
    references.found.addAll(PropertyBounds.check(study, catalog));
    return List.copyOf(references.found);
  }

  private void weighting(String path, WeightsBy by) {
    if (by instanceof WeightsBy.RankOrder order) {
      for (int k = 0; k < order.criteria().size(); k++) {
        criterion(path + "order[" + k + "]", order.criteria().get(k));
      }
    } else {
      String key = by instanceof WeightsBy.SwingPoints ? "swing_points." : "weights.";
      by.weights().keySet().forEach(id -> criterion(path + key + id, id));
    }
  }

  private void measurement(String path, Measurement measurement) {
    criterion(path + ".criterion", measurement.figure())
        .filter(criterion -> !measurement.unit().equals(criterion.unit()))
        .ifPresent(
            criterion ->
                add(
                    path + ".unit",
                    measurement.figure() + " is measured in \"" + measurement.unit() + "\"",
                    "Give it in \"" + criterion.unit() + "\"."));
  }

  /** The criterion of that id, if it is there; if not, it is noted. */
  private Optional<Criterion> criterion(String path, String id) {
    int slash = id.indexOf('/');
    if (slash <= 0) {
      add(path, "\"" + id + "\" is not a criterion", "Write plugin/criterion.");
      return Optional.empty();
    }
    String name = id.substring(slash + 1);
    Optional<LoadedPlugin> plugin = pluginOf(path, id.substring(0, slash));
    if (plugin.isEmpty()) {
      return Optional.empty();
    }
    List<Criterion> criteria = plugin.get().plugin().criteria();
    Optional<Criterion> named = criteria.stream().filter(c -> c.id().equals(name)).findFirst();
    if (named.isEmpty()) {
      add(
          path,
          "the plugin " + plugin.get().id() + " has no criterion \"" + name + "\"",
          Spelling.suggestion(name, criteria.stream().map(Criterion::id).toList()));
    }
    return named;
  }

  private void settings(String pluginId, Map<String, Double> values) {
    catalog
        .find(pluginId)
        .ifPresent(plugin -> values.forEach((id, value) -> setting(plugin, id, value)));
  }

  /** A plant that nobody judges by would leave on offer what cannot be made. */
  private void plant(Study study) {
    boolean judged =
        catalog.plugins().stream().anyMatch(p -> NotMakeable.judges(p.plugin()))
            || !leftOut.isEmpty();
    if (study.plant().isPresent() && !judged) {
      add(
          "plant",
          "the study has a plant, and no plugin that is loaded judges by it",
          "Put the plugin that does into " + catalog.folder() + ", or take the plant out.");
    }
  }

  private void setting(LoadedPlugin plugin, String id, double value) {
    List<Parameter> parameters = plugin.plugin().parameters();
    String path = "settings." + plugin.id() + "." + id;
    if (id.equals(PluginSettings.IN_USE)) {
      use(path, value);
      return;
    }
    Optional<Parameter> named = parameters.stream().filter(p -> p.id().equals(id)).findFirst();
    if (named.isEmpty()) {
      add(
          path,
          "the plugin " + plugin.id() + " has no setting \"" + id + "\"",
          Spelling.suggestion(id, parameters.stream().map(Parameter::id).toList()));
    } else if (!named.get().allows(value)) {
      add(path, "the setting is " + value, "It must lie between " + bounds(named.get()) + ".");
    }
  }

  private void use(String path, double value) {
    if (value != 0 && value != 1) {
      add(path, "the setting is " + value, "1 uses the plugin, 0 leaves it out.");
    }
  }

  private static String bounds(Parameter parameter) {
    boolean pure = parameter.unit().isEmpty() || parameter.unit().equals("1");
    String unit = pure ? "" : " " + parameter.unit();
    return parameter.lowest() + " and " + parameter.highest() + unit;
  }

  private Optional<LoadedPlugin> pluginOf(String path, String id) {
    Optional<LoadedPlugin> plugin = catalog.find(id);
    if (plugin.isEmpty() && !leftOut.contains(id)) {
      List<String> known = catalog.plugins().stream().map(LoadedPlugin::id).toList();
      found.add(
          new Dangling(
              path,
              Optional.of(id),
              "the study uses the plugin \"" + id + "\", which is not loaded",
              Spelling.nearest(id, known)
                  .map(near -> "Did you mean \"" + near + "\"?")
                  .orElse(
                      "Put its jar into " + catalog.folder() + ", or leave it out on purpose.")));
    }
    return plugin;
  }

  private void add(String path, String problem, String remedy) {
    found.add(new Dangling(path, Optional.empty(), problem, remedy));
  }
}
