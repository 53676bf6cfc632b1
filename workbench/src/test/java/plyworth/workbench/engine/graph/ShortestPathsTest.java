package plyworth.workbench.engine.graph;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.jgrapht.Graph;
import org.jgrapht.GraphPath;
import org.jgrapht.alg.interfaces.KShortestPathAlgorithm;
import org.jgrapht.alg.shortestpath.EppsteinKShortestPath;
import org.jgrapht.alg.shortestpath.YenKShortestPath;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleDirectedWeightedGraph;
import org.junit.jupiter.api.Test;

/**
 * Which of JGraphT's algorithms for the k shortest paths can be a yardstick: two layers of three
 * materials, all weights powers of two, so that no two paths are equally long and every sum can be
 * checked by hand.
 */
class ShortestPathsTest {

  private static final int[] TO_OUTER = {4, 64, 2};
  private static final int[][] BETWEEN = {{16384, 4096, 1024}, {8, 256, 32}, {8192, 2048, 512}};
  private static final int[] FROM_INNER = {128, 16, 1};
  private static final Double[] ALL = {
    97.0, 200.0, 336.0, 515.0, 1029.0, 2066.0, 4116.0, 8322.0, 16516.0
  };

  private static Graph<String, DefaultWeightedEdge> graph() {
    Graph<String, DefaultWeightedEdge> graph =
        new SimpleDirectedWeightedGraph<>(DefaultWeightedEdge.class);
    for (int i = 0; i < TO_OUTER.length; i++) {
      edge(graph, "outside", "outer " + i, TO_OUTER[i]);
      edge(graph, "inner " + i, "inside", FROM_INNER[i]);
      for (int j = 0; j < FROM_INNER.length; j++) {
        edge(graph, "outer " + i, "inner " + j, BETWEEN[i][j]);
      }
    }
    return graph;
  }

  private static void edge(
      Graph<String, DefaultWeightedEdge> graph, String from, String to, int weight) {
    graph.addVertex(from);
    graph.addVertex(to);
    graph.setEdgeWeight(graph.addEdge(from, to), weight);
  }

  private static List<Double> weights(
      KShortestPathAlgorithm<String, DefaultWeightedEdge> algorithm) {
    return algorithm.getPaths("outside", "inside", ALL.length).stream()
        .map(GraphPath::getWeight)
        .toList();
  }

  private static List<Double> byHand() {
    List<Double> sums = new ArrayList<>();
    for (int i = 0; i < TO_OUTER.length; i++) {
      for (int j = 0; j < FROM_INNER.length; j++) {
        sums.add((double) TO_OUTER[i] + BETWEEN[i][j] + FROM_INNER[j]);
      }
    }
    return sums.stream().sorted().toList();
  }

  @Test
  void yensAlgorithmFindsAllNinePathsInTheirOrder() {
    assertThat(byHand()).containsExactly(ALL);
    assertThat(weights(new YenKShortestPath<>(graph()))).containsExactly(ALL);
  }

  /** Of JGraphT 1.5.3; once it holds no more, either may be the yardstick. */
  @Test
  void eppsteinsAlgorithmLosesTheThirdPathAndIsNoYardstick() {
    assertThat(weights(new EppsteinKShortestPath<>(graph())))
        .hasSize(ALL.length - 1)
        .doesNotContain(ALL[2]);
  }
}
