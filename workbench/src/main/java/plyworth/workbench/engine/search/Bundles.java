package plyworth.workbench.engine.search;

import java.util.ArrayList;
import java.util.List;
import plyworth.workbench.engine.CompiledGraph;
import plyworth.workbench.engine.table.Contributions;
import plyworth.workbench.engine.table.StateLayout;

/**
 * Between which states the completions of each node lie, in a few bundles of completions that
 * follow each other and resemble each other. Bundles keep apart what one interval would mix: the
 * barrier of foil and the price of plain film.
 *
 * <p>By dynamic programming from the inside out: the bundles of a node are those of its successors
 * behind the layer in between.
 */
final class Bundles {

  private static final long MOST_BYTES = 128L << 20;

  private final StateSpan[][] byNode;

  private Bundles(StateSpan[][] byNode) {
    this.byNode = byNode;
  }

  /**
   * Bundles of every node.
   *
   * @param most bundles per node; fewer in graphs so large that they would take too much memory
   */
  static Bundles of(
      CompiledGraph graph, Contributions contributions, StateLayout layout, int most) {
    long node = 2L * Double.BYTES * Math.max(1, layout.size());
    int fitting = (int) Math.max(1, Math.min(most, MOST_BYTES / (node * graph.nodes())));
    BundleMerge merge = new BundleMerge(layout, fitting);
    StateSpan[][] byNode = new StateSpan[graph.nodes()][];
    for (int n = graph.nodes() - 1; n >= 0; n--) {
      List<StateSpan> all = new ArrayList<>();
      if (graph.ends(n)) {
        all.add(StateSpan.point(layout.neutral()));
      }
      for (int edge = graph.edgeStart(n); edge < graph.edgeStart(n + 1); edge++) {
        StateSpan own = StateSpan.point(contributions.of(edge));
        for (StateSpan inner : byNode[graph.edgeTo(edge)]) {
          all.add(own.followedBy(inner, layout));
        }
      }
      byNode[n] = merge.merged(all).toArray(StateSpan[]::new);
    }
    return new Bundles(byNode);
  }

  /** The bundles of a node; its own layer is not part of them. */
  StateSpan[] of(int node) {
    return byNode[node];
  }
}
