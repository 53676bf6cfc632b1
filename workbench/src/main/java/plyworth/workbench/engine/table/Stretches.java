package plyworth.workbench.engine.table;

import java.util.ArrayList;
import java.util.List;

/**
 * The candidates of a block, as stretches of completions behind one prefix each. Their states are
 * joined plugin by plugin and only for the rows that are asked for, since most of the work of a
 * join is for plugins that come late, when many candidates are blocked already.
 */
final class Stretches implements PluginBlocks.States {

  /** Longest stretch joined at once: few enough rows for the nearest caches. */
  static final int LONGEST = 128;

  private static final class Stretch {
    private final double[] prefix;
    private double[][] completions;
    private int from;
    private int count;

    Stretch(int components) {
      prefix = new double[components];
    }
  }

  private final StateLayout layout;
  private final List<Stretch> stretches = new ArrayList<>();
  private final int[] wanted = new int[LONGEST];
  private final double[][] inner;
  private final double[][] joined;
  private int used;

  Stretches(StateLayout layout) {
    this.layout = layout;
    inner = new double[layout.size()][LONGEST];
    joined = new double[layout.size()][LONGEST];
  }

  /** Begins a new block. */
  void begin() {
    used = 0;
  }

  /**
   * Adds candidates.
   *
   * @param prefix joined state of what they share; taken as it is now
   * @param completions joined states of the rest, component by row
   * @param from first row of them
   * @param to row after the last
   */
  void add(double[] prefix, double[][] completions, int from, int to) {
    for (int at = from; at < to; at += LONGEST) {
      if (used == stretches.size()) {
        stretches.add(new Stretch(layout.size()));
      }
      Stretch stretch = stretches.get(used++);
      System.arraycopy(prefix, 0, stretch.prefix, 0, prefix.length);
      stretch.completions = completions;
      stretch.from = at;
      stretch.count = Math.min(LONGEST, to - at);
    }
  }

  @Override
  public void join(int plugin, Remaining rows, double[][] columns) {
    int first = 0;
    int written = 0;
    for (int s = 0; s < used; s++) {
      Stretch stretch = stretches.get(s);
      int count = 0;
      int next = first + stretch.count;
      while (written + count < rows.size() && rows.row(written + count) < next) {
        wanted[count] = stretch.from + rows.row(written + count) - first;
        count++;
      }
      if (count > 0) {
        join(plugin, stretch, count, written, columns);
      }
      first = next;
      written += count;
    }
  }

  private void join(int plugin, Stretch stretch, int count, int at, double[][] columns) {
    int start = layout.start(plugin);
    int end = start + layout.size(plugin);
    for (int c = start; c < end; c++) {
      if (count == stretch.count) {
        System.arraycopy(stretch.completions[c], stretch.from, inner[c], 0, count);
      } else {
        gather(stretch.completions[c], inner[c], count);
      }
    }
    ColumnJoin.join(layout, plugin, stretch.prefix, inner, joined, count);
    for (int c = start; c < end; c++) {
      System.arraycopy(joined[c], 0, columns[c - start], at, count);
    }
  }

  private void gather(double[] column, double[] front, int count) {
    for (int k = 0; k < count; k++) {
      front[k] = column[wanted[k]];
    }
  }
}
