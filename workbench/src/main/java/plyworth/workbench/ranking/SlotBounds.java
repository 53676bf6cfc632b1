package plyworth.workbench.ranking;

import java.util.Arrays;
import plyworth.workbench.engine.table.Narrowing;

/**
 * What the parts of some runs of candidates are worth at most by one criterion, in the slots that
 * are given to the runs. Floats, rounded up, since little memory is read sooner.
 */
final class SlotBounds {

  /** Says what a part of a run is worth at most. */
  interface Source {
    /** A value that no candidate of the part exceeds; of no matter where there is no such part. */
    double highest(int chunk, int run, int part);
  }

  private final int parts;
  private final Source source;
  private float[] values = {};
  private int[] rounds = {};

  /** For runs of so many parts. */
  SlotBounds(int parts, Source source) {
    this.parts = parts;
    this.source = source;
  }

  /** Makes sure that the values of a run are in its slot. */
  void fill(int chunk, int run, int slot, int round) {
    if (slot >= rounds.length) {
      int more = Math.max(64, slot + slot / 2);
      rounds = Arrays.copyOf(rounds, more);
      values = Arrays.copyOf(values, more * parts);
    }
    if (rounds[slot] != round) {
      rounds[slot] = round;
      for (int part = 0; part < parts; part++) {
        values[at(slot) + part] = Narrowing.up(source.highest(chunk, run, part));
      }
    }
  }

  /** Where the values of a slot begin. */
  int at(int slot) {
    return slot * parts;
  }

  /** All values; to be asked for again after {@link #fill}. */
  float[] all() {
    return values;
  }
}
