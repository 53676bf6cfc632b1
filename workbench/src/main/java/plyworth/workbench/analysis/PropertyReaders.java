package plyworth.workbench.analysis;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import plyworth.shared.material.PropertyDefinition;
import plyworth.workbench.host.LoadedPlugin;
import plyworth.workbench.host.PluginCatalog;

/**
 * Which plugins read which property of a material, and what each says of it.
 *
 * @param byProperty readers by id of the property; a property that nobody reads is not there
 */
public record PropertyReaders(Map<String, List<Reader>> byProperty) {

  /** A plugin that reads a property, and its declaration. */
  public record Reader(LoadedPlugin plugin, PropertyDefinition definition) {}

  /** Copies and sorts. */
  public PropertyReaders {
    Map<String, List<Reader>> copied = new TreeMap<>();
    byProperty.forEach((id, readers) -> copied.put(id, List.copyOf(readers)));
    byProperty = Collections.unmodifiableMap(copied);
  }

  /** The readers among the plugins at hand. */
  public static PropertyReaders of(PluginCatalog catalog) {
    Map<String, List<Reader>> found = new TreeMap<>();
    for (LoadedPlugin plugin : catalog.plugins()) {
      for (PropertyDefinition definition : plugin.plugin().properties()) {
        found
            .computeIfAbsent(definition.id(), id -> new ArrayList<>())
            .add(new Reader(plugin, definition));
      }
    }
    return new PropertyReaders(found);
  }

  /** Who reads a property; empty for nobody. */
  public List<Reader> of(String property) {
    return byProperty.getOrDefault(property, List.of());
  }
}
