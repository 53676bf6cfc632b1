package plyworth.workbench.command.evidence;

import java.io.PrintWriter;
import java.util.Set;
import java.util.stream.Collectors;
import plyworth.shared.material.Material;
import plyworth.shared.material.Property;
import plyworth.shared.material.Sourced;
import plyworth.shared.quantity.Range;
import plyworth.shared.study.Study;
import plyworth.workbench.analysis.MaterialImport;
import plyworth.workbench.analysis.MaterialUse;
import plyworth.workbench.analysis.StudyMaterials;
import plyworth.workbench.command.print.Paragraph;
import plyworth.workbench.host.Digits;
import plyworth.workbench.host.UnitText;

/** Prints for people which materials a study has, and what a file would change in them. */
final class MaterialsText {

  private MaterialsText() {}

  static void print(Study study, PrintWriter out) {
    Set<String> used = MaterialUse.used(study);
    out.println(study.title());
    out.println();
    for (Material material : StudyMaterials.here(study)) {
      out.printf(
          "  %-28s %s%n    %d properties; %s; %s%n",
          material.id(),
          material.name(),
          material.properties().size(),
          used.contains(material.id()) ? "used" : "carried, not used",
          StudyMaterials.own(study, material.id()) ? "figures of its own" : "as in the library");
    }
  }

  static void print(MaterialImport read, PrintWriter out) {
    int changes = read.changes().size();
    int refused = read.refused().size();
    out.printf(
        "%d %s or added, %d stay as they are, %d %s refused.%n",
        changes,
        changes == 1 ? "property is changed" : "properties are changed",
        read.same(),
        refused,
        refused == 1 ? "line is" : "lines are");
    for (Material material : read.added()) {
      out.printf("  %s is new: %s%n", material.id(), material.name());
      out.printf(
          "    family %s; kinds %s; figures of the %s%n",
          material.family(), String.join(", ", material.kinds()), material.basis());
    }
    for (MaterialImport.Change change : read.changes()) {
      out.printf("  %s/%s%n", change.material(), change.after().id());
      out.println("    now   " + change.before().map(MaterialsText::figures).orElse("unknown"));
      out.println("    then  " + figures(change.after()));
      out.println(Paragraph.of("    ", "from  " + change.after().points().get(0).source()));
    }
  }

  private static String figures(Property property) {
    return property.points().stream().map(MaterialsText::figure).collect(Collectors.joining("; "))
        + (" " + UnitText.of(property.unit())).stripTrailing();
  }

  private static String figure(Sourced point) {
    Range range = point.range();
    String at = Double.isNaN(point.at()) ? "" : Digits.sensible(point.at()) + ": ";
    return at
        + Digits.sensible(range.typical())
        + (" (" + Digits.sensible(range.low()) + " to " + Digits.sensible(range.high()) + ")");
  }
}
