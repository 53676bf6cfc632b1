package plyworth.workbench.engine.table;

import java.util.Arrays;
import plyworth.workbench.engine.CompiledGraph;

/**
 * Walks the graph depth-first from any path on and tells of what the paths it passes are joined.
 *
 * <p>A run is one prefix with the columns of all its completions. The walk stands at a row within a
 * run; when the run is used up it climbs to the next.
 */
final class PrefixWalk {

  private final CompiledGraph graph;
  private final Contributions contributions;
  private final Suffixes suffixes;
  private final StateLayout layout;
  private final double[][] alone;

  private final int[] nodes;
  private final int[] nextEdge;
  private final double[][] states;

  /** By depth, the edge whose state stands there; −1 when what lies outside it changed since. */
  private final int[] joined;

  private int depth;

  private double[] runPrefix;
  private double[][] runColumns;
  private int runAt;
  private int runEnd;

  PrefixWalk(
      CompiledGraph graph, Contributions contributions, Suffixes suffixes, StateLayout layout) {
    this.graph = graph;
    this.contributions = contributions;
    this.suffixes = suffixes;
    this.layout = layout;
    int deepest = graph.nodes() + 1;
    nodes = new int[deepest];
    nextEdge = new int[deepest];
    states = new double[deepest][];
    joined = new int[deepest + 1];
    Arrays.fill(joined, -1);
    states[0] = layout.neutral();
    alone = layout.columns(1);
  }

  /** Goes to a path. */
  void seek(long path) {
    depth = 0;
    long left = enter(0, path);
    while (left >= 0) {
      int edge = nextEdge[depth];
      while (left >= graph.completions(graph.edgeTo(edge))) {
        left -= graph.completions(graph.edgeTo(edge));
        edge++;
      }
      nextEdge[depth] = edge + 1;
      left = follow(edge, left);
    }
  }

  /**
   * Passes the next paths.
   *
   * @param count how many; no more than there are left
   * @param stretches receives them
   */
  void next(int count, Stretches stretches) {
    int left = count;
    while (left > 0) {
      while (runAt == runEnd) {
        climb();
      }
      int taken = Math.min(left, runEnd - runAt);
      stretches.add(runPrefix, runColumns, runAt, runAt + taken);
      runAt += taken;
      left -= taken;
    }
  }

  private void climb() {
    while (nextEdge[depth] == graph.edgeStart(nodes[depth] + 1)) {
      depth--;
    }
    follow(nextEdge[depth]++, 0);
  }

  /** Follows an edge; sets the run, or stands on the node; answers as {@link #enter}. */
  private long follow(int edge, long skipped) {
    int node = graph.edgeTo(edge);
    if (states[depth + 1] == null) {
      states[depth + 1] = layout.neutral();
    }
    if (joined[depth + 1] != edge) {
      layout.join(states[depth], contributions.of(edge), states[depth + 1]);
      joined[depth + 1] = edge;
      joined[depth + 2] = -1;
    }
    depth++;
    long left = enter(node, skipped);
    if (suffixes.of(node) != null) {
      depth--;
    }
    return left;
  }

  /**
   * Enters the node at the current depth, skipping some of its completions.
   *
   * @return how many are still to be skipped among its edges; −1 when the run stands at the path
   */
  private long enter(int node, long skipped) {
    nodes[depth] = node;
    nextEdge[depth] = graph.edgeStart(node);
    if (suffixes.of(node) != null) {
      nextEdge[depth] = graph.edgeStart(node + 1);
      run(suffixes.of(node), (int) skipped, (int) graph.completions(node));
      return -1;
    }
    boolean stopsHere = graph.ends(node) && skipped == 0;
    run(alone, stopsHere ? 0 : 1, 1);
    return stopsHere ? -1 : skipped - (graph.ends(node) ? 1 : 0);
  }

  private void run(double[][] columns, int at, int end) {
    runPrefix = states[depth];
    runColumns = columns;
    runAt = at;
    runEnd = end;
  }
}
