package plyworth.workbench.host;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import plyworth.shared.scoring.BlockingRule;
import plyworth.shared.scoring.Criterion;
import plyworth.shared.scoring.Parameter;
import plyworth.shared.scoring.ScoringPlugin;
import plyworth.shared.study.PluginSettings;

/** Checks what a plugin declares of itself. */
final class Declarations {

  private static final int MOST_RULES = 64;

  private Declarations() {}

  static void check(String manifestId, ScoringPlugin plugin) throws PluginFaultException {
    String id = plugin.card().id();
    if (!id.equals(manifestId)) {
      throw new PluginFaultException(
          "its manifest names " + manifestId + " but the plugin calls itself " + id);
    }
    if (plugin.criteria().isEmpty()) {
      throw new PluginFaultException("it declares no criterion");
    }
    if (plugin.blockingRules().size() > MOST_RULES) {
      throw new PluginFaultException("it declares more than " + MOST_RULES + " blocking rules");
    }
    if (plugin.parameters().stream().anyMatch(p -> p.id().equals(PluginSettings.IN_USE))) {
      throw new PluginFaultException(
          "it declares the parameter " + PluginSettings.IN_USE + ", which every plugin has");
    }
    distinct("criterion", plugin.criteria().stream().map(Criterion::id).toList());
    distinct("parameter", plugin.parameters().stream().map(Parameter::id).toList());
    distinct("blocking rule", plugin.blockingRules().stream().map(BlockingRule::id).toList());
  }

  private static void distinct(String what, List<String> ids) throws PluginFaultException {
    Set<String> seen = new HashSet<>();
    for (String id : ids) {
      if (!seen.add(id)) {
        throw new PluginFaultException("it declares the " + what + " " + id + " twice");
      }
    }
  }
}
