package plyworth.workbench.engine.table;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Structure;

/**
 * Structures taken apart for many worlds: what several of them have in common from the inside out
 * is one node, and nodes with the same outermost pair of neighbours lie together, so that a state
 * is joined once and whole columns at a time.
 */
public final class ListedStructures {

  /** Most structures in a list. */
  public static final int MOST = PluginBlocks.CAPACITY;

  /** A layer and its outer neighbour; null for the outermost layer. */
  record Neighbours(Layer outer, Layer inner) {}

  /**
   * Nodes with one outermost pair.
   *
   * @param pair number of the pair
   * @param first number of the first node; the others follow
   * @param inner for each node the one inside it; empty where the pair is innermost, one node
   */
  record Group(int pair, int first, int[] inner) {}

  /** A piece of a structure from some layer to the innermost; nothing inside it is -1. */
  private record Piece(int pair, int inner) {}

  private final List<Structure> structures;
  private final List<Neighbours> pairs;
  private final List<Group> groups = new ArrayList<>();
  private final int[] nodes;
  private final int[] places;
  private int size;

  /**
   * Takes structures apart.
   *
   * @throws IllegalArgumentException when there are more than {@link #MOST}, or one has no layers
   */
  public ListedStructures(List<Structure> structures) {
    if (structures.size() > MOST) {
      throw new IllegalArgumentException(
          structures.size() + " structures are listed; the most are " + MOST);
    }
    this.structures = List.copyOf(structures);
    Map<Neighbours, Integer> numbers = new LinkedHashMap<>();
    int[][] paths =
        structures.stream().map(structure -> path(structure, numbers)).toArray(int[][]::new);
    pairs = List.copyOf(numbers.keySet());
    int[] tops = number(paths);
    Integer[] order = new Integer[tops.length];
    Arrays.setAll(order, i -> i);
    Arrays.sort(order, Comparator.comparingInt(i -> tops[i]));
    places = Arrays.stream(order).mapToInt(i -> i).toArray();
    nodes = Arrays.stream(places).map(i -> tops[i]).toArray();
  }

  private static int[] path(Structure structure, Map<Neighbours, Integer> numbers) {
    List<Layer> layers = structure.layers();
    if (layers.isEmpty()) {
      throw new IllegalArgumentException("a structure without layers is listed");
    }
    int[] path = new int[layers.size()];
    for (int i = 0; i < path.length; i++) {
      Neighbours pair = new Neighbours(i == 0 ? null : layers.get(i - 1), layers.get(i));
      Integer known = numbers.putIfAbsent(pair, numbers.size());
      path[i] = known == null ? numbers.size() - 1 : known;
    }
    return path;
  }

  /** Numbers the pieces from the inside out; what it answers are those of the whole structures. */
  private int[] number(int[][] paths) {
    int[] tops = new int[paths.length];
    Arrays.fill(tops, -1);
    int deepest = Arrays.stream(paths).mapToInt(path -> path.length).max().orElse(0);
    for (int height = 1; height <= deepest; height++) {
      Map<Integer, TreeMap<Integer, Integer>> level = new TreeMap<>();
      for (int s = 0; s < paths.length; s++) {
        if (paths[s].length >= height) {
          int pair = paths[s][paths[s].length - height];
          level.computeIfAbsent(pair, p -> new TreeMap<>()).put(tops[s], -1);
        }
      }
      Map<Piece, Integer> numbered = number(level);
      for (int s = 0; s < paths.length; s++) {
        if (paths[s].length >= height) {
          tops[s] = numbered.get(new Piece(paths[s][paths[s].length - height], tops[s]));
        }
      }
    }
    return tops;
  }

  private Map<Piece, Integer> number(Map<Integer, TreeMap<Integer, Integer>> level) {
    Map<Piece, Integer> numbered = new HashMap<>();
    level.forEach(
        (pair, inner) -> {
          int[] inside = inner.keySet().stream().mapToInt(i -> i).filter(i -> i >= 0).toArray();
          groups.add(new Group(pair, size, inside));
          for (int piece : inner.keySet()) {
            numbered.put(new Piece(pair, piece), size++);
          }
        });
    return numbered;
  }

  /** Number of structures. */
  public int count() {
    return structures.size();
  }

  /** Number of nodes. */
  int size() {
    return size;
  }

  /** Pairs of neighbours. */
  List<Neighbours> pairs() {
    return pairs;
  }

  /** Groups of nodes, those inside before those around them. */
  List<Group> groups() {
    return groups;
  }

  /** The node that is the whole structure of a row; rows are ordered by it. */
  int node(int row) {
    return nodes[row];
  }

  /** Where the structure of a row stands in the list. */
  int place(int row) {
    return places[row];
  }

  /** The structure of a row. */
  Structure structure(int row) {
    return structures.get(places[row]);
  }
}
