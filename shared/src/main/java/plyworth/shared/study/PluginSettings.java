package plyworth.shared.study;

import java.util.Collections;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What a study sets of its plugins: their parameters, and whether they are used at all. The last is
 * a setting that every plugin has, {@code in-use}, 0 or 1; a study that says nothing uses it.
 */
public final class PluginSettings {

  /** The setting that every plugin has. */
  public static final String IN_USE = "in-use";

  private PluginSettings() {}

  /** The study with one parameter set. */
  public static Study set(Study study, String plugin, String parameter, double value) {
    Map<String, Double> own = own(study, plugin);
    own.put(parameter, value);
    return with(study, plugin, own);
  }

  /** The study with one parameter back at its standard. */
  public static Study reset(Study study, String plugin, String parameter) {
    Map<String, Double> own = own(study, plugin);
    own.remove(parameter);
    return with(study, plugin, own);
  }

  /** The study with a plugin used or left out; its other settings stay. */
  public static Study use(Study study, String plugin, boolean used) {
    return used ? reset(study, plugin, IN_USE) : set(study, plugin, IN_USE, 0);
  }

  /** The plugins that the study leaves out. */
  public static Set<String> leftOut(Study study) {
    Set<String> leftOut = new TreeSet<>();
    study
        .settings()
        .forEach(
            (plugin, values) -> {
              if (values.getOrDefault(IN_USE, 1.0) == 0) {
                leftOut.add(plugin);
              }
            });
    return Collections.unmodifiableSet(leftOut);
  }

  private static Map<String, Double> own(Study study, String plugin) {
    return new TreeMap<>(study.settings().getOrDefault(plugin, Map.of()));
  }

  private static Study with(Study study, String plugin, Map<String, Double> own) {
    Map<String, Map<String, Double>> all = new TreeMap<>(study.settings());
    if (own.isEmpty()) {
      all.remove(plugin);
    } else {
      all.put(plugin, own);
    }
    return study.withSettings(all);
  }
}
