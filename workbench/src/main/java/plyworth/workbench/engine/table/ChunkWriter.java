package plyworth.workbench.engine.table;

import java.util.Arrays;
import java.util.List;
import plyworth.shared.scoring.Block;
import plyworth.workbench.host.BoundCriterion;

/** Fills one chunk, block after block. */
final class ChunkWriter {

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
      low[c] = kept[c] ? new float[rows] : null;
    }
    high = low.clone();
  }

  /** Appends the finished blocks of all plugins. */
  void append(Block[] blocks) {
    int size = blocks.length == 0 ? 0 : blocks[0].size;
    for (Block block : blocks) {
      block(block, size);
    }
    for (int c = 0; c < low.length; c++) {
      if (low[c] != null) {
        BoundCriterion criterion = criteria.get(c);
        Block block = blocks[criterion.plugin()];
        column(c, block.low[criterion.index()], block.high[criterion.index()], size);
      }
    }
    at += size;
  }

  private void block(Block block, int size) {
    for (int j = 0; j < size; j++) {
      if (block.blocked[j] != 0) {
        codes[at + j] = Chunk.BLOCKED;
      }
    }
  }

  private void column(int c, double[] from, double[] to, int size) {
    if (to != from && high[c] == low[c]) {
      high[c] = Arrays.copyOf(low[c], low[c].length);
    }
    if (to == from) {
      exact(c, from, size);
    } else {
      bounded(c, from, to, size);
    }
    if (to == from && high[c] != low[c]) {
      System.arraycopy(low[c], at, high[c], at, size);
    }
  }

  private void exact(int c, double[] figures, int size) {
    float[] column = low[c];
    for (int j = 0; j < size; j++) {
      float figure = Narrowing.toOdd(figures[j]);
      column[at + j] = figure;
      if (figure != figure && codes[at + j] == Chunk.SCORED) {
        codes[at + j] = Chunk.UNKNOWN;
      }
    }
  }

  private void bounded(int c, double[] from, double[] to, int size) {
    for (int j = 0; j < size; j++) {
      boolean unknown = Double.isNaN(from[j]) || Double.isNaN(to[j]);
      boolean exact = from[j] == to[j];
      low[c][at + j] =
          unknown ? Float.NaN : exact ? Narrowing.toOdd(from[j]) : Narrowing.down(from[j]);
      high[c][at + j] = unknown ? Float.NaN : exact ? low[c][at + j] : Narrowing.up(to[j]);
      if (unknown && codes[at + j] == Chunk.SCORED) {
        codes[at + j] = Chunk.UNKNOWN;
      }
    }
  }

  /** The chunk, once every row is written. */
  Chunk finished() {
    return new Chunk(low, high, codes);
  }
}
