package plyworth.workbench.ranking;

import java.util.Arrays;

/** Values of runs of candidates, in the slots that are given to them. */
final class SlotValues {

  private final int length;
  private double[] values = {};
  private int[] rounds = {};

  /** For runs of a length. */
  SlotValues(int length) {
    this.length = length;
  }

  /** Whether a slot was filled in a round. */
  boolean has(int slot, int round) {
    return slot < rounds.length && rounds[slot] == round;
  }

  /** Makes room for a slot, which is then to be filled from {@code slot * length} on. */
  double[] fill(int slot, int round) {
    if (slot >= rounds.length) {
      int more = Math.max(256, slot + slot / 2);
      rounds = Arrays.copyOf(rounds, more);
      values = Arrays.copyOf(values, more * length);
    }
    rounds[slot] = round;
    return values;
  }

  /** All values; those of a slot begin at {@code slot * length}. */
  double[] all() {
    return values;
  }
}
