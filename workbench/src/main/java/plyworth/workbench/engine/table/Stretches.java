package plyworth.workbench.engine.table;

import java.util.ArrayList;
import java.util.List;
import plyworth.shared.scoring.Join;

/**
 * The candidates of a block, as stretches of completions behind one prefix each. Their states are
 * joined plugin by plugin and only for the rows that are asked for, since most of the work of a
 * join is for plugins that come late, when many candidates are blocked already.
 */
final class Stretches implements PluginBlocks.States {

  /** Rows of which several components are joined at once: few enough for the nearest caches. */
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
  private final int[] wanted = new int[PluginBlocks.CAPACITY];
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
    if (used == stretches.size()) {
      stretches.add(new Stretch(layout.size()));
    }
    Stretch stretch = stretches.get(used++);
    System.arraycopy(prefix, 0, stretch.prefix, 0, prefix.length);
    stretch.completions = completions;
    stretch.from = from;
    stretch.count = to - from;
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

  /** Joins the wanted rows of one stretch, part by part. */
  private void join(int plugin, Stretch stretch, int count, int at, double[][] columns) {
    boolean together = wanted[count - 1] - wanted[0] == count - 1;
    int start = layout.start(plugin);
    for (int part = layout.firstPart(plugin); part < layout.firstPart(plugin + 1); part++) {
      Join join = layout.join(part);
      int offset = layout.offset(part);
      if (join.size() == 1) {
        double[] column = columns[offset - start];
        copy(stretch.completions[offset], together, 0, count, column, at);
        ColumnJoin.within(join, stretch.prefix[offset], column, at, at + count);
      } else {
        for (int from = 0; from < count; from += LONGEST) {
          int rows = Math.min(LONGEST, count - from);
          several(join, offset, stretch, together, from, rows);
          for (int c = offset; c < offset + join.size(); c++) {
            System.arraycopy(joined[c], 0, columns[c - start], at + from, rows);
          }
        }
      }
    }
  }

  /** Joins a part of several components; completions that begin at row 0 need no copy. */
  private void several(
      Join join, int offset, Stretch stretch, boolean together, int from, int rows) {
    double[][] source = stretch.completions;
    if (!together || wanted[from] > 0) {
      source = inner;
      for (int c = offset; c < offset + join.size(); c++) {
        copy(stretch.completions[c], together, from, rows, inner[c], 0);
      }
    }
    ColumnJoin.join(join, offset, stretch.prefix, source, joined, rows);
  }

  /** Copies some of the wanted rows of a column of completions. */
  private void copy(double[] column, boolean together, int from, int rows, double[] to, int at) {
    if (together) {
      System.arraycopy(column, wanted[from], to, at, rows);
      return;
    }
    for (int k = 0; k < rows; k++) {
      to[at + k] = column[wanted[from + k]];
    }
  }
}
