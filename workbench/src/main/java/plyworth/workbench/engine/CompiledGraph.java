package plyworth.workbench.engine;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.OptionalLong;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Structure;

/**
 * The candidate graph in flat arrays.
 *
 * <p>Node 0 is the outside of the pack and holds no layer; every other node holds one. A candidate
 * is a path from node 0 to a node where it may end. Nodes stand in topological order, every node
 * lies on a candidate, and no two successors of a node hold equal layers, so that every layer list
 * is one path.
 *
 * <p>Candidates are numbered from 0, depth-first: at every node first the candidate that ends
 * there, then those through each successor in order. Candidates that share their outer layers
 * therefore have neighbouring numbers.
 */
public final class CompiledGraph {

  private final List<Layer> layers;
  private final int[] edgeStart;
  private final int[] edgeTo;
  private final boolean[] ends;
  private final long[] completions;

  private CompiledGraph(List<Layer> layers, int[] edgeStart, int[] edgeTo, boolean[] ends) {
    this.layers = layers;
    this.edgeStart = edgeStart;
    this.edgeTo = edgeTo;
    this.ends = ends;
    this.completions = new long[ends.length];
  }

  /**
   * A graph of the given nodes and edges.
   *
   * @param layers the layer of each node, outermost nodes first; null for node 0 alone
   * @param edgeStart for each node the index of its first edge, and at the end the number of edges
   * @param edgeTo for each edge the node it leads to, which stands after the node it leaves
   * @param ends for each node whether a candidate may end there; false for node 0
   * @throws IllegalArgumentException when the arrays do not describe such a graph, or when it holds
   *     more than {@link Long#MAX_VALUE} candidates
   */
  public static CompiledGraph of(
      List<Layer> layers, int[] edgeStart, int[] edgeTo, boolean[] ends) {
    CompiledGraph graph =
        new CompiledGraph(
            Collections.unmodifiableList(new ArrayList<>(layers)),
            edgeStart.clone(),
            edgeTo.clone(),
            ends.clone());
    graph.checkShape();
    for (int node = graph.nodes() - 1; node >= 0; node--) {
      graph.checkEdges(node);
      graph.completions[node] = graph.countFrom(node);
    }
    graph.checkEntered();
    return graph;
  }

  /** A graph without any candidate: the outside alone. */
  public static CompiledGraph empty() {
    return of(Collections.singletonList(null), new int[2], new int[0], new boolean[1]);
  }

  /** Number of nodes, the outside included. */
  public int nodes() {
    return ends.length;
  }

  /** Number of edges. */
  public int edges() {
    return edgeTo.length;
  }

  /** The layer of a node; null for node 0, the outside. */
  public Layer layer(int node) {
    return layers.get(node);
  }

  /**
   * The index of a node's first edge. Its edges end before the first edge of the next node.
   *
   * @param node from 0 up to and including {@link #nodes}
   */
  public int edgeStart(int node) {
    return edgeStart[node];
  }

  /** The node that an edge leads to. */
  public int edgeTo(int edge) {
    return edgeTo[edge];
  }

  /** Whether a candidate may end at a node. */
  public boolean ends(int node) {
    return ends[node];
  }

  /** The number of candidates that continue from a node, counting the one that ends there. */
  public long completions(int node) {
    return completions[node];
  }

  /** The number of candidates. */
  public long count() {
    return completions[0];
  }

  /**
   * The nodes of a candidate, outermost layer first, node 0 left out.
   *
   * @param path number of the candidate, from 0
   * @throws IndexOutOfBoundsException when there is no such candidate
   */
  public int[] nodesOf(long path) {
    if (path < 0 || path >= count()) {
      throw new IndexOutOfBoundsException(
          "candidate " + path + " does not exist; there are " + count());
    }
    int[] found = new int[16];
    int length = 0;
    int node = 0;
    long rest = path;
    while (!(ends[node] && rest == 0)) {
      rest -= ends[node] ? 1 : 0;
      int edge = edgeStart[node];
      while (rest >= completions[edgeTo[edge]]) {
        rest -= completions[edgeTo[edge++]];
      }
      node = edgeTo[edge];
      if (length == found.length) {
        found = Arrays.copyOf(found, 2 * length);
      }
      found[length++] = node;
    }
    return Arrays.copyOf(found, length);
  }

  /**
   * The layers of a candidate.
   *
   * @param path number of the candidate, from 0
   * @throws IndexOutOfBoundsException when there is no such candidate
   */
  public Structure structure(long path) {
    return new Structure(Arrays.stream(nodesOf(path)).mapToObj(layers::get).toList());
  }

  /** The number of the candidate with these layers; empty when it is not on offer. */
  public OptionalLong pathOf(Structure structure) {
    long path = 0;
    int node = 0;
    for (Layer layer : structure.layers()) {
      path += ends[node] ? 1 : 0;
      int edge = edgeStart[node];
      while (edge < edgeStart[node + 1] && !layers.get(edgeTo[edge]).equals(layer)) {
        path += completions[edgeTo[edge++]];
      }
      if (edge == edgeStart[node + 1]) {
        return OptionalLong.empty();
      }
      node = edgeTo[edge];
    }
    return ends[node] ? OptionalLong.of(path) : OptionalLong.empty();
  }

  private long countFrom(int node) {
    long count = ends[node] ? 1 : 0;
    try {
      for (int edge = edgeStart[node]; edge < edgeStart[node + 1]; edge++) {
        count = Math.addExact(count, completions[edgeTo[edge]]);
      }
    } catch (ArithmeticException e) {
      throw new TooManyCandidatesException(
          "there are more than "
              + Long.MAX_VALUE
              + " candidates, too many to number; take options out of the positions");
    }
    if (count == 0 && node > 0) {
      throw new IllegalArgumentException("no candidate ends at or after node " + node);
    }
    return count;
  }

  private void checkShape() {
    int nodes = ends.length;
    if (nodes == 0 || layers.size() != nodes || edgeStart.length != nodes + 1) {
      throw new IllegalArgumentException(
          "a graph of " + nodes + " nodes needs as many layers and one more edge start");
    }
    if (layers.get(0) != null || layers.subList(1, nodes).contains(null) || ends[0]) {
      throw new IllegalArgumentException(
          "node 0 is the outside: it alone has no layer, and no candidate ends there");
    }
    if (edgeStart[0] != 0 || edgeStart[nodes] != edgeTo.length) {
      throw new IllegalArgumentException("the edge starts do not span the edges");
    }
    for (int node = 0; node < nodes; node++) {
      if (edgeStart[node] > edgeStart[node + 1]) {
        throw new IllegalArgumentException("the edge starts must not fall, at node " + node);
      }
    }
  }

  private void checkEdges(int node) {
    List<Layer> seen = new ArrayList<>();
    for (int edge = edgeStart[node]; edge < edgeStart[node + 1]; edge++) {
      int to = edgeTo[edge];
      if (to <= node || to >= ends.length) {
        throw new IllegalArgumentException("the edge " + node + " to " + to + " does not lead on");
      }
      if (seen.contains(layers.get(to))) {
        throw new IllegalArgumentException(
            "node " + node + " has two successors of the layer \"" + layers.get(to) + "\"");
      }
      seen.add(layers.get(to));
    }
  }

  private void checkEntered() {
    boolean[] entered = new boolean[ends.length];
    entered[0] = true;
    for (int to : edgeTo) {
      entered[to] = true;
    }
    for (int node = 0; node < entered.length; node++) {
      if (!entered[node]) {
        throw new IllegalArgumentException("no edge leads to node " + node);
      }
    }
  }
}
