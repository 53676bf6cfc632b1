package plyworth.workbench.engine.graph;

import java.util.List;

/**
 * A node of the candidate graph with all slots in which its layer may stand after what was read
 * before it, the spelling that counts first. What is found out about it is noted on it.
 */
final class SpellingState {

  /** A way on: to which state, and which slot of this one each of its slots follows. */
  record Step(SpellingState to, int[] before) {}

  /** What tells states of one node apart: their slots in order, and which lead past the choice. */
  record Key(List<Integer> slots, List<Boolean> chosen) {}

  private final CandidateNode node;
  private final int[] slots;
  private final boolean[] chosen;

  /** The ways on, by successor of the node; null until asked for. */
  Step[] steps;

  /**
   * By slot, the candidates from here on whose counting spelling stands in it; null until asked.
   */
  long[] completions;

  /** How often all candidates from here on are counted. */
  long entered;

  SpellingState(CandidateNode node, Key key) {
    this.node = node;
    slots = key.slots().stream().mapToInt(Integer::intValue).toArray();
    chosen = new boolean[slots.length];
    for (int i = 0; i < chosen.length; i++) {
      chosen[i] = key.chosen().get(i);
    }
  }

  CandidateNode node() {
    return node;
  }

  /** Number of slots. */
  int size() {
    return slots.length;
  }

  /** The number of a slot. */
  int slot(int i) {
    return slots[i];
  }

  /** Whether the spelling that stands in a slot uses what was chosen, as far as it goes. */
  boolean chosen(int i) {
    return chosen[i];
  }
}
