package plyworth.workbench.analysis;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import plyworth.shared.material.Material;
import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.study.MaterialResult;
import plyworth.shared.study.Study;
import plyworth.workbench.host.PluginCatalog;

/** Edits of the materials that a study carries; those of the library never change. */
public final class StudyMaterials {

  private StudyMaterials() {}

  /** The study with its own copy of a material, added or put in place of that of the same id. */
  public static Study with(Study study, Material material) {
    Map<String, Material> carried = carried(study);
    carried.put(material.id(), material);
    return study.carrying(List.copyOf(carried.values()), study.processes());
  }

  /**
   * The study without its own copy of a material.
   *
   * @throws IllegalArgumentException when the study speaks of the material
   */
  public static Study without(Study study, String material) {
    List<MaterialUse> uses = MaterialUse.of(study, material);
    if (!uses.isEmpty()) {
      throw new IllegalArgumentException(
          "the study uses "
              + material
              + " in "
              + uses.size()
              + " places. Take it out there first.");
    }
    Map<String, Material> carried = carried(study);
    carried.remove(material);
    return study.carrying(List.copyOf(carried.values()), study.processes());
  }

  private static Map<String, Material> carried(Study study) {
    Map<String, Material> carried = new TreeMap<>();
    study.materials().forEach(material -> carried.put(material.id(), material));
    return carried;
  }

  /** The materials that a study uses or carries, before anything was measured. */
  public static List<Material> here(Study study) {
    Set<String> used = MaterialUse.used(study);
    return study.materialsBefore().all().stream()
        .filter(m -> used.contains(m.id()) || carries(study, m.id()))
        .toList();
  }

  /** Whether the study carries a copy of its own. */
  public static boolean carries(Study study, String material) {
    return study.materials().stream().anyMatch(m -> m.id().equals(material));
  }

  /**
   * Whether the study's copy says something else than the library's.
   *
   * @param material id
   */
  public static boolean own(Study study, String material) {
    return !study
        .materialsBefore()
        .find(material)
        .equals(MaterialLibrary.standard().find(material));
  }

  /**
   * What is wrong with a material after an edit: a figure that no plugin can read, or one that what
   * was measured cannot correct; empty when nothing is.
   */
  public static Optional<String> objection(
      Study changed, Material material, PluginCatalog catalog) {
    Optional<String> bound =
        PropertyBounds.check(material, catalog).stream()
            .findFirst()
            .map(wrong -> wrong.problem() + ". " + wrong.remedy());
    return bound.or(() -> readings(changed, material));
  }

  private static Optional<String> readings(Study changed, Material material) {
    MaterialLibrary library = changed.materialsBefore();
    for (MaterialResult result : changed.results().materials()) {
      if (library.find(result.material()).filter(material::equals).isPresent()) {
        try {
          result.requireIn(library);
        } catch (IllegalArgumentException e) {
          return Optional.of("A reading stands in the way: " + e.getMessage());
        }
      }
    }
    return Optional.empty();
  }
}
