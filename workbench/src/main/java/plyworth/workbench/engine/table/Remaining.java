package plyworth.workbench.engine.table;

import java.util.stream.IntStream;

/**
 * The rows of a block that no plugin has blocked yet. Nobody asks for the figures of a blocked
 * candidate by column, so the plugins that come after the one that blocks it do not see it.
 */
final class Remaining {

  private static final int[] ALL = IntStream.range(0, PluginBlocks.CAPACITY).toArray();

  private final int[] rows = new int[PluginBlocks.CAPACITY];
  private int size;

  /** Begins with every row of a block. */
  void begin(int count) {
    System.arraycopy(ALL, 0, rows, 0, count);
    size = count;
  }

  /** Leaves out the remaining rows that have blocking bits, given in the order of these rows. */
  void leaveOut(long[] blocked) {
    int kept = 0;
    for (int k = 0; k < size; k++) {
      rows[kept] = rows[k];
      kept += blocked[k] == 0 ? 1 : 0;
    }
    size = kept;
  }

  /** Number of them. */
  int size() {
    return size;
  }

  /** The row in the block of the k-th of them. */
  int row(int k) {
    return rows[k];
  }

  /** Whether they are the first of the block, all of them. */
  boolean together() {
    return size == 0 || rows[size - 1] == size - 1;
  }

  /** Copies their entries of a column of the block to the front of another. */
  void gather(double[] column, double[] front) {
    if (together()) {
      System.arraycopy(column, 0, front, 0, size);
      return;
    }
    for (int k = 0; k < size; k++) {
      front[k] = column[rows[k]];
    }
  }

  /** Puts entries in their order back to where they belong in a column of the block. */
  void scatter(double[] front, double[] column) {
    if (together()) {
      System.arraycopy(front, 0, column, 0, size);
      return;
    }
    for (int k = 0; k < size; k++) {
      column[rows[k]] = front[k];
    }
  }

  /** The same for a column in which the block begins at {@code at}. */
  void scatter(float[] front, float[] column, int at) {
    if (together()) {
      System.arraycopy(front, 0, column, at, size);
      return;
    }
    for (int k = 0; k < size; k++) {
      column[at + rows[k]] = front[k];
    }
  }
}
