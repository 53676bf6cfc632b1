package plyworth.workbench.engine.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plyworth.shared.structure.Layer;
import plyworth.workbench.engine.CompiledGraph;

/**
 * The nodes of a graph gathered into kinds: layers that differ in their amount alone and have the
 * same neighbours on both sides. The kinds form a graph of their own, small where the graph itself
 * is large because of finely stepped amounts, and each of its edges stands for all pairs of
 * members.
 */
final class Kinds {

  /**
   * An edge between two kinds.
   *
   * @param id its place among all edges
   * @param from the outer kind
   * @param to the inner kind
   * @param place by member of the inner kind, which of the edges of an outer member leads to it
   * @param offset by member of the inner kind, by how much the path number grows on the way
   */
  record Edge(int id, int from, int to, int[] place, long[] offset) {}

  private record Kind(Layer layer, boolean ends, List<Integer> outer, List<Integer> inner) {}

  private final CompiledGraph graph;
  private final int[][] members;
  private final List<List<Edge>> edges = new ArrayList<>();

  private Kinds(CompiledGraph graph, int[][] members) {
    this.graph = graph;
    this.members = members;
  }

  /**
   * The kinds of a graph; the outside is the first, and edges lead from lower numbers to higher.
   */
  static Kinds of(CompiledGraph graph) {
    List<List<Integer>> outer = new ArrayList<>();
    for (int node = 0; node < graph.nodes(); node++) {
      outer.add(new ArrayList<>());
    }
    for (int node = 0; node < graph.nodes(); node++) {
      for (int to : successors(graph, node)) {
        outer.get(to).add(node);
      }
    }
    Map<Kind, List<Integer>> byKind = new LinkedHashMap<>();
    for (int node = 0; node < graph.nodes(); node++) {
      List<Integer> inner = Arrays.stream(successors(graph, node)).boxed().toList();
      Kind kind = new Kind(anyAmount(graph.layer(node)), graph.ends(node), outer.get(node), inner);
      byKind.computeIfAbsent(kind, k -> new ArrayList<>()).add(node);
    }
    Kinds kinds =
        new Kinds(
            graph,
            byKind.values().stream().map(nodes -> byAmount(graph, nodes)).toArray(int[][]::new));
    kinds.connect();
    return kinds;
  }

  private static int[] successors(CompiledGraph graph, int node) {
    int[] successors = new int[graph.edgeStart(node + 1) - graph.edgeStart(node)];
    Arrays.setAll(successors, i -> graph.edgeTo(graph.edgeStart(node) + i));
    return successors;
  }

  private static Layer anyAmount(Layer layer) {
    return layer == null
        ? null
        : new Layer(
            layer.material(), 1, layer.unit(), layer.process(), layer.side(), layer.coverage());
  }

  private static int[] byAmount(CompiledGraph graph, List<Integer> nodes) {
    return nodes.stream()
        .sorted(
            Comparator.comparingDouble(
                node -> graph.layer(node) == null ? 0 : graph.layer(node).amount()))
        .mapToInt(node -> node)
        .toArray();
  }

  private void connect() {
    int[] kindOf = new int[graph.nodes()];
    int[] memberOf = new int[graph.nodes()];
    for (int kind = 0; kind < members.length; kind++) {
      for (int m = 0; m < members[kind].length; m++) {
        kindOf[members[kind][m]] = kind;
        memberOf[members[kind][m]] = m;
      }
    }
    for (int kind = 0; kind < members.length; kind++) {
      edges.add(edges(kind, kindOf, memberOf));
    }
  }

  private List<Edge> edges(int kind, int[] kindOf, int[] memberOf) {
    int before = edges.stream().mapToInt(List::size).sum();
    Map<Integer, Edge> byTo = new LinkedHashMap<>();
    int node = members[kind][0];
    long offset = graph.ends(node) ? 1 : 0;
    int first = graph.edgeStart(node);
    for (int edge = first; edge < graph.edgeStart(node + 1); edge++) {
      int to = graph.edgeTo(edge);
      int size = members[kindOf[to]].length;
      Edge whole =
          byTo.computeIfAbsent(
              kindOf[to],
              k -> new Edge(before + byTo.size(), kind, k, new int[size], new long[size]));
      whole.place()[memberOf[to]] = edge - first;
      whole.offset()[memberOf[to]] = offset;
      offset += graph.completions(to);
    }
    return List.copyOf(byTo.values());
  }

  CompiledGraph graph() {
    return graph;
  }

  /** Number of kinds. */
  int count() {
    return members.length;
  }

  /** All members of a kind. */
  Range all(int kind) {
    return new Range(0, members[kind].length);
  }

  /** A node, by its kind and its place in the order of amounts. */
  int node(int kind, int member) {
    return members[kind][member];
  }

  /** The edges to the kinds that may follow. */
  List<Edge> edges(int kind) {
    return edges.get(kind);
  }

  /** The edge of the graph between two members. */
  int edge(Edge edge, int outer, int inner) {
    return graph.edgeStart(members[edge.from()][outer]) + edge.place()[inner];
  }

  /** Whether candidates may end at a kind. */
  boolean ends(int kind) {
    return graph.ends(members[kind][0]);
  }

  /** Number of candidates that continue from a member of a kind. */
  long completions(int kind) {
    return graph.completions(members[kind][0]);
  }
}
