package plyworth.shared.structure;

import java.util.List;
import java.util.stream.Collectors;

/**
 * What may stand at a position: nothing, one layer, or several (a coextrusion, or a bond with its
 * web).
 *
 * @param layers outside first; empty for nothing
 */
public record Option(List<Layer> layers) {

  /** Nothing stands there. */
  public static final Option NOTHING = new Option(List.of());

  /** Copies the list. */
  public Option {
    layers = List.copyOf(layers);
  }

  /** An option of the given layers, outside first. */
  public static Option of(Layer... layers) {
    return new Option(List.of(layers));
  }

  @Override
  public String toString() {
    return layers.isEmpty()
        ? "nothing"
        : layers.stream().map(LayerNotation::write).collect(Collectors.joining(" / "));
  }
}
