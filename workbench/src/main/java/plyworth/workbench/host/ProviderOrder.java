package plyworth.workbench.host;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import plyworth.shared.scoring.Figure;

/** Puts plugins in an order in which every figure is provided before it is needed. */
final class ProviderOrder {

  private final List<LoadedPlugin> ordered = new ArrayList<>();
  private final List<PluginFault> faults = new ArrayList<>();
  private final Map<Figure, LoadedPlugin> providers = new EnumMap<>(Figure.class);

  private ProviderOrder() {}

  static ProviderOrder of(List<LoadedPlugin> plugins) {
    ProviderOrder order = new ProviderOrder();
    List<LoadedPlugin> waiting = order.withSingleProviders(plugins);
    boolean moved = true;
    while (moved) {
      List<LoadedPlugin> ready = waiting.stream().filter(order::ready).toList();
      order.ordered.addAll(ready);
      waiting.removeAll(ready);
      moved = !ready.isEmpty();
    }
    String circle = waiting.stream().map(LoadedPlugin::id).collect(Collectors.joining(", "));
    for (LoadedPlugin left : waiting) {
      order.faults.add(
          new PluginFault(
              left.id(), left.origin(), "it needs figures in a circle with: " + circle));
    }
    return order;
  }

  List<LoadedPlugin> ordered() {
    return ordered;
  }

  List<PluginFault> faults() {
    return faults;
  }

  private List<LoadedPlugin> withSingleProviders(List<LoadedPlugin> plugins) {
    List<LoadedPlugin> kept = new ArrayList<>();
    for (LoadedPlugin plugin : plugins) {
      List<Figure> taken =
          plugin.plugin().provides().stream().filter(providers::containsKey).toList();
      if (taken.isEmpty()) {
        plugin.plugin().provides().forEach(figure -> providers.put(figure, plugin));
        kept.add(plugin);
      } else {
        faults.add(
            new PluginFault(
                plugin.id(),
                plugin.origin(),
                ("it provides " + taken.get(0) + ", which ")
                    + (providers.get(taken.get(0)).id() + " provides already; ")
                    + "remove one of the two"));
      }
    }
    return kept;
  }

  private boolean ready(LoadedPlugin plugin) {
    return plugin.plugin().needs().stream()
        .map(providers::get)
        .allMatch(provider -> provider == null || ordered.contains(provider));
  }
}
