package plyworth.workbench.desktop.position;

import java.util.Optional;
import java.util.stream.Stream;
import plyworth.shared.material.Material;
import plyworth.shared.route.Process;
import plyworth.shared.route.ProcessRole;
import plyworth.shared.structure.Layer;
import plyworth.shared.study.Study;

/**
 * What a layer of a material most likely looks like: as the study has it already, or by its kind.
 */
final class Suggestion {

  private Suggestion() {}

  /** A layer of the material that the study speaks of, at a position first. */
  static Optional<Layer> layer(Study study, int position, Material material) {
    return Stream.of(
            layers(study, position),
            Stream.iterate(0, p -> p + 1)
                .limit(study.positions().size())
                .flatMap(p -> layers(study, p)),
            study.baseline().layers().stream())
        .flatMap(layers -> layers)
        .filter(layer -> layer.material().equals(material.id()))
        .findFirst();
  }

  private static Stream<Layer> layers(Study study, int position) {
    return study.positions().get(position).options().stream().flatMap(o -> o.layers().stream());
  }

  /** The process of a material of which the study has no layer; empty for a web that is bought. */
  static String process(Study study, Material material) {
    return study.processesAtHand().processes().values().stream()
        .filter(p -> p.role() == role(material))
        .map(Process::id)
        .findFirst()
        .orElse("");
  }

  private static ProcessRole role(Material material) {
    if (material.kinds().contains("web")) {
      return ProcessRole.WEB;
    } else if (material.kinds().contains("print")) {
      return ProcessRole.PRINT;
    }
    return material.kinds().contains("adhesive") ? ProcessRole.BOND : ProcessRole.COATING;
  }
}
