package plyworth.workbench;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Structure;
import plyworth.workbench.engine.CompiledGraph;

/**
 * A small random graph and, apart from it, the plain list of its structures.
 *
 * @param positions layers that may stand at each position
 * @param optional whether a position may stay empty
 * @param seed decides which layers may not meet
 */
public record ToyGraph(List<List<Layer>> positions, List<Boolean> optional, long seed) {

  /** A random graph of a few positions. */
  public static ToyGraph random(long seed) {
    Random random = new Random(seed);
    List<List<Layer>> positions = new ArrayList<>();
    List<Boolean> optional = new ArrayList<>();
    int count = 3 + random.nextInt(3);
    for (int p = 0; p < count; p++) {
      positions.add(options(p, 2 + random.nextInt(4)));
      optional.add(p > 0 && random.nextInt(3) == 0);
    }
    return new ToyGraph(positions, optional, seed);
  }

  /** A random graph whose materials come in several amounts each. */
  public static ToyGraph stepped(long seed) {
    Random random = new Random(seed);
    List<List<Layer>> positions = new ArrayList<>();
    List<Boolean> optional = new ArrayList<>();
    int count = 2 + random.nextInt(3);
    for (int p = 0; p < count; p++) {
      List<Layer> layers = new ArrayList<>();
      int materials = 1 + random.nextInt(2);
      for (int m = 0; m < materials; m++) {
        for (int amount = random.nextInt(5); amount >= 0; amount--) {
          layers.add(random.nextInt(layers.size() + 1), Layer.web("m" + p + "-" + m, 10 + amount));
        }
      }
      positions.add(layers);
      optional.add(p > 0 && random.nextInt(3) == 0);
    }
    return new ToyGraph(positions, optional, seed);
  }

  /** A graph in which everything may stand beside everything. */
  public static ToyGraph full(int positions, int options) {
    List<List<Layer>> all = new ArrayList<>();
    for (int p = 0; p < positions; p++) {
      all.add(options(p, options));
    }
    return new ToyGraph(all, Collections.nCopies(positions, false), -1);
  }

  private static List<Layer> options(int position, int count) {
    List<Layer> layers = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      layers.add(Layer.web("m" + position + "-" + i, 10 + i));
    }
    return layers;
  }

  private boolean allowed(Layer outer, Layer inner) {
    return seed < 0
        || outer == null
        || new Random(seed * 31 + outer.material().hashCode() * 17L + inner.material().hashCode())
                .nextInt(6)
            > 0;
  }

  /** Every structure, by trying every combination of what may stand at each position. */
  public List<Structure> structures() {
    List<Structure> all = new ArrayList<>();
    combine(0, new ArrayList<>(), all);
    return all;
  }

  private void combine(int position, List<Layer> layers, List<Structure> all) {
    if (position == positions.size()) {
      if (!layers.isEmpty()) {
        all.add(new Structure(layers));
      }
      return;
    }
    if (optional.get(position)) {
      combine(position + 1, layers, all);
    }
    for (Layer layer : positions.get(position)) {
      if (allowed(layers.isEmpty() ? null : layers.get(layers.size() - 1), layer)) {
        List<Layer> longer = new ArrayList<>(layers);
        longer.add(layer);
        combine(position + 1, longer, all);
      }
    }
  }

  /** The graph whose nodes are the layers at their positions. */
  public CompiledGraph graph() {
    return new ToyCompiler(this).compile();
  }

  /** Turns positions into nodes and edges, leaving out what leads nowhere. */
  private static final class ToyCompiler {
    private final ToyGraph toy;
    private final List<Layer> layers = new ArrayList<>();
    private final List<Integer> at = new ArrayList<>();
    private final boolean[] alive;

    ToyCompiler(ToyGraph toy) {
      this.toy = toy;
      layers.add(null);
      at.add(-1);
      for (int p = 0; p < toy.positions().size(); p++) {
        for (Layer layer : toy.positions().get(p)) {
          layers.add(layer);
          at.add(p);
        }
      }
      alive = new boolean[layers.size()];
    }

    private boolean edge(int from, int to) {
      for (int p = at.get(from) + 1; p < at.get(to); p++) {
        if (!toy.optional().get(p)) {
          return false;
        }
      }
      return at.get(from) < at.get(to) && toy.allowed(layers.get(from), layers.get(to));
    }

    private boolean ends(int node) {
      return node > 0
          && !toy.optional().subList(at.get(node) + 1, toy.optional().size()).contains(false);
    }

    CompiledGraph compile() {
      boolean[] leads = new boolean[layers.size()];
      for (int v = layers.size() - 1; v >= 0; v--) {
        leads[v] = ends(v);
        for (int w = v + 1; w < layers.size(); w++) {
          leads[v] |= leads[w] && edge(v, w);
        }
      }
      alive[0] = true;
      for (int v = 0; v < layers.size(); v++) {
        for (int w = v + 1; w < layers.size(); w++) {
          alive[w] |= alive[v] && leads[w] && edge(v, w);
        }
      }
      return flat();
    }

    private CompiledGraph flat() {
      List<Integer> kept = new ArrayList<>();
      for (int v = 0; v < layers.size(); v++) {
        if (alive[v]) {
          kept.add(v);
        }
      }
      int[] start = new int[kept.size() + 1];
      boolean[] ends = new boolean[kept.size()];
      List<Integer> to = new ArrayList<>();
      for (int i = 0; i < kept.size(); i++) {
        ends[i] = ends(kept.get(i));
        for (int j = i + 1; j < kept.size(); j++) {
          if (edge(kept.get(i), kept.get(j))) {
            to.add(j);
          }
        }
        start[i + 1] = to.size();
      }
      return CompiledGraph.of(
          kept.stream().map(layers::get).collect(java.util.stream.Collectors.toList()),
          start,
          to.stream().mapToInt(x -> x).toArray(),
          ends);
    }
  }
}
