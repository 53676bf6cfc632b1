package plyworth.workbench.engine.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plyworth.workbench.ToyGraph;
import plyworth.workbench.engine.CompiledGraph;

class KindsTest {

  static LongStream seeds() {
    return LongStream.rangeClosed(1, 40);
  }

  private static CriterionSpans nothing() {
    return new CriterionSpans(new double[0][], new double[0][]);
  }

  /**
   * Path numbers of the candidates along the edges of kinds, each edge for all pairs of members.
   */
  private static void collect(Kinds kinds, Region region, List<Long> paths) {
    if (kinds.ends(region.kind())) {
      Region ended = new Region(kinds, region.edges, region.ranges, true, nothing(), null);
      Arrays.stream(ended.paths()).forEach(paths::add);
      assertThat(ended.path).isEqualTo(Arrays.stream(ended.paths()).min().orElseThrow());
      assertThat(ended.count).isEqualTo(ended.paths().length);
    }
    int length = region.edges.length;
    for (Kinds.Edge edge : kinds.edges(region.kind())) {
      Kinds.Edge[] edges = Arrays.copyOf(region.edges, length + 1);
      Range[] ranges = Arrays.copyOf(region.ranges, length + 1);
      edges[length] = edge;
      ranges[length] = kinds.all(edge.to());
      collect(kinds, new Region(kinds, edges, ranges, false, nothing(), null), paths);
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void theKindsHoldEveryCandidateOnce(long seed) {
    for (ToyGraph toy : List.of(ToyGraph.random(seed), ToyGraph.stepped(seed))) {
      CompiledGraph graph = toy.graph();
      Kinds kinds = Kinds.of(graph);
      List<Long> paths = new ArrayList<>();
      Region whole = new Region(kinds, new Kinds.Edge[0], new Range[0], false, nothing(), null);
      assertThat(whole.count).isEqualTo(graph.count());
      collect(kinds, whole, paths);
      assertThat(paths)
          .containsExactlyInAnyOrderElementsOf(LongStream.range(0, graph.count()).boxed().toList());
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void membersDifferInTheirAmountsAloneAndStandInTheirOrder(long seed) {
    CompiledGraph graph = ToyGraph.stepped(seed).graph();
    Kinds kinds = Kinds.of(graph);
    for (int kind = 1; kind < kinds.count(); kind++) {
      for (int m = 1; m < kinds.all(kind).size(); m++) {
        int less = kinds.node(kind, m - 1);
        int more = kinds.node(kind, m);
        assertThat(graph.layer(more).material()).isEqualTo(graph.layer(less).material());
        assertThat(graph.layer(more).amount()).isGreaterThan(graph.layer(less).amount());
      }
    }
    assertThat(kinds.count()).isLessThanOrEqualTo(graph.nodes());
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void edgesOfKindsLeadWhereTheGraphLeads(long seed) {
    CompiledGraph graph = ToyGraph.stepped(seed).graph();
    Kinds kinds = Kinds.of(graph);
    int edges = 0;
    for (int kind = 0; kind < kinds.count(); kind++) {
      for (Kinds.Edge edge : kinds.edges(kind)) {
        assertThat(edge.to()).isGreaterThan(kind);
        for (int o = 0; o < kinds.all(kind).size(); o++) {
          for (int i = 0; i < kinds.all(edge.to()).size(); i++) {
            assertThat(graph.edgeTo(kinds.edge(edge, o, i))).isEqualTo(kinds.node(edge.to(), i));
            edges++;
          }
        }
      }
    }
    assertThat(edges).isEqualTo(graph.edges());
  }
}
