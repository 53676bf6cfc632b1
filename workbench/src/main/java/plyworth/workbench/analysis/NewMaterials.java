package plyworth.workbench.analysis;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import plyworth.shared.data.Csv;
import plyworth.shared.material.Material;
import plyworth.shared.material.MaterialLibrary;

/** The materials that a table describes and the study does not have. */
final class NewMaterials {

  private final MaterialLibrary library;
  private final Map<String, MaterialDescription> described = new LinkedHashMap<>();
  private final Set<String> unusable = new HashSet<>();
  private final List<RefusedLine> refused = new ArrayList<>();

  NewMaterials(MaterialLibrary library) {
    this.library = library;
  }

  /** Descriptions by id, in the order of the table. */
  Map<String, MaterialDescription> materials() {
    return described;
  }

  /** Lines whose description is not taken over; their figures may be. */
  List<RefusedLine> refused() {
    return refused;
  }

  /** Takes notice of what a line says of its material as a whole. */
  void describe(Csv.Row row) {
    MaterialDescription said = MaterialDescription.of(row);
    String id = row.text(MaterialsCsv.MATERIAL);
    if (!said.empty() && !unusable.contains(id)) {
      objection(id, said)
          .ifPresentOrElse(
              reason -> {
                unusable.add(id);
                described.remove(id);
                refused.add(new RefusedLine(row.place().line(), id, reason));
              },
              () -> {
                if (library.find(id).isEmpty()) {
                  described.put(id, said);
                }
              });
    }
  }

  private Optional<String> objection(String id, MaterialDescription said) {
    Optional<Material> there = library.find(id);
    if (there.isPresent()) {
      List<String> unlike = said.unlike(there.get());
      return unlike.isEmpty()
          ? Optional.empty()
          : Optional.of(
              "the study has this material already, with another "
                  + String.join(", ", unlike)
                  + ". Leave these cells empty, or give the new material another id.");
    }
    MaterialDescription before = described.getOrDefault(id, said);
    return before.equals(said)
        ? said.objection(library)
        : Optional.of("a line before describes this material otherwise. Describe it once.");
  }

  /**
   * Lets the material of a line pass.
   *
   * @throws IllegalArgumentException when it is neither there nor described
   */
  void require(String id) {
    if (unusable.contains(id) && library.find(id).isEmpty()) {
      throw new IllegalArgumentException("the line that describes this material is refused");
    }
    if (!described.containsKey(id) && library.find(id).isEmpty()) {
      throw new IllegalArgumentException(
          (unknown(id) + " A new material says what it is: ")
              + String.join(", ", MaterialDescription.COLUMNS)
              + ".");
    }
  }

  private String unknown(String id) {
    try {
      library.require(id);
      return "";
    } catch (IllegalArgumentException e) {
      return e.getMessage().strip();
    }
  }
}
