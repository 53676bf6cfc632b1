package plyworth.workbench.analysis;

import java.util.List;
import java.util.Optional;
import plyworth.shared.data.Csv;
import plyworth.shared.data.DataException;
import plyworth.shared.material.Material;
import plyworth.shared.material.Property;
import plyworth.shared.material.PropertyTable;
import plyworth.shared.study.Study;
import plyworth.workbench.host.PluginCatalog;

/**
 * What a table of figures would change in the materials of a study. A property that the table names
 * is replaced as a whole; what it does not name stays. A line that is refused takes the other lines
 * of its property with it, since half a table is another table.
 *
 * @param added materials that the study does not have, with all that the table gives of them
 * @param changes properties that become others or are new, in the order of the table
 * @param same how many properties stay as they are
 * @param refused lines that are not taken over
 * @param study the study with all changes
 */
public record MaterialImport(
    List<Material> added, List<Change> changes, int same, List<RefusedLine> refused, Study study) {

  /**
   * A property that becomes another.
   *
   * @param material id
   * @param before the property now; empty when the material has none
   * @param after the property as the table has it
   */
  public record Change(String material, Optional<Property> before, Property after) {}

  /** Copies the lists. */
  public MaterialImport {
    added = List.copyOf(added);
    changes = List.copyOf(changes);
    refused = List.copyOf(refused);
  }

  /**
   * Reads a table with the columns of {@link PropertyTable}, and those that describe materials
   * where there are such. A material that the study does not have needs a description and its
   * density.
   *
   * @param source name of the file, for messages
   * @throws DataException when it is no such table, or a line has too many or too few cells
   */
  public static MaterialImport read(
      String text, String source, Study study, PluginCatalog catalog) {
    return new MaterialsReading(study, catalog)
        .of(Csv.read(text, source, MaterialsCsv.header(), MaterialDescription.COLUMNS));
  }
}
