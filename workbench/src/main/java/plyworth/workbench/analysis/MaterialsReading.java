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

/** Reads a table of figures into a study: its lines first, then its properties as a whole. */
final class MaterialsReading {

  /** The figures of one property of one material, as far as they were read. */
  private static final class Group {

    private final String material;
    private final List<Property> figures = new ArrayList<>();
    private final List<RefusedLine> lines = new ArrayList<>();
    private boolean broken;

    Group(String material) {
      this.material = material;
    }
  }

  private final MaterialLibrary library;
  private final PluginCatalog catalog;
  private final KeptUnits units;
  private final NewMaterials newcomers;
  private final Map<String, Group> groups = new LinkedHashMap<>();
  private final List<String> added = new ArrayList<>();
  private final List<MaterialImport.Change> changes = new ArrayList<>();
  private final List<RefusedLine> refused = new ArrayList<>();
  private Study study;
  private int same;

  MaterialsReading(Study study, PluginCatalog catalog) {
    this.study = study;
    this.catalog = catalog;
    library = study.materialsBefore();
    units = KeptUnits.of(library, catalog);
    newcomers = new NewMaterials(library);
  }

  MaterialImport of(List<Csv.Row> rows) {
    rows.forEach(newcomers::describe);
    refused.addAll(newcomers.refused());
    rows.forEach(this::line);
    newcomers.materials().forEach(this::bring);
    groups.forEach((key, group) -> property(group));
    return new MaterialImport(
        added.stream().map(study.materialsBefore()::require).toList(),
        changes,
        same,
        refused.stream().sorted(Comparator.comparingInt(RefusedLine::line)).toList(),
        study);
  }

  private void line(Csv.Row row) {
    String written = row.text(MaterialsCsv.MATERIAL);
    String what = written + ", " + row.text(MaterialsCsv.PROPERTY);
    String material = library.find(written).map(Material::id).orElse(written);
    Group group =
        groups.computeIfAbsent(
            key(material, row.text(MaterialsCsv.PROPERTY)), k -> new Group(material));
    group.lines.add(
        new RefusedLine(row.place().line(), what, "another line of the same property is refused"));
    try {
      newcomers.require(written);
      group.figures.add(units.kept(PropertyTable.one(row, MaterialsCsv.PROPERTY)));
    } catch (DataException e) {
      refuse(group, RefusedLine.of(what, e));
    } catch (IllegalArgumentException e) {
      refuse(group, new RefusedLine(row.place().line(), what, e.getMessage()));
    }
  }

  private static String key(String material, String property) {
    return material + "/" + property;
  }

  private void refuse(Group group, RefusedLine line) {
    group.broken = true;
    group.lines.remove(group.lines.size() - 1);
    refused.add(line);
  }

  /** A material comes with its density, or not at all. */
  private void bring(String id, MaterialDescription description) {
    Group density = groups.get(key(id, Material.DENSITY));
    boolean known = density != null && !density.broken;
    if (known && taken(density, () -> described(id, description, density))) {
      added.add(id);
    } else {
      groups.values().stream().filter(group -> group.material.equals(id)).forEach(this::without);
    }
    groups.remove(key(id, Material.DENSITY));
  }

  private void described(String id, MaterialDescription description, Group density) {
    take(description.material(id, joined(density.figures)), Material.DENSITY, Optional.empty());
  }

  /** What belongs to a material that does not come. */
  private void without(Group group) {
    group.lines.forEach(
        line ->
            refused.add(
                new RefusedLine(
                    line.line(),
                    line.what(),
                    "a new material needs its density, which is missing or refused. Give it in a"
                        + " line of its own.")));
    group.lines.clear();
    group.broken = true;
  }

  private void property(Group group) {
    if (group.broken) {
      refused.addAll(group.lines);
    } else {
      taken(group, () -> replace(group));
    }
  }

  private void replace(Group group) {
    Material material = study.materialsBefore().require(group.material);
    Property after = joined(group.figures);
    Optional<Property> before = material.property(after.id());
    if (before.filter(after::equals).isPresent()) {
      same++;
    } else {
      take(material.with(after), after.id(), before);
    }
  }

  /** Whether the lines of a group are taken; where not, they are refused with the reason. */
  private boolean taken(Group group, Runnable taking) {
    try {
      taking.run();
      return true;
    } catch (IllegalArgumentException e) {
      group.lines.forEach(
          line -> refused.add(new RefusedLine(line.line(), line.what(), e.getMessage())));
      group.lines.clear();
      return false;
    }
  }

  private void take(Material changed, String property, Optional<Property> before) {
    Study with = StudyMaterials.with(study, changed);
    StudyMaterials.objection(with, changed, catalog)
        .ifPresent(
            objection -> {
              throw new IllegalArgumentException(objection);
            });
    study = with;
    changes.add(
        new MaterialImport.Change(changed.id(), before, changed.property(property).orElseThrow()));
  }

  private static Property joined(List<Property> figures) {
    Property first = figures.get(0);
    Property joined =
        new Property(
            first.id(), first.unit(), figures.stream().flatMap(p -> p.points().stream()).toList());
    long places = joined.points().stream().mapToDouble(p -> p.at()).distinct().count();
    if (places < joined.points().size()) {
      throw new IllegalArgumentException(
          first.id() + " is given twice at the same place. Keep one of the lines.");
    }
    return joined;
  }
}
