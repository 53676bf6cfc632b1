package plyworth.workbench.analysis;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plyworth.shared.data.Csv;
import plyworth.shared.data.DataException;
import plyworth.shared.material.Material;
import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.material.Property;
import plyworth.shared.material.PropertyTable;
import plyworth.shared.study.Study;
import plyworth.workbench.host.PluginCatalog;

/**
 * What a table of figures would change in the materials of a study. A property that the table names
 * is replaced as a whole; what it does not name stays. A line that is refused takes the other lines
 * of its property with it, since half a table is another table.
 *
 * @param changes properties that become others, in the order of the table
 * @param same how many properties stay as they are
 * @param refused lines that are not taken over
 * @param study the study with all changes
 */
public record MaterialImport(
    List<Change> changes, int same, List<RefusedLine> refused, Study study) {

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
    changes = List.copyOf(changes);
    refused = List.copyOf(refused);
  }

  /**
   * Reads a table with the columns of {@link PropertyTable}; the material must be there already.
   *
   * @param source name of the file, for messages
   * @throws DataException when it is no such table, or a line has too many or too few cells
   */
  public static MaterialImport read(
      String text, String source, Study study, PluginCatalog catalog) {
    Reading reading = new Reading(study, catalog);
    Csv.read(text, source, MaterialsCsv.header()).forEach(reading::line);
    reading.properties.forEach(reading::property);
    return new MaterialImport(reading.changes, reading.same, reading.refused(), reading.study);
  }

  /** The figures of one property of one material, as far as they were read. */
  private static final class Group {

    private final Material material;
    private final List<Property> figures = new ArrayList<>();
    private final List<RefusedLine> lines = new ArrayList<>();
    private boolean broken;

    Group(Material material) {
      this.material = material;
    }
  }

  /** A table being read. */
  private static final class Reading {

    private final MaterialLibrary library;
    private final PluginCatalog catalog;
    private final KeptUnits units;
    private final Map<String, Group> properties = new LinkedHashMap<>();
    private final List<Change> changes = new ArrayList<>();
    private final List<RefusedLine> refused = new ArrayList<>();
    private Study study;
    private int same;

    Reading(Study study, PluginCatalog catalog) {
      this.study = study;
      this.catalog = catalog;
      library = study.materialsBefore();
      units = KeptUnits.of(library, catalog);
    }

    List<RefusedLine> refused() {
      return refused.stream().sorted(Comparator.comparingInt(RefusedLine::line)).toList();
    }

    void line(Csv.Row row) {
      String what = row.text(MaterialsCsv.MATERIAL) + ", " + row.text(MaterialsCsv.PROPERTY);
      Optional<Material> material = library.find(row.text(MaterialsCsv.MATERIAL));
      String key = material.map(Material::id).orElse("?") + "/" + row.text(MaterialsCsv.PROPERTY);
      Group group = properties.computeIfAbsent(key, k -> new Group(material.orElse(null)));
      group.lines.add(
          new RefusedLine(
              row.place().line(), what, "another line of the same property is refused"));
      try {
        library.require(row.text(MaterialsCsv.MATERIAL));
        group.figures.add(units.kept(PropertyTable.one(row, MaterialsCsv.PROPERTY)));
      } catch (DataException e) {
        refuse(group, RefusedLine.of(what, e));
      } catch (IllegalArgumentException e) {
        refuse(group, new RefusedLine(row.place().line(), what, e.getMessage()));
      }
    }

    private void refuse(Group group, RefusedLine line) {
      group.broken = true;
      group.lines.remove(group.lines.size() - 1);
      refused.add(line);
    }

    void property(String key, Group group) {
      if (group.broken) {
        refused.addAll(group.lines);
        return;
      }
      try {
        Property after = joined(group.figures);
        Optional<Property> before = group.material.property(after.id());
        if (before.filter(after::equals).isPresent()) {
          same++;
        } else {
          take(group.material.id(), before, after);
        }
      } catch (IllegalArgumentException e) {
        group.lines.forEach(
            line -> refused.add(new RefusedLine(line.line(), line.what(), e.getMessage())));
      }
    }

    private void take(String id, Optional<Property> before, Property after) {
      Material changed = study.materialsBefore().require(id).with(after);
      Study with = StudyMaterials.with(study, changed);
      StudyMaterials.objection(with, changed, catalog)
          .ifPresent(
              objection -> {
                throw new IllegalArgumentException(objection);
              });
      study = with;
      changes.add(new Change(id, before, after));
    }

    private static Property joined(List<Property> figures) {
      Property first = figures.get(0);
      Property joined =
          new Property(
              first.id(),
              first.unit(),
              figures.stream().flatMap(p -> p.points().stream()).toList());
      long places = joined.points().stream().mapToDouble(p -> p.at()).distinct().count();
      if (places < joined.points().size()) {
        throw new IllegalArgumentException(
            first.id() + " is given twice at the same place. Keep one of the lines.");
      }
      return joined;
    }
  }
}
