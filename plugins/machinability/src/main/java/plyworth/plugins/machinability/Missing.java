package plyworth.plugins.machinability;

import java.util.List;
import java.util.Optional;
import plyworth.shared.scoring.Outcome.DataMissing;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Structure;

/**
 * Names the figure that is missing where a criterion is unknown.
 *
 * @param structure the structure
 * @param context where its figures are read
 */
record Missing(Structure structure, ScoringContext context) {

  /** The first figure that a criterion lacks. */
  DataMissing of(String criterion) {
    Layer innermost = structure.innermost();
    return switch (criterion) {
      case Criteria.BENDING_STIFFNESS, Criteria.TENSILE_STIFFNESS ->
          first(List.of(inAll(List.of(Inputs.MODULUS))));
      case Criteria.SEAL_WINDOW ->
          first(
              List.of(
                  inAll(Inputs.THERMAL),
                  in(innermost, List.of(Inputs.SEAL_INITIATION, Inputs.UPPER_SEAL_LIMIT)),
                  in(structure.outermost(), List.of(Inputs.JAW_FACE_LIMIT)),
                  outermostWeb().flatMap(l -> in(l, List.of(Inputs.JAW_FACE_LIMIT)))));
      default ->
          first(List.of(inAll(Inputs.THERMAL), in(innermost, List.of(Inputs.SEAL_INITIATION))));
    };
  }

  private DataMissing first(List<Optional<DataMissing>> candidates) {
    return candidates.stream()
        .flatMap(Optional::stream)
        .findFirst()
        .orElse(new DataMissing(structure.innermost().material(), Inputs.SEAL_INITIATION));
  }

  private Optional<DataMissing> inAll(List<String> properties) {
    return structure.layers().stream().flatMap(l -> in(l, properties).stream()).findFirst();
  }

  private Optional<DataMissing> in(Layer layer, List<String> properties) {
    return properties.stream()
        .filter(p -> Double.isNaN(context.property(layer, p)))
        .map(p -> new DataMissing(layer.material(), p))
        .findFirst();
  }

  private Optional<Layer> outermostWeb() {
    return structure.layers().stream().filter(l -> context.kinds(l).contains("web")).findFirst();
  }
}
