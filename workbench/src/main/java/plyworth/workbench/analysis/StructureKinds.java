package plyworth.workbench.analysis;

import java.util.List;
import java.util.stream.Stream;
import plyworth.shared.material.MaterialLibrary;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Structure;

/** Tells the kind of structures by the kinds of their materials. */
public final class StructureKinds {

  private static final String BARRIER = "barrier";
  private static final String PRINT = "print";

  private final MaterialLibrary materials;

  /** Tells kinds by the materials a study has at hand. */
  public StructureKinds(MaterialLibrary materials) {
    this.materials = materials;
  }

  /** The kind of a structure. */
  public StructureKind of(Structure structure) {
    return new StructureKind(
        barrier(structure),
        having(structure, PRINT).map(Layer::process).distinct().toList(),
        structure.innermost().material());
  }

  /** Ids of the barrier materials of a structure, outside first. */
  public List<String> barrier(Structure structure) {
    return having(structure, BARRIER).map(Layer::material).distinct().toList();
  }

  private Stream<Layer> having(Structure structure, String kind) {
    return structure.layers().stream()
        .filter(layer -> materials.require(layer.material()).kinds().contains(kind));
  }
}
