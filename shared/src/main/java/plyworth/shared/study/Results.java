package plyworth.shared.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import plyworth.shared.material.Material;
import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.material.Property;

/**
 * What laboratories and trials found since the study began.
 *
 * @param materials of materials; they correct the figures that the study reckons with
 * @param candidates of candidates
 */
public record Results(List<MaterialResult> materials, List<CandidateResult> candidates) {

  /** Nothing was measured yet. */
  public static final Results NONE = new Results(List.of(), List.of());

  /** Copies both. */
  public Results {
    materials = List.copyOf(materials);
    candidates = List.copyOf(candidates);
  }

  /** These results and more of materials. */
  public Results and(List<MaterialResult> more) {
    return new Results(Stream.concat(materials.stream(), more.stream()).toList(), candidates);
  }

  /** A library in which every figure that was measured is corrected. */
  public MaterialLibrary correct(MaterialLibrary library) {
    if (materials.isEmpty()) {
      return library;
    }
    Map<String, Material> corrected = new TreeMap<>();
    for (MaterialResult result : materials) {
      Material material = library.require(result.material());
      corrected.put(
          material.id(), correct(corrected.getOrDefault(material.id(), material), result));
    }
    return library.with(corrected.values());
  }

  private static Material correct(Material material, MaterialResult result) {
    Property before = material.properties().get(result.property());
    return material.with(Correction.of(before, result));
  }

  /** The results of one property, in the order in which they stand. */
  public List<MaterialResult> of(String material, String property) {
    List<MaterialResult> found = new ArrayList<>();
    for (MaterialResult result : materials) {
      if (result.material().equals(material) && result.property().equals(property)) {
        found.add(result);
      }
    }
    return List.copyOf(found);
  }
}
