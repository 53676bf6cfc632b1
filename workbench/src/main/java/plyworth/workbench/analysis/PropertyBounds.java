package plyworth.workbench.analysis;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plyworth.shared.data.DataException;
import plyworth.shared.material.Material;
import plyworth.shared.material.Property;
import plyworth.shared.material.PropertyDefinition;
import plyworth.shared.material.PropertyDefinition.Along;
import plyworth.shared.material.Sourced;
import plyworth.shared.quantity.Range;
import plyworth.shared.study.Study;
import plyworth.workbench.host.LoadedPlugin;
import plyworth.workbench.host.PluginCatalog;
import plyworth.workbench.host.UnitText;

/**
 * Checks the materials that a study carries against what the plugins declare of the properties they
 * read: the unit, and the bounds of what is physically possible.
 */
public final class PropertyBounds {

  private final List<References.Dangling> found = new ArrayList<>();

  private PropertyBounds() {}

  /**
   * Every figure that cannot be, one remark for each.
   *
   * @param materials the materials in the order of the study file
   */
  public static List<References.Dangling> check(List<Material> materials, PluginCatalog catalog) {
    PropertyBounds bounds = new PropertyBounds();
    for (int i = 0; i < materials.size(); i++) {
      Material material = materials.get(i);
      String path = "materials[" + i + "].properties.";
      material
          .properties()
          .values()
          .forEach(p -> bounds.property(path + p.id(), material, p, catalog));
    }
    return List.copyOf(bounds.found);
  }

  /**
   * Refuses a study with figures that cannot be.
   *
   * @param file the file that the study was read from
   * @throws DataException for the first of them; it suppresses one for each of the others
   */
  public static void require(Path file, Study study, PluginCatalog catalog) {
    List<References.Dangling> found = check(study.materials(), catalog);
    if (!found.isEmpty()) {
      throw StudyPlaces.refusal(file, found);
    }
  }

  /** Whichever plugin objects first speaks for all. */
  private void property(String path, Material material, Property property, PluginCatalog catalog) {
    int before = found.size();
    for (LoadedPlugin plugin : catalog.plugins()) {
      for (PropertyDefinition definition : plugin.plugin().properties()) {
        if (definition.id().equals(property.id()) && found.size() == before) {
          property(path, material, property, plugin, definition);
        }
      }
    }
  }

  private void property(
      String path,
      Material material,
      Property property,
      LoadedPlugin plugin,
      PropertyDefinition definition) {
    String subject = "the " + property.id() + " of " + material.id();
    String reader = "; the plugin " + plugin.id() + " reads it.";
    if (!property.unit().equals(definition.unit())) {
      add(
          path + ".unit",
          subject + " is given in \"" + property.unit() + "\"",
          "Give it in \"" + definition.unit() + "\"" + reader);
      return;
    }
    for (int i = 0; i < property.points().size(); i++) {
      Sourced figure = property.points().get(i);
      figure(path + ".figures[" + i + "].", subject, figure, definition, reader);
    }
  }

  private void figure(
      String path, String subject, Sourced figure, PropertyDefinition definition, String reader) {
    if (!possible(figure.at(), definition.along())) {
      add(
          path + "at",
          subject + " is given" + where(figure.at(), definition.along()),
          "A gauge is greater than 0 µm, a humidity between 0 and 100 %" + reader);
    }
    outside(figure.range(), definition)
        .ifPresent(
            key -> {
              String value = amount(value(figure.range(), key), definition.unit());
              add(
                  path + key,
                  subject + where(figure.at(), definition.along()) + " is " + value,
                  ("It must lie between " + plain(definition.lowest()) + " and ")
                      + (amount(definition.highest(), definition.unit()))
                      + (". Mend the figure or its unit" + reader));
            });
  }

  private static boolean possible(double at, Along along) {
    return switch (along) {
      case NOTHING -> true;
      case GAUGE -> !(at <= 0);
      case HUMIDITY -> !(at < 0 || at > 100);
    };
  }

  private static String where(double at, Along along) {
    if (along == Along.NOTHING || Double.isNaN(at)) {
      return "";
    }
    return " at " + plain(at) + (along == Along.GAUGE ? " µm" : " % RH");
  }

  /** The key of the figure that is outside; the outermost one, where several are. */
  private static Optional<String> outside(Range range, PropertyDefinition definition) {
    if (range.low() < definition.lowest()) {
      return Optional.of("low");
    }
    return range.high() > definition.highest() ? Optional.of("high") : Optional.empty();
  }

  private static double value(Range range, String key) {
    return key.equals("low") ? range.low() : range.high();
  }

  private static String amount(double figure, String unit) {
    return (plain(figure) + " " + UnitText.of(unit)).strip();
  }

  /** All digits as they were typed, with an exponent only where zeros would have to be counted. */
  private static String plain(double figure) {
    BigDecimal exact = BigDecimal.valueOf(figure).stripTrailingZeros();
    boolean countable = figure == 0 || Math.abs(figure) >= 1e-4 && Math.abs(figure) < 1e7;
    return countable ? exact.toPlainString() : exact.toString().replace("E+", "E");
  }

  private void add(String path, String problem, String remedy) {
    found.add(new References.Dangling(path, Optional.empty(), problem, remedy));
  }
}
