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
        column(c, block.low[criterion.index()], block.high[criterion.index()], rows);
      }
    }
  }

  /** Goes on to the next block, after one of a size. */
  void next(int size) {
    at += size;
  }

  private void column(int c, double[] from, double[] to, Remaining rows) {
    if (to != from && high[c] == low[c]) {
      high[c] = low[c].clone();
    }
    if (to == from) {
      exact(c, from, rows);
    } else {
      bounded(c, from, to, rows);
    }
  }

  private void exact(int c, double[] figures, Remaining rows) {
    for (int k = 0; k < rows.size(); k++) {
      float figure = Narrowing.toOdd(figures[k]);
      int row = at + rows.row(k);
      low[c][row] = figure;
      high[c][row] = figure;
      if (figure != figure && codes[row] == Chunk.SCORED) {
        codes[row] = Chunk.UNKNOWN;
      }
    }
  }

  private void bounded(int c, double[] from, double[] to, Remaining rows) {
    for (int k = 0; k < rows.size(); k++) {
      boolean unknown = Double.isNaN(from[k]) || Double.isNaN(to[k]);
      boolean exact = from[k] == to[k];
      int row = at + rows.row(k);
      low[c][row] =
          unknown ? Float.NaN : exact ? Narrowing.toOdd(from[k]) : Narrowing.down(from[k]);
      high[c][row] = unknown ? Float.NaN : exact ? low[c][row] : Narrowing.up(to[k]);
      if (unknown && codes[row] == Chunk.SCORED) {
        codes[row] = Chunk.UNKNOWN;
      }
    }
  }

  /** The chunk, once every row is written. */
  Chunk finished() {
    return new Chunk(low, high, codes);
  }
}
