package plyworth.workbench.engine.table;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import plyworth.shared.scoring.Block;
import plyworth.shared.scoring.Figure;
import plyworth.shared.scoring.Layerwise;
import plyworth.shared.scoring.ScoringPlugin;
import plyworth.shared.structure.Structure;
import plyworth.workbench.host.BoundCriterion;
import plyworth.workbench.host.BoundPlugin;
import plyworth.workbench.host.BoundPlugins;

/** One block per plugin, finished in order, with the figures of earlier ones handed to later. */
final class PluginBlocks {

  /** Candidates in a block. */
  static final int CAPACITY = 512;

  /** Which structure stands at a row of the block. */
  interface Rows {
    /** The structure of a row. */
    Structure structure(int row);

    /** Whether to go on. */
    boolean goOn();
  }

  private final BoundPlugins bound;
  private final boolean[] kept;
  private final Block[] blocks;
  private final List<Optional<Layerwise>> forms = new ArrayList<>();
  private final double[][] states;

  /**
   * Blocks for the plugins.
   *
   * @param kept for each criterion of all plugins whether its figures are used
   */
  PluginBlocks(BoundPlugins bound, StateLayout layout, boolean[] kept) {
    this.bound = bound;
    this.kept = kept;
    List<BoundPlugin> plugins = bound.plugins();
    plugins.forEach(p -> forms.add(Plugins.call(p, p.scorer()::layerwise)));
    blocks = new Block[plugins.size()];
    states = new double[layout.size()][];
    for (int p = 0; p < blocks.length; p++) {
      ScoringPlugin plugin = plugins.get(p).plugin();
      blocks[p] =
          new Block(
              layout.size(p),
              plugin.needs().size(),
              plugin.criteria().size(),
              plugin.provides().size(),
              CAPACITY);
      System.arraycopy(blocks[p].states, 0, states, layout.start(p), layout.size(p));
    }
  }

  /** The state columns of all plugins, as the layout has them. */
  double[][] states() {
    return states;
  }

  /** The blocks, in the order of the plugins. */
  Block[] blocks() {
    return blocks;
  }

  /**
   * Finishes a block whose states are written.
   *
   * @param size candidates in it
   * @param rows the structures, for plugins without a layerwise form
   * @return false when it was cancelled on the way
   * @throws ScoringFault when a plugin throws or gives what cannot be
   */
  boolean finish(int size, Rows rows) {
    for (int p = 0; p < blocks.length; p++) {
      BoundPlugin plugin = bound.plugins().get(p);
      Block block = blocks[p];
      clear(block, size);
      fillNeeded(plugin.plugin(), block);
      Layerwise form = forms.get(p).orElse(null);
      boolean done =
          form == null
              ? StructureBlocks.fill(bound, p, block, rows)
              : Plugins.call(plugin, () -> finished(form, block));
      if (!done) {
        return false;
      }
      check(p, block);
    }
    return true;
  }

  private static boolean finished(Layerwise form, Block block) {
    form.finish(block);
    return true;
  }

  private static void clear(Block block, int size) {
    block.size = size;
    Arrays.fill(block.blocked, 0, size, 0);
    for (int c = 0; c < block.low.length; c++) {
      Arrays.fill(block.low[c], 0, size, Double.NaN);
      block.high[c] = block.low[c];
    }
    for (double[] figures : block.provided) {
      Arrays.fill(figures, 0, size, Double.NaN);
    }
  }

  private void fillNeeded(ScoringPlugin plugin, Block block) {
    for (int i = 0; i < block.needed.length; i++) {
      double[] source = provided(plugin.needs().get(i));
      if (source == null) {
        Arrays.fill(block.needed[i], 0, block.size, Double.NaN);
      } else {
        System.arraycopy(source, 0, block.needed[i], 0, block.size);
      }
    }
  }

  private double[] provided(Figure figure) {
    for (int p = 0; p < blocks.length; p++) {
      int at = bound.plugins().get(p).plugin().provides().indexOf(figure);
      if (at >= 0) {
        return blocks[p].provided[at];
      }
    }
    return null;
  }

  private void check(int p, Block block) {
    BoundPlugin plugin = bound.plugins().get(p);
    if (block.size < 0) {
      throw new ScoringFault(plugin.id(), "it changes the size of the block");
    }
    for (int c = 0; c < kept.length; c++) {
      BoundCriterion criterion = bound.criteria().get(c);
      if (kept[c] && criterion.plugin() == p) {
        checkEnds(criterion.id(), plugin.id(), block, criterion.index());
      }
    }
    for (int f = 0; f < block.provided.length; f++) {
      for (int j = 0; j < block.size; j++) {
        if (Double.isInfinite(block.provided[f][j])) {
          throw new ScoringFault(
              plugin.id(), "it provides an infinite " + plugin.plugin().provides().get(f));
        }
      }
    }
  }

  private static void checkEnds(String criterion, String plugin, Block block, int c) {
    double[] low = block.low[c];
    double[] high = block.high[c];
    for (int j = 0; j < block.size; j++) {
      if (low[j] > high[j]) {
        throw new ScoringFault(
            plugin, criterion + " has the bounds " + low[j] + " to " + high[j] + ", upside down");
      }
      if (low[j] == high[j] && Double.isInfinite(low[j])) {
        throw new ScoringFault(plugin, criterion + " is infinite");
      }
    }
  }
}
