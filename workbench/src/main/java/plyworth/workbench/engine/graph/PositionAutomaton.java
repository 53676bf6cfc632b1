package plyworth.workbench.engine.graph;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import plyworth.shared.structure.Option;
import plyworth.shared.structure.Position;

/**
 * The options of all positions, read layer by layer.
 *
 * <p>One layer list can often be spelled in several ways: <i>tie, nothing</i> and <i>nothing,
 * tie</i> are the same laminate. A state is therefore the set of all slots in which the last layer
 * read may stand (a subset construction), so that every layer list has one run. States are numbered
 * as they are met.
 */
final class PositionAutomaton {

  /** The state before the first layer. */
  static final int START = 0;

  /** No state: no option offers the layer there. */
  static final int NONE = -1;

  private static final int NOT_YET_KNOWN = -2;

  /** What stands before the first layer, as if it were a slot of its own. */
  private static final Slot OUTSIDE = new Slot(-1, -1, -1);

  private final List<Slot> slots = new ArrayList<>();
  private final List<Integer> slotLayers = new ArrayList<>();
  private final List<BitSet> followers = new ArrayList<>();
  private final BitSet closing = new BitSet();
  private final Map<BitSet, Integer> numbers = new HashMap<>();
  private final List<State> states = new ArrayList<>();

  /** Layers that may follow, ascending, each with the slots it may take and their state. */
  private record State(BitSet slots, int[] layers, BitSet[] taken, int[] next) {}

  /** Reads the options of the positions, all of whose layers the alphabet holds. */
  PositionAutomaton(List<Position> positions, LayerAlphabet alphabet) {
    BitSet opening = new BitSet();
    boolean mayEnd = true;
    slots.add(OUTSIDE);
    slotLayers.add(NONE);
    followers.add(opening);
    for (int p = positions.size() - 1; p >= 0; p--) {
      List<Option> options = positions.get(p).options();
      boolean optional = options.contains(Option.NOTHING);
      BitSet next = optional ? (BitSet) opening.clone() : new BitSet();
      for (int o = 0; o < options.size(); o++) {
        if (!options.get(o).layers().isEmpty()) {
          next.set(slots.size());
          addSlots(new Slot(p, o, 0), options.get(o), alphabet, opening, mayEnd);
        }
      }
      opening = next;
      mayEnd &= optional;
    }
    followers.set(0, opening);
    number(outside());
  }

  private void addSlots(
      Slot first, Option option, LayerAlphabet alphabet, BitSet opening, boolean mayEnd) {
    int last = option.layers().size() - 1;
    for (int i = 0; i <= last; i++) {
      int slot = slots.size();
      slots.add(new Slot(first.position(), first.option(), i));
      slotLayers.add(alphabet.add(option.layers().get(i)));
      BitSet next = new BitSet();
      next.set(slot + 1);
      followers.add(i < last ? next : opening);
      closing.set(slot, i == last && mayEnd);
    }
  }

  /** The layers that may follow in a state, ascending. */
  int[] layers(int state) {
    return states.get(state).layers;
  }

  /** The state once the layer is read; {@link #NONE} when no option offers it there. */
  int next(int state, int layer) {
    State from = states.get(state);
    int index = Arrays.binarySearch(from.layers, layer);
    if (index < 0) {
      return NONE;
    }
    if (from.next[index] == NOT_YET_KNOWN) {
      from.next[index] = number(from.taken[index]);
    }
    return from.next[index];
  }

  /** Whether every position is filled, or may stay empty, in this state. */
  boolean ends(int state) {
    return states.get(state).slots.intersects(closing);
  }

  /** The set that holds nothing but what stands before the first layer. */
  static BitSet outside() {
    BitSet outside = new BitSet();
    outside.set(0);
    return outside;
  }

  /** The slots in which a layer may stand that follows one of these. */
  BitSet after(BitSet before, int layer) {
    BitSet after = new BitSet();
    before.stream()
        .flatMap(slot -> followers.get(slot).stream())
        .filter(slot -> slotLayers.get(slot) == layer)
        .forEach(after::set);
    return after;
  }

  /** Whether the list may end after this slot. */
  boolean closes(int slot) {
    return closing.get(slot);
  }

  /** The slot of that number. */
  Slot slot(int number) {
    return slots.get(number);
  }

  private int number(BitSet taken) {
    Integer known = numbers.get(taken);
    if (known != null) {
      return known;
    }
    numbers.put(taken, states.size());
    states.add(state(taken));
    return states.size() - 1;
  }

  private State state(BitSet taken) {
    TreeMap<Integer, BitSet> byLayer = new TreeMap<>();
    taken.stream()
        .flatMap(slot -> followers.get(slot).stream())
        .forEach(s -> byLayer.computeIfAbsent(slotLayers.get(s), l -> new BitSet()).set(s));
    int[] next = new int[byLayer.size()];
    Arrays.fill(next, NOT_YET_KNOWN);
    int[] layers = byLayer.keySet().stream().mapToInt(Integer::intValue).toArray();
    return new State(taken, layers, byLayer.values().toArray(BitSet[]::new), next);
  }
}
