package plyworth.workbench.analysis;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import plyworth.shared.data.DataException;
import plyworth.shared.material.Material;
import plyworth.shared.material.Property;
import plyworth.shared.material.PropertyDefinition;
import plyworth.shared.material.PropertyDefinition.Along;
import plyworth.shared.material.Sourced;
import plyworth.shared.quantity.Range;
import plyworth.shared.study.MaterialResult;
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

  /** Every figure that cannot be, of materials as they stand and as they were measured. */
  public static List<References.Dangling> check(Study study, PluginCatalog catalog) {
    PropertyBounds bounds = new PropertyBounds();
    List<Material> materials = study.materials();
    for (int i = 0; i < materials.size(); i++) {
      bounds.material("materials[" + i + "].properties.", materials.get(i), catalog);
    }
    List<MaterialResult> results = study.results().materials();
    for (int i = 0; i < results.size(); i++) {
      String path = "results.measured_materials[" + i + "].";
      MaterialResult result = results.get(i);
      bounds.property(
          result.material(),
          result.property(),
          catalog,
          reader -> bounds.reading(path, result, reader));
    }
    return List.copyOf(bounds.found);
  }

  /** Every figure of one material that cannot be; places are counted from the material. */
  public static List<References.Dangling> check(Material material, PluginCatalog catalog) {
    PropertyBounds bounds = new PropertyBounds();
    bounds.material("properties.", material, catalog);
    return List.copyOf(bounds.found);
  }

  private void material(String path, Material material, PluginCatalog catalog) {
    for (Property property : material.properties().values()) {
      String figures = path + property.id();
      property(material.id(), property.id(), catalog, reader -> table(figures, property, reader));
    }
  }

  /**
   * Refuses a study with figures that cannot be.
   *
   * @param file the file that the study was read from
   * @throws DataException for the first of them; it suppresses one for each of the others
   */
  public static void require(Path file, Study study, PluginCatalog catalog) {
    List<References.Dangling> found = check(study, catalog);
    if (!found.isEmpty()) {
      throw StudyPlaces.refusal(file, found);
    }
  }

  /**
   * A property as a plugin declares it.
   *
   * @param subject the property of a material, in words
   * @param reader who reads it, in words
   */
  private record Reader(String subject, PropertyDefinition definition, String reader) {}

  /** Whichever plugin objects first speaks for all. */
  private void property(
      String material, String property, PluginCatalog catalog, Consumer<Reader> check) {
    int before = found.size();
    for (LoadedPlugin plugin : catalog.plugins()) {
      for (PropertyDefinition definition : plugin.plugin().properties()) {
        if (definition.id().equals(property) && found.size() == before) {
          String reader = "; the plugin " + plugin.id() + " reads it.";
          check.accept(new Reader("the " + property + " of " + material, definition, reader));
        }
      }
    }
  }

  private void table(String path, Property property, Reader reader) {
    if (unit(path + ".unit", property.unit(), reader)) {
      for (int i = 0; i < property.points().size(); i++) {
        Sourced figure = property.points().get(i);
        String place = path + ".figures[" + i + "].";
        figure(place, reader.subject(), figure, reader.definition(), reader.reader());
      }
    }
  }

  private void reading(String path, MaterialResult result, Reader reader) {
    PropertyDefinition definition = reader.definition();
    double value = result.reading().value();
    if (!unit(path + "unit", result.reading().unit(), reader)) {
      return;
    }
    if (!possible(result.at(), definition.along())) {
      add(
          path + "at",
          reader.subject() + " is measured" + where(result.at(), definition.along()),
          "A gauge is greater than 0 µm, a humidity between 0 and 100 %" + reader.reader());
    }
    if (value < definition.lowest() || value > definition.highest()) {
      add(
          path + "value",
          reader.subject() + " is measured as " + amount(value, definition.unit()),
          ("It must lie between " + plain(definition.lowest()) + " and ")
              + (amount(definition.highest(), definition.unit()))
              + (". Mend the reading or its unit" + reader.reader()));
    }
  }

  private boolean unit(String path, String unit, Reader reader) {
    boolean right = unit.equals(reader.definition().unit());
    if (!right) {
      add(
          path,
          reader.subject() + " is given in \"" + unit + "\"",
          "Give it in \"" + reader.definition().unit() + "\"" + reader.reader());
    }
    return right;
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
