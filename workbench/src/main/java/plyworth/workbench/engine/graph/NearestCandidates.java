package plyworth.workbench.engine.graph;

import java.util.Comparator;
import java.util.Iterator;
import java.util.List;
import java.util.NoSuchElementException;
import java.util.PriorityQueue;
import plyworth.shared.route.ProcessLibrary;
import plyworth.shared.structure.Structure;
import plyworth.workbench.engine.CompiledGraph;

/**
 * All candidates from the nearest to a structure to the farthest: fewest edits of single layers
 * first, among those the fewest that are more than an adjustment, then the smallest changes of
 * gauge, then the lower path number.
 *
 * <p>Nothing is enumerated. The least cost to the end is known for every node and every number of
 * layers already answered for, found once from the inside out in time nodes times layers; outer
 * layers are then opened in the order of what they can still become, and what is opened always
 * leads to a candidate of that cost.
 */
public final class NearestCandidates implements Iterator<NearestCandidates.Near> {

  /**
   * A candidate.
   *
   * @param path path number
   * @param edits what turns the structure into it, outside first
   */
  public record Near(long path, List<LayerEdit> edits) {

    /** Copies the list. */
    public Near {
      edits = List.copyOf(edits);
    }
  }

  /**
   * Outer layers that may be gone on from, or, when {@code whole}, a candidate.
   *
   * @param cost the least cost of any candidate that begins so
   * @param path the lowest path number of those
   * @param row cost of these layers, by the number of layers of the structure they answer for
   */
  private record Prefix(long cost, long path, int node, long[] row, boolean whole) {}

  private static final long FAR = Long.MAX_VALUE / 2;

  private final CompiledGraph graph;
  private final int length;
  private final EditDistance distance;
  private final long[][] ahead;
  private final PriorityQueue<Prefix> open =
      new PriorityQueue<>(Comparator.comparingLong(Prefix::cost).thenComparingLong(Prefix::path));

  /**
   * The candidates of a graph around a structure, which may be one of them.
   *
   * @param processes holds the processes of all of them
   */
  public NearestCandidates(CompiledGraph graph, Structure structure, ProcessLibrary processes) {
    this.graph = graph;
    length = structure.layers().size();
    distance = new EditDistance(structure.layers(), processes);
    ahead = new long[graph.nodes()][];
    for (int node = graph.nodes() - 1; node >= 0; node--) {
      ahead[node] = ahead(node);
    }
    if (graph.count() > 0) {
      open(0, 0, distance.toNothing());
    }
  }

  /** The least cost to the end, by the number of layers of the structure answered for. */
  private long[] ahead(int node) {
    long[] least = new long[length + 1];
    for (int i = length; i >= 0; i--) {
      long cost = graph.ends(node) ? (length - i) * EditDistance.ANOTHER : FAR;
      for (int edge = graph.edgeStart(node); edge < graph.edgeStart(node + 1); edge++) {
        int next = graph.edgeTo(edge);
        cost = Math.min(cost, ahead[next][i] + EditDistance.ANOTHER);
        if (i < length) {
          long replaced = distance.cost(i, graph.layer(next));
          cost = Math.min(cost, ahead[next][i + 1] + replaced);
        }
      }
      least[i] = i < length ? Math.min(cost, least[i + 1] + EditDistance.ANOTHER) : cost;
    }
    return least;
  }

  @Override
  public boolean hasNext() {
    return !open.isEmpty();
  }

  /**
   * The nearest candidate that was not handed out yet.
   *
   * @throws NoSuchElementException when all were
   */
  @Override
  public Near next() {
    Prefix nearest = open.remove();
    while (!nearest.whole) {
      goOn(nearest);
      nearest = open.remove();
    }
    return new Near(nearest.path, distance.edits(graph.structure(nearest.path).layers()));
  }

  private void goOn(Prefix prefix) {
    long path = prefix.path;
    if (graph.ends(prefix.node)) {
      long cost = prefix.row[prefix.row.length - 1];
      open.add(new Prefix(cost, path++, prefix.node, prefix.row, true));
    }
    int end = graph.edgeStart(prefix.node + 1);
    for (int edge = graph.edgeStart(prefix.node); edge < end; edge++) {
      int next = graph.edgeTo(edge);
      open(path, next, distance.to(prefix.row, graph.layer(next)));
      path += graph.completions(next);
    }
  }

  private void open(long path, int node, long[] row) {
    long cost = FAR;
    for (int i = 0; i < row.length; i++) {
      cost = Math.min(cost, row[i] + ahead[node][i]);
    }
    open.add(new Prefix(cost, path, node, row, false));
  }
}
