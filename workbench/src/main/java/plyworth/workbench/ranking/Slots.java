package plyworth.workbench.ranking;

import java.util.Arrays;

/**
 * Places for what is kept of the few runs of candidates that rankings look at, out of the millions
 * that there are: given out as they are asked for, and all taken back when none is left.
 */
final class Slots {

  private final int perChunk;
  private final int most;
  private final int[][] given;
  private int[] filled = {};
  private int used;
  private int round = 1;

  /**
   * None given out yet.
   *
   * @param perChunk runs in a chunk
   * @param most slots there are
   */
  Slots(int chunks, int perChunk, int most) {
    this.perChunk = perChunk;
    this.most = most;
    given = new int[chunks][];
  }

  /** The slot of a run of a chunk; begins another {@link #round} when none is left. */
  int of(int chunk, int run) {
    int[] own = given[chunk];
    int slot = own == null ? 0 : own[run];
    return slot > 0 ? slot - 1 : give(chunk, run);
  }

  private int give(int chunk, int run) {
    if (used == most) {
      Arrays.fill(given, null);
      Arrays.fill(filled, 0);
      used = 0;
      round++;
    }
    if (given[chunk] == null) {
      given[chunk] = new int[perChunk];
    }
    given[chunk][run] = used + 1;
    return used++;
  }

  /** How often slots were begun to be given out: what was put into one earlier is of others. */
  int round() {
    return round;
  }

  /** Whether all that a generation of values wants to be in a slot is there. */
  boolean isFilled(int slot, int generation) {
    return slot < filled.length && filled[slot] == generation;
  }

  /** Says that it is there. */
  void filled(int slot, int generation) {
    if (slot >= filled.length) {
      filled = Arrays.copyOf(filled, Math.min(most, Math.max(256, 2 * slot)));
    }
    filled[slot] = generation;
  }
}
