package plyworth.workbench.engine.search;

import java.util.Optional;
import plyworth.workbench.engine.CompiledGraph;
import plyworth.workbench.engine.table.Contributions;

/**
 * A component of the state that adds up over the layers.
 *
 * @param byEdge what each edge adds
 * @param low the least sum of a candidate
 * @param high the greatest
 * @param size the greatest sum of absolute contributions, to tell what rounding can be
 */
record SumColumn(double[] byEdge, double low, double high, double size) {

  /** The component; empty when a contribution is unknown or infinite. */
  static Optional<SumColumn> of(CompiledGraph graph, Contributions contributions, int component) {
    double[] byEdge = new double[graph.edges()];
    double[] negative = new double[byEdge.length];
    double[] absolute = new double[byEdge.length];
    for (int edge = 0; edge < byEdge.length; edge++) {
      byEdge[edge] = contributions.of(edge)[component];
      if (!Double.isFinite(byEdge[edge])) {
        return Optional.empty();
      }
      negative[edge] = -byEdge[edge];
      absolute[edge] = Math.abs(byEdge[edge]);
    }
    double low = -greatest(graph, negative)[0];
    double high = greatest(graph, byEdge)[0];
    return Optional.of(new SumColumn(byEdge, low, high, greatest(graph, absolute)[0]));
  }

  /** By node, the greatest sum along the edges of a completion, from the inside out. */
  static double[] greatest(CompiledGraph graph, double[] byEdge) {
    double[] greatest = new double[graph.nodes()];
    for (int node = greatest.length - 1; node >= 0; node--) {
      double most = graph.ends(node) ? 0 : Double.NEGATIVE_INFINITY;
      int end = graph.edgeStart(node + 1);
      for (int edge = graph.edgeStart(node); edge < end; edge++) {
        most = Math.max(most, byEdge[edge] + greatest[graph.edgeTo(edge)]);
      }
      greatest[node] = most;
    }
    return greatest;
  }
}
