package plyworth.workbench.engine;

import java.util.List;
import java.util.stream.Collectors;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.LayerNotation;
import plyworth.shared.structure.Structure;

/**
 * One reason why a structure is not on offer.
 *
 * @param rule id of the neighbour rule that forbids it; empty when the positions do not offer it
 * @param reason why, in a sentence
 * @param source where the rule comes from; empty when the positions do not offer it
 * @param layers indexes of the layers concerned, counted from 0 from the outside; empty when the
 *     objection is that a layer is missing
 */
public record Objection(String rule, String reason, String source, List<Integer> layers) {

  /** Copies the list. */
  public Objection {
    layers = List.copyOf(layers);
  }

  /** Whether a rule objects, rather than the positions. */
  public boolean isRule() {
    return !rule.isEmpty();
  }

  /** The layers concerned, written out. */
  public String layersOf(Structure structure) {
    List<Layer> all = structure.layers();
    return layers.stream()
        .map(i -> LayerNotation.write(all.get(i)))
        .collect(Collectors.joining(" / "));
  }
}
