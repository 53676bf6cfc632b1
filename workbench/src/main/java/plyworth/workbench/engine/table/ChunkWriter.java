package plyworth.workbench.engine.table;

import java.util.Arrays;
import java.util.List;
import plyworth.shared.scoring.Block;
import plyworth.workbench.host.BoundCriterion;

/** Fills one chunk, block after block and plugin after plugin. */
final class ChunkWriter implements PluginBlocks.Sink {

  private final List<BoundCriterion> criteria;
  private final float[][] low;
  private final float[][] high;
  private final byte[] codes;
  private final float[] front = new float[PluginBlocks.CAPACITY];
  private int at;

  ChunkWriter(List<BoundCriterion> criteria, boolean[] kept, int rows) {
    this.criteria = criteria;
    codes = new byte[rows];
    low = new float[criteria.size()][];
    for (int c = 0; c < low.length; c++) {
      if (kept[c]) {
        low[c] = new float[rows];
        Arrays.fill(low[c], Float.NaN);
      }
    }
    high = low.clone();
  }

  @Override
  public void take(int plugin, Block block, Remaining rows) {
    for (int k = 0; k < rows.size(); k++) {
      if (block.blocked[k] != 0) {
        codes[at + rows.row(k)] = Chunk.BLOCKED;
      }
    }
    for (int c = 0; c < low.length; c++) {
      BoundCriterion criterion = criteria.get(c);
      if (low[c] != null && criterion.plugin() == plugin) {
        column(c, block, criterion.index(), rows);
      }
    }
  }

  /** Goes on to the next block, after one of a size. */
  void next(int size) {
    at += size;
  }

  private void column(int c, Block block, int index, Remaining rows) {
    double[] from = block.low[index];
    double[] to = block.high[index];
    if (to == from) {
      exact(c, from, rows);
      return;
    }
    if (high[c] == low[c]) {
      high[c] = low[c].clone();
    }
    for (int k = 0; k < rows.size(); k++) {
      if (block.blocked[k] == 0) {
        bounded(c, from[k], to[k], at + rows.row(k));
      }
    }
  }

  private void exact(int c, double[] figures, Remaining rows) {
    boolean unknown = Narrowing.toOdd(figures, rows.size(), front);
    rows.scatter(front, low[c], at);
    if (high[c] != low[c]) {
      rows.scatter(front, high[c], at);
    }
    for (int k = 0; unknown && k < rows.size(); k++) {
      if (Float.isNaN(front[k])) {
        unknown(at + rows.row(k));
      }
    }
  }

  private void bounded(int c, double from, double to, int row) {
    if (from == to) {
      low[c][row] = Narrowing.toOdd(from);
      high[c][row] = low[c][row];
    } else if (Double.isNaN(from) || Double.isNaN(to)) {
      low[c][row] = Float.NaN;
      high[c][row] = Float.NaN;
      unknown(row);
    } else {
      low[c][row] = Narrowing.down(from);
      high[c][row] = Narrowing.up(to);
    }
  }

  private void unknown(int row) {
    if (codes[row] == Chunk.SCORED) {
      codes[row] = Chunk.UNKNOWN;
    }
  }

  /** The chunk, once every row is written. */
  Chunk finished() {
    return new Chunk(low, high, codes);
  }
}
