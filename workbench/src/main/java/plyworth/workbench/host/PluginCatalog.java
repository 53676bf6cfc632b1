package plyworth.workbench.host;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import plyworth.shared.scoring.Figure;

/**
 * The plugins at hand, providers before those that need them, and those that are left out.
 *
 * @param folder where they were looked for
 * @param plugins loaded plugins
 * @param faults what is left out, and why
 */
public record PluginCatalog(Path folder, List<LoadedPlugin> plugins, List<PluginFault> faults) {

  /** Copies the lists. */
  public PluginCatalog {
    plugins = List.copyOf(plugins);
    faults = List.copyOf(faults);
  }

  /** Loads every jar and every folder in {@code folder}; one bad plugin never stops the others. */
  public static PluginCatalog load(Path folder) {
    List<LoadedPlugin> loaded = new ArrayList<>();
    List<PluginFault> faults = new ArrayList<>();
    Set<String> ids = new HashSet<>();
    for (Path origin : entries(folder)) {
      try {
        PluginPackage found = PluginPackage.inspect(origin);
        if (!ids.add(found.id())) {
          throw new PluginFaultException("a plugin of the id " + found.id() + " is loaded already");
        }
        loaded.add(found.load());
      } catch (PluginFaultException e) {
        faults.add(new PluginFault(origin.getFileName().toString(), origin, e.getMessage()));
      }
    }
    ProviderOrder order = ProviderOrder.of(loaded);
    faults.addAll(order.faults());
    return new PluginCatalog(folder, order.ordered(), faults);
  }

  private static List<Path> entries(Path folder) {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      return files
          .filter(f -> Files.isDirectory(f) || f.toString().endsWith(".jar"))
          .sorted()
          .toList();
    } catch (IOException e) {
      return List.of();
    }
  }

  /** The loaded plugin of that id. */
  public Optional<LoadedPlugin> find(String id) {
    return plugins.stream().filter(p -> p.id().equals(id)).findFirst();
  }

  /** This catalogue without some plugins; those that needed their figures use parameters. */
  public PluginCatalog without(Set<String> ids) {
    return new PluginCatalog(
        folder, plugins.stream().filter(p -> !ids.contains(p.id())).toList(), faults);
  }

  /** This catalogue with some plugins alone, and those whose figures they need. */
  public PluginCatalog only(Set<String> ids) {
    Set<String> kept = new HashSet<>();
    Set<Figure> needed = EnumSet.noneOf(Figure.class);
    for (int p = plugins.size() - 1; p >= 0; p--) {
      LoadedPlugin loaded = plugins.get(p);
      boolean provides = loaded.plugin().provides().stream().anyMatch(needed::contains);
      if (provides || ids.contains(loaded.id())) {
        kept.add(loaded.id());
        needed.addAll(loaded.plugin().needs());
      }
    }
    return new PluginCatalog(
        folder, plugins.stream().filter(p -> kept.contains(p.id())).toList(), faults);
  }

  /** This catalogue with one plugin moved to the faulty ones. */
  public PluginCatalog faulty(String id, String reason) {
    List<PluginFault> more = new ArrayList<>(faults);
    find(id).ifPresent(p -> more.add(new PluginFault(id, p.origin(), reason)));
    return new PluginCatalog(folder, without(Set.of(id)).plugins(), more);
  }
}
