package plyworth.workbench.engine.graph;

import java.nio.IntBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import plyworth.workbench.engine.TooManyCandidatesException;

/**
 * Runs the positions and the rules together over all layer lists, from the inside back out, and
 * merges states of the same layer from which the same lists follow.
 *
 * <p>The result is the smallest graph in which every allowed layer list is one path: a minimal
 * acyclic automaton. Merging is safe for scoring because what a layer contributes depends on it and
 * its outer neighbour alone, that is, on an edge.
 */
final class GraphBuilder {

  /** Most states visited before the study is refused. */
  static final int MOST_STATES = 2_000_000;

  private static final int DEAD = -1;

  private final PositionAutomaton positions;
  private final RuleAutomaton rules;
  private final int mostStates;
  private final BooleanSupplier cancelled;
  private final Map<Long, Integer> visited = new HashMap<>();
  private final Map<IntBuffer, Integer> numbers = new HashMap<>();
  private final List<Node> nodes = new ArrayList<>();
  private int visits;

  /**
   * A node: its layer, {@link #OUTSIDE} for the outside; whether a candidate may end there; and
   * which nodes may follow, in order of their layers.
   */
  record Node(int layer, boolean ends, int[] next) {
    static final int OUTSIDE = -1;
  }

  GraphBuilder(
      PositionAutomaton positions, RuleAutomaton rules, int mostStates, BooleanSupplier cancelled) {
    this.positions = positions;
    this.rules = rules;
    this.mostStates = mostStates;
    this.cancelled = cancelled;
  }

  /**
   * The nodes, each after all that may follow it; the last is the outside.
   *
   * @throws TooManyCandidatesException when there are too many states
   * @throws CancellationException when cancelled
   */
  List<Node> build() {
    int[] next = following(PositionAutomaton.START, RuleAutomaton.START);
    nodes.add(new Node(Node.OUTSIDE, false, next));
    return nodes;
  }

  /** The node of a state; {@link #DEAD} when no candidate passes through it. */
  private int visit(int layer, int position, int rule) {
    long key = (long) position << Integer.SIZE | rule;
    Integer known = visited.get(key);
    if (known == null) {
      checkLimits();
      int[] next = following(position, rule);
      boolean ends = positions.ends(position) && rules.allowsEnd(rule);
      known = ends || next.length > 0 ? number(layer, ends, next) : DEAD;
      visited.put(key, known);
    }
    return known;
  }

  /** Last layers first, so that the finished nodes, turned round, start with the first ones. */
  private int[] following(int position, int rule) {
    int[] layers = positions.layers(position);
    int[] next = new int[layers.length];
    int free = layers.length;
    for (int i = layers.length - 1; i >= 0; i--) {
      int allowed = rules.next(rule, layers[i]);
      if (allowed != RuleAutomaton.NONE) {
        int node = visit(layers[i], positions.next(position, layers[i]), allowed);
        if (node != DEAD) {
          next[--free] = node;
        }
      }
    }
    return Arrays.copyOfRange(next, free, next.length);
  }

  private int number(int layer, boolean ends, int[] next) {
    int[] key = new int[next.length + 2];
    key[0] = layer;
    key[1] = ends ? 1 : 0;
    System.arraycopy(next, 0, key, 2, next.length);
    return numbers.computeIfAbsent(
        IntBuffer.wrap(key),
        k -> {
          nodes.add(new Node(layer, ends, next));
          return nodes.size() - 1;
        });
  }

  private void checkLimits() {
    if (visits++ == mostStates) {
      throw new TooManyCandidatesException(
          "the positions and rules of this study lead to more than "
              + mostStates
              + " states of the candidate graph; take options out of the positions, or join"
              + " positions that belong together into options of several layers");
    }
    if (cancelled.getAsBoolean()) {
      throw new CancellationException("the candidate graph was not finished");
    }
  }
}
