package plyworth.shared.route;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Structure;

/**
 * The passes that make a structure, in the order they are run; slitting comes last.
 *
 * <p>Which layer calls for a pass depends on it and its outer neighbour alone ({@link #passAt}), so
 * that costs of passes can be added up layer by layer. A layer enters at its own pass, or, when it
 * calls for none, at the next pass called for inside it. Two consequences: print and varnish on one
 * face are one pass when the same press puts them down, and the parts of a coextruded web are
 * counted at the area that leaves the pass in which their web enters.
 *
 * @param passes passes in order
 */
public record Route(List<Pass> passes) {

  /** Copies the list. */
  public Route {
    passes = List.copyOf(passes);
  }

  /**
   * The route of a structure.
   *
   * @throws IllegalArgumentException when a layer names an unknown process
   */
  public static Route of(Structure structure, ProcessLibrary processes) {
    List<Pass> passes = new ArrayList<>();
    List<Integer> waiting = new ArrayList<>();
    Layer outer = null;
    for (int i = 0; i < structure.layers().size(); i++) {
      Layer layer = structure.layers().get(i);
      waiting.add(i);
      Optional<Process> pass = passAt(layer, outer, processes);
      if (pass.isPresent()) {
        passes.add(new Pass(pass.get(), waiting));
        waiting = new ArrayList<>();
      }
      outer = layer;
    }
    passes.add(new Pass(processes.require(ProcessLibrary.SLITTING), waiting));
    return new Route(passes);
  }

  /**
   * The pass that a layer calls for.
   *
   * <p>A web calls for the pass that its outer neighbour, a bond, print or coating, waits for;
   * print and coatings on the inner face of something call for their own, unless the same process
   * put the outer neighbour down as well.
   *
   * @param outer the layer outside it; null for the outermost
   */
  public static Optional<Process> passAt(Layer layer, Layer outer, ProcessLibrary processes) {
    if (outer == null) {
      return Optional.empty();
    }
    return switch (processes.role(layer)) {
      case WEB -> processes.find(outer.process()).filter(p -> p.role() != ProcessRole.WEB_PART);
      case PRINT, COATING ->
          layer.process().equals(outer.process())
              ? Optional.empty()
              : processes.find(layer.process());
      default -> Optional.empty();
    };
  }
}
