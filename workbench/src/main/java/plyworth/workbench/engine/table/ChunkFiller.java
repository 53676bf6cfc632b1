package plyworth.workbench.engine.table;

import java.util.function.BooleanSupplier;
import java.util.function.IntToLongFunction;
import plyworth.shared.scoring.Block;
import plyworth.shared.structure.Structure;
import plyworth.workbench.host.BoundCriterion;

/** Scores runs of candidates one after another; each thread has its own. */
public final class ChunkFiller {

  private final Tabulation tabulation;
  private final BooleanSupplier goOn;
  private final PrefixWalk walk;
  private final Stretches stretches;
  private final PluginBlocks blocks;
  private final PluginBlocks.Rows rows = new Structures();
  private IntToLongFunction pathOf;

  private final class Structures implements PluginBlocks.Rows {
    @Override
    public boolean goOn() {
      return goOn.getAsBoolean();
    }

    @Override
    public Structure structure(int row) {
      return tabulation.graph().structure(pathOf.applyAsLong(row));
    }
  }

  ChunkFiller(Tabulation tabulation, BooleanSupplier goOn) {
    this.tabulation = tabulation;
    this.goOn = goOn;
    walk = tabulation.walk();
    stretches = new Stretches(tabulation.joining());
    blocks =
        new PluginBlocks(
            tabulation.plugins(), tabulation.forms(), tabulation.joining(), tabulation.kept());
  }

  /** Scores the paths from {@code first} on; null when it was cancelled on the way. */
  public Chunk fill(long first, int rows) {
    ChunkWriter writer = new ChunkWriter(tabulation.plugins().criteria(), tabulation.kept(), rows);
    walk.seek(first);
    for (int at = 0; at < rows; at += PluginBlocks.CAPACITY) {
      int size = Math.min(PluginBlocks.CAPACITY, rows - at);
      if (!goOn.getAsBoolean() || !block(first + at, size, writer)) {
        return null;
      }
      writer.next(size);
    }
    return writer.finished();
  }

  /**
   * Scores runs of paths that need not follow each other.
   *
   * @param firsts the first path of each run
   * @param run the length of each
   * @return a row for each path, run after run; null when it was cancelled on the way
   */
  public Chunk fill(long[] firsts, int run) {
    int rows = Math.multiplyExact(firsts.length, run);
    ChunkWriter writer = new ChunkWriter(tabulation.plugins().criteria(), tabulation.kept(), rows);
    for (int at = 0; at < rows; at += PluginBlocks.CAPACITY) {
      int size = Math.min(PluginBlocks.CAPACITY, rows - at);
      if (!goOn.getAsBoolean() || !block(firsts, run, at, size, writer)) {
        return null;
      }
      writer.next(size);
    }
    return writer.finished();
  }

  private boolean block(long[] firsts, int run, int from, int size, PluginBlocks.Sink sink) {
    pathOf = row -> firsts[(from + row) / run] + (from + row) % run;
    stretches.begin();
    for (int row = from; row < from + size; ) {
      int count = Math.min(run - row % run, from + size - row);
      walk.seek(firsts[row / run] + row % run);
      walk.next(count, stretches);
      row += count;
    }
    return blocks.finish(size, stretches, rows, sink);
  }

  private boolean block(long path, int size, PluginBlocks.Sink sink) {
    pathOf = row -> path + row;
    stretches.begin();
    walk.next(size, stretches);
    return blocks.finish(size, stretches, rows, sink);
  }

  /** Number of criteria that are only bounded among the first candidates. */
  int boundedColumns() {
    boolean[] bounded = new boolean[tabulation.kept().length];
    walk.seek(0);
    int size = (int) Math.min(PluginBlocks.CAPACITY, tabulation.graph().count());
    block(0, size, (plugin, block, rows) -> markBounded(plugin, block, bounded));
    int count = 0;
    for (int c = 0; c < bounded.length; c++) {
      count += tabulation.kept()[c] && bounded[c] ? 1 : 0;
    }
    return count;
  }

  private void markBounded(int plugin, Block block, boolean[] bounded) {
    for (int c = 0; c < bounded.length; c++) {
      BoundCriterion criterion = tabulation.plugins().criteria().get(c);
      if (criterion.plugin() == plugin) {
        bounded[c] = block.high[criterion.index()] != block.low[criterion.index()];
      }
    }
  }
}
