package plyworth.workbench.desktop.position;

import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plyworth.shared.material.Material;
import plyworth.workbench.desktop.word.MaterialNames;

/** Finds materials by what people type: name in either language, id, another id, family, kind. */
final class MaterialSearch {

  private MaterialSearch() {}

  /**
   * The materials in which every word occurs, those that answer to the text first, then by name.
   */
  static List<Material> find(Collection<Material> materials, String text) {
    String wanted = text.strip().toLowerCase(Locale.ROOT);
    List<String> words = Arrays.asList(wanted.split("\\s+"));
    return materials.stream()
        .filter(m -> words.stream().allMatch(searched(m)::contains))
        .sorted(
            Comparator.comparingInt((Material m) -> distance(m, wanted))
                .thenComparing(MaterialNames::of))
        .toList();
  }

  private static String searched(Material material) {
    return Stream.of(
            Stream.of(MaterialNames.of(material), material.name(), material.id()),
            material.aliases().stream(),
            Stream.of(material.family(), MaterialNames.family(material)),
            Stream.of(MaterialNames.kinds(material)),
            material.kinds().stream())
        .flatMap(words -> words)
        .collect(Collectors.joining("\n"))
        .toLowerCase(Locale.ROOT);
  }

  /** 0 for the very id, 1 where an id or name begins with the text, else 2. */
  private static int distance(Material material, String wanted) {
    List<String> names =
        Stream.concat(
                Stream.of(material.id(), MaterialNames.of(material).toLowerCase(Locale.ROOT)),
                material.aliases().stream())
            .toList();
    if (names.contains(wanted)) {
      return 0;
    }
    return names.stream().anyMatch(name -> name.startsWith(wanted)) ? 1 : 2;
  }
}
