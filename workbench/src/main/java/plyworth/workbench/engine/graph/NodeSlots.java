package plyworth.workbench.engine.graph;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/**
 * In which slots the layer of a node may stand: those that lie on a spelling of some candidate
 * through the node, found once from the outside in and once back.
 */
final class NodeSlots {

  private static final Comparator<Slot> OUTSIDE_FIRST =
      Comparator.comparingInt(Slot::position)
          .thenComparingInt(Slot::option)
          .thenComparingInt(Slot::layer);

  private final CandidateGraph graph;
  private final PositionAutomaton positions;

  NodeSlots(CandidateGraph graph, PositionAutomaton positions) {
    this.graph = graph;
    this.positions = positions;
  }

  /** The slots by node number. */
  List<List<Slot>> all() {
    List<BitSet> alive = reached();
    for (int i = alive.size() - 1; i >= 0; i--) {
      keepFinishing(graph.nodes().get(i), alive);
    }
    List<List<Slot>> all = new ArrayList<>();
    for (BitSet slots : alive) {
      all.add(slots.stream().mapToObj(positions::slot).sorted(OUTSIDE_FIRST).toList());
    }
    all.set(0, List.of());
    return Collections.unmodifiableList(all);
  }

  private List<BitSet> reached() {
    List<BitSet> reached = new ArrayList<>();
    graph.nodes().forEach(node -> reached.add(new BitSet()));
    reached.set(0, PositionAutomaton.outside());
    for (CandidateNode node : graph.nodes()) {
      for (CandidateNode next : graph.successors(node)) {
        BitSet slots = positions.after(reached.get(node.number()), next.layerNumber());
        reached.get(next.number()).or(slots);
      }
    }
    return reached;
  }

  /** Drops the slots of a node from which no spelling goes on to the end. */
  private void keepFinishing(CandidateNode node, List<BitSet> alive) {
    BitSet slots = alive.get(node.number());
    for (int slot : slots.stream().toArray()) {
      if (!(node.ends() && positions.closes(slot)) && !leadsOn(slot, node, alive)) {
        slots.clear(slot);
      }
    }
  }

  private boolean leadsOn(int slot, CandidateNode node, List<BitSet> alive) {
    BitSet single = new BitSet();
    single.set(slot);
    return graph.successors(node).stream()
        .anyMatch(
            next ->
                positions.after(single, next.layerNumber()).intersects(alive.get(next.number())));
  }
}
