package plyworth.workbench.engine.table;

import java.util.function.BooleanSupplier;
import plyworth.shared.scoring.Block;
import plyworth.shared.structure.Structure;
import plyworth.workbench.host.BoundCriterion;

/** Scores chunks one after another; each thread has its own. */
final class ChunkFiller implements PluginBlocks.Rows {

  private final Tabulation tabulation;
  private final BooleanSupplier goOn;
  private final PrefixWalk walk;
  private final PluginBlocks blocks;
  private long firstPath;

  ChunkFiller(Tabulation tabulation, BooleanSupplier goOn) {
    this.tabulation = tabulation;
    this.goOn = goOn;
    walk = tabulation.walk();
    blocks = new PluginBlocks(tabulation.plugins(), tabulation.layout(), tabulation.kept());
  }

  /** Scores the paths from {@code first} on; null when it was cancelled on the way. */
  Chunk fill(long first, int rows) {
    ChunkWriter writer = new ChunkWriter(tabulation.plugins().criteria(), tabulation.kept(), rows);
    walk.seek(first);
    for (int at = 0; at < rows; at += PluginBlocks.CAPACITY) {
      if (!goOn() || !block(first + at, Math.min(PluginBlocks.CAPACITY, rows - at))) {
        return null;
      }
      writer.append(blocks.blocks());
    }
    return writer.finished();
  }

  private boolean block(long path, int size) {
    firstPath = path;
    walk.next(size, blocks.states());
    return blocks.finish(size, this);
  }

  /** Number of criteria that are only bounded among the first candidates. */
  int boundedColumns() {
    walk.seek(0);
    block(0, (int) Math.min(PluginBlocks.CAPACITY, tabulation.graph().count()));
    int bounded = 0;
    for (int c = 0; c < tabulation.kept().length; c++) {
      BoundCriterion criterion = tabulation.plugins().criteria().get(c);
      Block block = blocks.blocks()[criterion.plugin()];
      boolean apart = block.high[criterion.index()] != block.low[criterion.index()];
      bounded += tabulation.kept()[c] && apart ? 1 : 0;
    }
    return bounded;
  }

  @Override
  public boolean goOn() {
    return goOn.getAsBoolean();
  }

  @Override
  public Structure structure(int row) {
    return tabulation.graph().structure(firstPath + row);
  }
}
