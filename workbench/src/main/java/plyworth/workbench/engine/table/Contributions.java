package plyworth.workbench.engine.table;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plyworth.shared.scoring.Layerwise;
import plyworth.shared.structure.Layer;
import plyworth.workbench.engine.CompiledGraph;
import plyworth.workbench.host.BoundPlugin;

/** What each edge of the graph adds to the common state; asked for once per pair of neighbours. */
public final class Contributions {

  private final int[] byEdge;
  private final List<double[]> states;

  private Contributions(int[] byEdge, List<double[]> states) {
    this.byEdge = byEdge;
    this.states = states;
  }

  private record Neighbours(Layer outer, Layer inner) {}

  static Contributions of(
      CompiledGraph graph,
      List<BoundPlugin> plugins,
      List<Optional<Layerwise>> forms,
      StateLayout layout) {
    int[] byEdge = new int[graph.edges()];
    List<double[]> states = new ArrayList<>();
    Map<Neighbours, Integer> known = new HashMap<>();
    for (int node = 0; node < graph.nodes(); node++) {
      Layer outer = graph.layer(node);
      for (int edge = graph.edgeStart(node); edge < graph.edgeStart(node + 1); edge++) {
        Neighbours pair = new Neighbours(outer, graph.layer(graph.edgeTo(edge)));
        Integer at = known.get(pair);
        if (at == null) {
          at = states.size();
          known.put(pair, at);
          states.add(contribution(pair, plugins, forms, layout));
        }
        byEdge[edge] = at;
      }
    }
    return new Contributions(byEdge, states);
  }

  private static double[] contribution(
      Neighbours pair,
      List<BoundPlugin> plugins,
      List<Optional<Layerwise>> forms,
      StateLayout layout) {
    double[] state = layout.neutral();
    for (int p = 0; p < plugins.size(); p++) {
      Layerwise form = forms.get(p).orElse(null);
      if (form != null) {
        double[] own = new double[layout.size(p)];
        System.arraycopy(state, layout.start(p), own, 0, own.length);
        Plugins.call(plugins.get(p), () -> contribute(form, pair, own));
        System.arraycopy(own, 0, state, layout.start(p), own.length);
      }
    }
    return state;
  }

  private static boolean contribute(Layerwise form, Neighbours pair, double[] own) {
    form.contribute(pair.inner(), pair.outer(), own);
    return true;
  }

  /** The state that an edge adds: that of the layer it leads to. Read only. */
  public double[] of(int edge) {
    return states.get(byEdge[edge]);
  }

  /** Whether some contribution differs from the neutral one in a range of components. */
  boolean differ(double[] neutral, int from, int to) {
    return states.stream().anyMatch(s -> Arrays.mismatch(s, from, to, neutral, from, to) >= 0);
  }
}
