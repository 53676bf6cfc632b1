package plyworth.workbench.engine.table;

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
  static final int CAPACITY = 1024;

  /** Which structure stands at a row of the block. */
  interface Rows {
    /** The structure of a row. */
    Structure structure(int row);

    /** Whether to go on. */
    boolean goOn();
  }

  /** Joined states of the candidates of a block. */
  interface States {
    /**
     * Writes those of a plugin.
     *
     * @param rows rows of the block that are wanted
     * @param columns receives the states, component by wanted row
     */
    void join(int plugin, Remaining rows, double[][] columns);
  }

  /** Takes the columns of a plugin as soon as they are finished. */
  interface Sink {
    /** The block of a plugin holds only the rows that were not blocked before it. */
    void take(int plugin, Block block, Remaining rows);
  }

  private final boolean[] kept;
  private final Block[] blocks;
  private final double[][][] provided;
  private final Remaining remaining = new Remaining();
  private BoundPlugins bound;
  private List<Optional<Layerwise>> forms;

  /**
   * Blocks for the plugins.
   *
   * @param forms their layerwise forms
   * @param kept for each criterion of all plugins whether its figures are used
   */
  PluginBlocks(
      BoundPlugins bound, List<Optional<Layerwise>> forms, StateLayout layout, boolean[] kept) {
    this.bound = bound;
    this.forms = forms;
    this.kept = kept;
    List<BoundPlugin> plugins = bound.plugins();
    blocks = new Block[plugins.size()];
    provided = new double[plugins.size()][][];
    for (int p = 0; p < blocks.length; p++) {
      ScoringPlugin plugin = plugins.get(p).plugin();
      blocks[p] =
          new Block(
              layout.size(p),
              plugin.needs().size(),
              plugin.criteria().size(),
              plugin.provides().size(),
              CAPACITY);
      layout.fillNeutral(p, blocks[p].states);
      provided[p] = new double[plugin.provides().size()][CAPACITY];
    }
  }

  /** Goes on with the same plugins bound to another draw, whose states have the same parts. */
  void go(BoundPlugins there, List<Optional<Layerwise>> theirs) {
    bound = there;
    forms = theirs;
  }

  /**
   * Finishes a block plugin after plugin, each for the candidates that none before it has blocked.
   *
   * @param size candidates in it
   * @param states their joined states
   * @param rows the structures, for plugins without a layerwise form
   * @param sink receives what each plugin finished
   * @return false when it was cancelled on the way
   * @throws ScoringFault when a plugin throws or gives what cannot be
   */
  boolean finish(int size, States states, Rows rows, Sink sink) {
    remaining.begin(size);
    for (int p = 0; p < blocks.length; p++) {
      BoundPlugin plugin = bound.plugins().get(p);
      Block block = blocks[p];
      clear(block, remaining.size());
      states.join(p, remaining, block.states);
      fillNeeded(plugin.plugin(), block);
      Layerwise form = forms.get(p).orElse(null);
      boolean done =
          form == null
              ? StructureBlocks.fill(bound, p, block, among(rows))
              : Plugins.call(plugin, () -> finished(form, block))
                  && StructureBlocks.decide(bound, p, block, among(rows));
      if (!done) {
        return false;
      }
      check(p, block);
      sink.take(p, block, remaining);
      for (int f = 0; f < block.provided.length; f++) {
        remaining.scatter(block.provided[f], provided[p][f]);
      }
      remaining.leaveOut(block.blocked);
    }
    return true;
  }

  private Rows among(Rows rows) {
    return new Rows() {
      @Override
      public Structure structure(int row) {
        return rows.structure(remaining.row(row));
      }

      @Override
      public boolean goOn() {
        return rows.goOn();
      }
    };
  }

  private static boolean finished(Layerwise form, Block block) {
    form.finish(block);
    return true;
  }

  private static void clear(Block block, int size) {
    block.size = size;
    Arrays.fill(block.blocked, 0, size, 0);
    Arrays.fill(block.undecided, 0, size, false);
    System.arraycopy(block.low, 0, block.high, 0, block.low.length);
  }

  private void fillNeeded(ScoringPlugin plugin, Block block) {
    for (int i = 0; i < block.needed.length; i++) {
      double[] source = provided(plugin.needs().get(i));
      if (source == null) {
        Arrays.fill(block.needed[i], 0, block.size, Double.NaN);
      } else {
        remaining.gather(source, block.needed[i]);
      }
    }
  }

  private double[] provided(Figure figure) {
    for (int p = 0; p < blocks.length; p++) {
      int at = bound.plugins().get(p).plugin().provides().indexOf(figure);
      if (at >= 0) {
        return provided[p][at];
      }
    }
    return null;
  }

  private void check(int p, Block block) {
    BoundPlugin plugin = bound.plugins().get(p);
    if (block.size != remaining.size()) {
      throw new ScoringFault(plugin.id(), "it changes the size of the block");
    }
    for (int c = 0; c < kept.length; c++) {
      BoundCriterion criterion = bound.criteria().get(c);
      if (kept[c] && criterion.plugin() == p) {
        checkEnds(criterion.id(), plugin.id(), block, criterion.index());
      }
    }
    for (int f = 0; f < block.provided.length; f++) {
      if (hasInfinite(block.provided[f], block.size)) {
        throw new ScoringFault(
            plugin.id(), "it provides an infinite " + plugin.plugin().provides().get(f));
      }
    }
  }

  /** Whether some figure is infinite; the first look, without a branch, takes most columns. */
  private static boolean hasInfinite(double[] figures, int size) {
    int j = 0;
    double a = 0;
    double b = 0;
    double c = 0;
    double d = 0;
    for (; j < size - 3; j += 4) {
      a += figures[j] - figures[j];
      b += figures[j + 1] - figures[j + 1];
      c += figures[j + 2] - figures[j + 2];
      d += figures[j + 3] - figures[j + 3];
    }
    for (; j < size; j++) {
      a += figures[j] - figures[j];
    }
    boolean finite = a + b + c + d == 0;
    return !finite && Arrays.stream(figures, 0, size).anyMatch(Double::isInfinite);
  }

  private static void checkEnds(String criterion, String plugin, Block block, int c) {
    double[] low = block.low[c];
    double[] high = block.high[c];
    if (low == high && !hasInfinite(low, block.size)) {
      return;
    }
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
