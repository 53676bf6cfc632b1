package plyworth.workbench.engine.graph;

import java.nio.IntBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import plyworth.shared.structure.NeighbourRule;

/**
 * All rules of a study read together along a layer list. A state is what every rule remembers;
 * states are numbered as they are met, and each step is worked out once.
 */
final class RuleAutomaton {

  /** The state before the first layer. */
  static final int START = 0;

  /** No state: a rule forbids the layer. */
  static final int NONE = -1;

  private static final int NOT_YET_KNOWN = -2;

  private final RuleReader[] readers;
  private final int layers;
  private final Map<IntBuffer, Integer> numbers = new HashMap<>();
  private final List<int[]> memories = new ArrayList<>();
  private final List<int[]> steps = new ArrayList<>();

  RuleAutomaton(List<NeighbourRule> rules, LayerAlphabet layers) {
    this.readers = rules.stream().map(r -> RuleReader.of(r, layers)).toArray(RuleReader[]::new);
    this.layers = layers.size();
    int[] start = new int[readers.length];
    Arrays.fill(start, RuleReader.START);
    number(start);
  }

  /** The state once the layer is read; {@link #NONE} when a rule forbids it there. */
  int next(int state, int layer) {
    int[] known = steps.get(state);
    if (known[layer] == NOT_YET_KNOWN) {
      known[layer] = step(memories.get(state), layer);
    }
    return known[layer];
  }

  /** Whether every rule allows the list to end in this state. */
  boolean allowsEnd(int state) {
    int[] memory = memories.get(state);
    for (int i = 0; i < readers.length; i++) {
      if (readers[i].forbidsEnd(memory[i])) {
        return false;
      }
    }
    return true;
  }

  private int step(int[] memory, int layer) {
    int[] after = new int[readers.length];
    for (int i = 0; i < readers.length; i++) {
      if (readers[i].forbids(memory[i], layer)) {
        return NONE;
      }
      after[i] = readers[i].after(memory[i], layer);
    }
    return number(after);
  }

  private int number(int[] memory) {
    return numbers.computeIfAbsent(
        IntBuffer.wrap(memory),
        key -> {
          int[] unknown = new int[layers];
          Arrays.fill(unknown, NOT_YET_KNOWN);
          steps.add(unknown);
          memories.add(memory);
          return memories.size() - 1;
        });
  }
}
