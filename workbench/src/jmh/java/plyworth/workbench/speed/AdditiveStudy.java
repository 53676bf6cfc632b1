package plyworth.workbench.speed;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.jgrapht.Graph;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleDirectedWeightedGraph;
import plyworth.shared.structure.Layer;
import plyworth.shared.study.Weighting;
import plyworth.workbench.AdditiveLayers;
import plyworth.workbench.ToyGraph;
import plyworth.workbench.ToyStudy;
import plyworth.workbench.engine.table.Tabulation;
import plyworth.workbench.host.BoundPlugins;
import plyworth.workbench.ranking.ValueModel;

/**
 * Layers of twelve materials each, every one beside every other, with six criteria that add up over
 * the layers: what a general library can rank as well, where values are lengths of paths.
 */
final class AdditiveStudy {

  /** Materials in each layer. */
  static final int MATERIALS = 12;

  /** Criteria, all of them weighed. */
  static final int CRITERIA = 6;

  /** The first and the last node of {@link #paths}. */
  static final String OUTSIDE = "outside";

  /** See {@link #OUTSIDE}. */
  static final String INSIDE = "inside";

  private final ToyGraph toy;
  private final AdditiveLayers figures;
  private final BoundPlugins plugins;
  private final Tabulation tabulation;

  /**
   * A study.
   *
   * @param layers its layers
   * @param spread by how much the figures of two materials differ at most; 1 for any
   */
  AdditiveStudy(int layers, double spread) {
    toy = ToyGraph.full(layers, MATERIALS);
    figures = AdditiveLayers.near(toy, CRITERIA, 3, spread);
    plugins = ToyStudy.bound(List.of(figures.bound()));
    tabulation = Tabulation.of(toy.graph(), plugins);
  }

  Tabulation tabulation() {
    return tabulation;
  }

  /** The layers from the outside in, each with the figures of its materials. */
  List<List<double[]>> figures() {
    return toy.positions().stream().map(p -> p.stream().map(figures::figures).toList()).toList();
  }

  /** The figures of a candidate; path numbers count the materials, the innermost fastest. */
  double[] exact(long path) {
    double[] sums = new double[CRITERIA];
    long rest = path;
    for (int p = toy.positions().size() - 1; p >= 0; p--) {
      double[] own = figures.figures(toy.positions().get(p).get((int) (rest % MATERIALS)));
      Arrays.setAll(sums, c -> sums[c] + own[c]);
      rest /= MATERIALS;
    }
    return sums;
  }

  /** Random weights that add up to 1. */
  static double[] weights(SplittableRandom random) {
    double[] weights = new double[CRITERIA];
    Arrays.setAll(weights, c -> random.nextExponential());
    double sum = Arrays.stream(weights).sum();
    return Arrays.stream(weights).map(w -> w / sum).toArray();
  }

  /** Values under some weights: a share of the weighted figures for every layer. */
  ValueModel model(double[] weights) {
    Map<String, Double> named = new TreeMap<>();
    for (int c = 0; c < CRITERIA; c++) {
      named.put("sums/c" + c, weights[c]);
    }
    return ValueModel.of(plugins.criteria(), new Weighting("random", named), Map.of(), List.of());
  }

  /** The same as lengths: a path is as long as its candidate falls short of the value 1. */
  Graph<String, DefaultWeightedEdge> paths(double[] weights) {
    Graph<String, DefaultWeightedEdge> graph =
        new SimpleDirectedWeightedGraph<>(DefaultWeightedEdge.class);
    List<String> outer = List.of(OUTSIDE);
    for (List<Layer> position : toy.positions()) {
      for (Layer layer : position) {
        outer.forEach(from -> edge(graph, from, layer.material(), length(layer, weights)));
      }
      outer = position.stream().map(Layer::material).toList();
    }
    outer.forEach(from -> edge(graph, from, INSIDE, 0));
    return graph;
  }

  private double length(Layer layer, double[] weights) {
    double[] own = figures.figures(layer);
    double length = 0;
    for (int c = 0; c < CRITERIA; c++) {
      length += weights[c] * (1 - own[c]);
    }
    return length / toy.positions().size();
  }

  private static void edge(
      Graph<String, DefaultWeightedEdge> graph, String from, String to, double length) {
    graph.addVertex(from);
    graph.addVertex(to);
    graph.setEdgeWeight(graph.addEdge(from, to), length);
  }
}
