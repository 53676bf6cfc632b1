package plyworth.workbench.engine.graph;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * The states of all spellings, made as they are met. Spellings stand in order, layers further
 * outside first, then earlier options; of two that stand in the same slot only the first can count,
 * since they go on alike.
 */
final class SpellingStates {

  private static final Comparator<Slot> COUNTING_FIRST =
      Comparator.comparingInt(Slot::position).thenComparingInt(Slot::option);

  private final CandidateGraph graph;
  private final PositionAutomaton positions;
  private final OptionChoice choice;
  private final List<Map<SpellingState.Key, SpellingState>> byNode = new ArrayList<>();

  SpellingStates(CandidateGraph graph, PositionAutomaton positions, OptionChoice choice) {
    this.graph = graph;
    this.positions = positions;
    this.choice = choice;
    graph.nodes().forEach(node -> byNode.add(new HashMap<>()));
  }

  /** The state before the first layer. */
  SpellingState outside() {
    int slot = PositionAutomaton.outside().nextSetBit(0);
    return state(graph.outside(), List.of(slot), List.of(choice.any()));
  }

  /** The states met at a node. */
  Iterable<SpellingState> at(CandidateNode node) {
    return byNode.get(node.number()).values();
  }

  /** The slot of a spelling of a state. */
  Slot slot(SpellingState state, int i) {
    return positions.slot(state.slot(i));
  }

  /** The ways on from a state, one for each successor of its node. */
  SpellingState.Step[] steps(SpellingState state) {
    if (state.steps == null) {
      state.steps =
          graph.successors(state.node()).stream()
              .map(next -> step(state, next))
              .toArray(SpellingState.Step[]::new);
    }
    return state.steps;
  }

  private SpellingState.Step step(SpellingState state, CandidateNode next) {
    List<Integer> slots = new ArrayList<>();
    List<Boolean> chosen = new ArrayList<>();
    List<Integer> before = new ArrayList<>();
    for (int i = 0; i < state.size(); i++) {
      Slot from = slot(state, i);
      for (int slot : after(state.slot(i), next)) {
        if (!slots.contains(slot)) {
          slots.add(slot);
          chosen.add(state.chosen(i) || choice.between(from, positions.slot(slot)));
          before.add(i);
        }
      }
    }
    int[] parents = before.stream().mapToInt(Integer::intValue).toArray();
    return new SpellingState.Step(state(next, slots, chosen), parents);
  }

  private List<Integer> after(int slot, CandidateNode next) {
    BitSet single = new BitSet();
    single.set(slot);
    return positions.after(single, next.layerNumber()).stream()
        .boxed()
        .sorted(Comparator.comparing(positions::slot, COUNTING_FIRST))
        .toList();
  }

  private SpellingState state(CandidateNode node, List<Integer> slots, List<Boolean> chosen) {
    return byNode
        .get(node.number())
        .computeIfAbsent(
            new SpellingState.Key(List.copyOf(slots), List.copyOf(chosen)),
            key -> new SpellingState(node, key));
  }

  /**
   * The spelling that counts for the candidate that ends in a state; negative where none ends, or
   * where that spelling does not use what was chosen.
   */
  int ending(SpellingState state) {
    int first =
        state.node().ends()
            ? IntStream.range(0, state.size())
                .filter(i -> positions.closes(state.slot(i)))
                .findFirst()
                .orElse(-1)
            : -1;
    return first >= 0 && (state.chosen(first) || choice.after(slot(state, first))) ? first : -1;
  }
}
