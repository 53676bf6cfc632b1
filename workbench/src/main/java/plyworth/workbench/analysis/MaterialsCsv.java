package plyworth.workbench.analysis;

import java.util.Collection;
import java.util.List;
import plyworth.shared.data.Choice;
import plyworth.shared.material.Material;
import plyworth.shared.material.Property;
import plyworth.shared.material.PropertyTable;
import plyworth.shared.material.Sourced;
import plyworth.workbench.host.CsvLine;

/** Sourced figures of materials as a table, one figure to a line. */
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
    StringBuilder lines = new StringBuilder(CsvLine.of(header()));
    for (Material material : materials) {
      for (Property property : material.properties().values()) {
        property.points().forEach(point -> lines.append(line(material, property, point)));
      }
    }
    return lines.toString();
  }

  private static String line(Material material, Property property, Sourced point) {
    return CsvLine.of(
        List.of(
            material.id(),
            property.id(),
            CsvLine.exact(point.at()),
            CsvLine.exact(point.range().low()),
            CsvLine.exact(point.range().typical()),
            CsvLine.exact(point.range().high()),
            property.unit(),
            Choice.plain(point.kind()),
            point.source()));
  }
}
