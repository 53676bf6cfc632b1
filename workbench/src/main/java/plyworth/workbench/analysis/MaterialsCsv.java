package plyworth.workbench.analysis;

import java.util.Collection;
import java.util.List;
import java.util.stream.Stream;
import plyworth.shared.data.Choice;
import plyworth.shared.material.Material;
import plyworth.shared.material.Property;
import plyworth.shared.material.PropertyTable;
import plyworth.shared.material.Sourced;
import plyworth.workbench.host.CsvLine;

/**
 * Sourced figures of materials as a table, one figure to a line. The first line of a material also
 * says what it is, so that a study that does not have it can take it over.
 */
public final class MaterialsCsv {

  static final String MATERIAL = "material";
  static final String PROPERTY = "property";

  private MaterialsCsv() {}

  /** The columns, in their order. */
  static List<String> header() {
    return PropertyTable.header(MATERIAL, PROPERTY);
  }

  /** The table of some materials, every digit of their figures kept. */
  public static String text(Collection<Material> materials) {
    StringBuilder lines = new StringBuilder(line(header(), MaterialDescription.COLUMNS));
    for (Material material : materials) {
      MaterialDescription said = MaterialDescription.of(material);
      for (Property property : material.properties().values()) {
        for (Sourced point : property.points()) {
          lines.append(line(figure(material, property, point), said.cells()));
          said = MaterialDescription.none();
        }
      }
    }
    return lines.toString();
  }

  private static String line(List<String> figure, List<String> description) {
    return CsvLine.of(Stream.concat(figure.stream(), description.stream()).toList());
  }

  private static List<String> figure(Material material, Property property, Sourced point) {
    return List.of(
        material.id(),
        property.id(),
        CsvLine.exact(point.at()),
        CsvLine.exact(point.range().low()),
        CsvLine.exact(point.range().typical()),
        CsvLine.exact(point.range().high()),
        property.unit(),
        Choice.plain(point.kind()),
        point.source());
  }
}
