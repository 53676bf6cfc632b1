package plyworth.shared.structure;

import java.util.List;
import java.util.stream.Collectors;

/**
 * An ordered list of layers, outside first. Its layer list is its identity.
 *
 * @param layers at least one layer
 */
public record Structure(List<Layer> layers) {

  /**
   * Copies the list.
   *
   * @throws IllegalArgumentException when it is empty
   */
  public Structure {
    layers = List.copyOf(layers);
    if (layers.isEmpty()) {
      throw new IllegalArgumentException("a structure needs at least one layer");
    }
  }

  /** A structure of the given layers, outside first. */
  public static Structure of(Layer... layers) {
    return new Structure(List.of(layers));
  }

  /** The outermost layer. */
  public Layer outermost() {
    return layers.get(0);
  }

  /** The innermost layer, next to the product. */
  public Layer innermost() {
    return layers.get(layers.size() - 1);
  }

  /** The layer notation: layers joined by {@code " / "}. */
  @Override
  public String toString() {
    return layers.stream().map(LayerNotation::write).collect(Collectors.joining(" / "));
  }
}
