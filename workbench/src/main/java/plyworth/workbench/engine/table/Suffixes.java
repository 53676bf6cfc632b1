package plyworth.workbench.engine.table;

import plyworth.workbench.engine.CompiledGraph;

/**
 * Joined states of every completion of every node that has few of them, in enumeration order. The
 * node's own layer is not part of its completions.
 */
final class Suffixes {

  /** Most completions that are kept as columns. */
  static final int LONGEST = 1024;

  private static final int SHORTEST = 16;
  private static final long MOST_BYTES = 64L << 20;

  private final double[][][] columns;
  private final long bytes;

  private Suffixes(double[][][] columns, long bytes) {
    this.columns = columns;
    this.bytes = bytes;
  }

  static Suffixes of(CompiledGraph graph, Contributions contributions, StateLayout layout) {
    int longest = LONGEST;
    while (longest > SHORTEST && bytes(graph, layout, longest) > MOST_BYTES) {
      longest /= 2;
    }
    Suffixes suffixes = new Suffixes(new double[graph.nodes()][][], bytes(graph, layout, longest));
    for (int node = graph.nodes() - 1; node >= 0; node--) {
      if (graph.completions(node) <= longest) {
        suffixes.build(node, graph, contributions, layout);
      }
    }
    return suffixes;
  }

  private static long bytes(CompiledGraph graph, StateLayout layout, int longest) {
    long rows = 0;
    for (int node = 0; node < graph.nodes(); node++) {
      rows += graph.completions(node) <= longest ? graph.completions(node) : 0;
    }
    return rows * layout.kept() * Double.BYTES;
  }

  private void build(
      int node, CompiledGraph graph, Contributions contributions, StateLayout layout) {
    int rows = (int) graph.completions(node);
    double[][] own = layout.columns(rows);
    double[][] joined = layout.columns(rows);
    int row = graph.ends(node) ? 1 : 0;
    for (int edge = graph.edgeStart(node); edge < graph.edgeStart(node + 1); edge++) {
      int to = graph.edgeTo(edge);
      int count = (int) graph.completions(to);
      ColumnJoin.join(layout, contributions.of(edge), columns[to], joined, count);
      for (int c = 0; c < own.length; c++) {
        if (own[c] != null) {
          System.arraycopy(joined[c], 0, own[c], row, count);
        }
      }
      row += count;
    }
    columns[node] = own;
  }

  /**
   * States by component and completion, without components of no part; null when the node has too
   * many completions.
   */
  double[][] of(int node) {
    return columns[node];
  }

  /** Memory held. */
  long bytes() {
    return bytes;
  }
}
