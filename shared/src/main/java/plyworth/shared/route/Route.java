package plyworth.shared.route;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Structure;

/**
 * The passes that make a structure; slitting comes last.
 *
 * <p>Neighbouring layers that one process puts down are one run and call for one pass: print and
 * varnish from one press, the layers of a coextrusion coating. A web is unwound into the pass of
 * the run outside it. A layer enters in the pass it calls for ({@link #passAt}), else in the pass
 * it shares with its outer neighbour ({@link #sharedPass}), else in the next pass called for inside
 * it. Both depend on the layer and its outer neighbour alone, so that costs of passes can be added
 * up layer by layer.
 *
 * <p>Three consequences, each a matter of a few per cent of waste: passes stand in the order of
 * their layers, outside first, also where one face of a web is printed first and lacquered then; a
 * coating on a web that is laminated later is counted as though it ran on the whole laminate; and
 * the parts of a coextruded web are counted at the area that leaves the pass in which their web
 * enters.
 *
 * @param passes passes, that of the outermost layers first
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
    List<Process> called = new ArrayList<>();
    List<List<Integer>> entering = new ArrayList<>();
    List<Integer> waiting = new ArrayList<>();
    Layer outer = null;
    for (int i = 0; i < structure.layers().size(); i++) {
      Layer layer = structure.layers().get(i);
      Optional<Process> pass = passAt(layer, outer, processes);
      if (pass.isPresent()) {
        waiting.add(i);
        called.add(pass.get());
        entering.add(waiting);
        waiting = new ArrayList<>();
      } else if (sharedPass(layer, outer, processes).isPresent()) {
        entering.get(entering.size() - 1).add(i);
      } else {
        waiting.add(i);
      }
      outer = layer;
    }
    called.add(processes.require(ProcessLibrary.SLITTING));
    entering.add(waiting);
    List<Pass> passes = new ArrayList<>();
    for (int k = 0; k < called.size(); k++) {
      passes.add(new Pass(called.get(k), entering.get(k)));
    }
    return new Route(passes);
  }

  /**
   * The pass that a layer calls for: that of its process, when a process puts it down and did not
   * put down its outer neighbour as well.
   *
   * @param outer the layer outside it; null for the outermost
   */
  public static Optional<Process> passAt(Layer layer, Layer outer, ProcessLibrary processes) {
    if (!putDown(layer, processes) || inOneRun(layer, outer)) {
      return Optional.empty();
    }
    return processes.find(layer.process());
  }

  /**
   * The pass that a layer enters together with its outer neighbour: as a part of the same run, or
   * as the web unwound onto it.
   *
   * @param outer the layer outside it; null for the outermost
   */
  public static Optional<Process> sharedPass(Layer layer, Layer outer, ProcessLibrary processes) {
    boolean shared =
        outer != null
            && putDown(outer, processes)
            && (processes.role(layer) == ProcessRole.WEB || inOneRun(layer, outer));
    return shared ? processes.find(outer.process()) : Optional.empty();
  }

  private static boolean putDown(Layer layer, ProcessLibrary processes) {
    return switch (processes.role(layer)) {
      case BOND, COATING, PRINT -> true;
      case WEB, WEB_PART, FINISHING -> false;
    };
  }

  private static boolean inOneRun(Layer layer, Layer outer) {
    return outer != null && layer.process().equals(outer.process());
  }
}
