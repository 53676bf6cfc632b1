package plyworth.shared.route;

import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.LayerNotation;
import plyworth.shared.structure.Structure;

/**
 * Reads structures that people write: every material and process must be at hand, and an alias of a
 * material is replaced by its id, so that one laminate has one spelling.
 *
 * @param materials materials at hand
 * @param processes processes at hand
 */
public record StructureText(MaterialLibrary materials, ProcessLibrary processes) {

  /**
   * Reads a structure in layer notation.
   *
   * @throws IllegalArgumentException naming what is wrong and what would be right
   */
  public Structure read(String notation) {
    return new Structure(
        LayerNotation.readStructure(notation).layers().stream().map(this::known).toList());
  }

  private Layer known(Layer layer) {
    processes.role(layer);
    return new Layer(
        materials.require(layer.material()).id(),
        layer.amount(),
        layer.unit(),
        layer.process(),
        layer.side(),
        layer.coverage());
  }
}
