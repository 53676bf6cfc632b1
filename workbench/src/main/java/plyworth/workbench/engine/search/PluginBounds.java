package plyworth.workbench.engine.search;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import plyworth.shared.scoring.BoundsBlock;
import plyworth.shared.scoring.Figure;
import plyworth.shared.scoring.Layerwise;
import plyworth.shared.scoring.ScoringPlugin;
import plyworth.workbench.engine.table.Plugins;
import plyworth.workbench.engine.table.StateLayout;
import plyworth.workbench.engine.table.Tabulation;
import plyworth.workbench.host.BoundCriterion;
import plyworth.workbench.host.BoundPlugin;
import plyworth.workbench.host.BoundPlugins;

/**
 * Between which figures candidates lie whose states lie between others, plugin after plugin: a span
 * that a plugin blocks for certain goes no further.
 */
final class PluginBounds {

  private final BoundPlugins bound;
  private final StateLayout layout;
  private final List<Optional<Layerwise>> forms;
  private final BoundsBlock[] blocks;
  private final double[][] low;
  private final double[][] high;
  private final double[][][] providedLow;
  private final double[][][] providedHigh;
  private final int[] rows;
  private long asked;

  PluginBounds(Tabulation tabulation, int capacity) {
    bound = tabulation.plugins();
    layout = tabulation.layout();
    forms = tabulation.forms();
    List<BoundPlugin> plugins = bound.plugins();
    blocks = new BoundsBlock[plugins.size()];
    providedLow = new double[plugins.size()][][];
    providedHigh = new double[plugins.size()][][];
    for (int p = 0; p < blocks.length; p++) {
      ScoringPlugin plugin = plugins.get(p).plugin();
      int provides = plugin.provides().size();
      blocks[p] =
          new BoundsBlock(
              layout.size(p), plugin.needs().size(), plugin.criteria().size(), provides, capacity);
      providedLow[p] = new double[provides][capacity];
      providedHigh[p] = new double[provides][capacity];
    }
    low = new double[capacity][bound.criteria().size()];
    high = new double[capacity][bound.criteria().size()];
    rows = new int[capacity];
  }

  /**
   * Between which figures candidates lie.
   *
   * @param spans between which states they lie, one span for some of them each
   */
  CriterionSpans of(List<StateSpan> spans) {
    asked++;
    int left = spans.size();
    for (int j = 0; j < left; j++) {
      rows[j] = j;
      Arrays.fill(low[j], Double.NaN);
      Arrays.fill(high[j], Double.NaN);
    }
    for (int p = 0; p < blocks.length && left > 0; p++) {
      if (forms.get(p).isPresent()) {
        bound(p, spans, left);
        left = notBlocked(p, left);
      } else {
        nothingKnown(p);
      }
    }
    return new CriterionSpans(copied(low, left), copied(high, left));
  }

  /** How often it was asked. */
  long asked() {
    return asked;
  }

  private int notBlocked(int p, int left) {
    int kept = 0;
    for (int k = 0; k < left; k++) {
      if (blocks[p].mustBlock[k] == 0) {
        rows[kept++] = rows[k];
      }
    }
    return kept;
  }

  private double[][] copied(double[][] ends, int left) {
    return IntStream.range(0, left).mapToObj(k -> ends[rows[k]].clone()).toArray(double[][]::new);
  }

  private void bound(int p, List<StateSpan> spans, int left) {
    BoundsBlock block = blocks[p];
    block.size = left;
    int start = layout.start(p);
    for (int c = 0; c < layout.size(p); c++) {
      for (int k = 0; k < left; k++) {
        block.stateLow[c][k] = spans.get(rows[k]).low()[start + c];
        block.stateHigh[c][k] = spans.get(rows[k]).high()[start + c];
      }
    }
    fillNeeded(p, left);
    BoundPlugin plugin = bound.plugins().get(p);
    Plugins.call(plugin, () -> bounded(forms.get(p).orElseThrow(), block));
    for (int c = 0; c < bound.criteria().size(); c++) {
      BoundCriterion criterion = bound.criteria().get(c);
      if (criterion.plugin() == p && criterion.applies()) {
        for (int k = 0; k < left; k++) {
          low[rows[k]][c] = block.low[criterion.index()][k];
          high[rows[k]][c] = block.high[criterion.index()][k];
        }
      }
    }
    for (int f = 0; f < block.providedLow.length; f++) {
      for (int k = 0; k < left; k++) {
        providedLow[p][f][rows[k]] = block.providedLow[f][k];
        providedHigh[p][f][rows[k]] = block.providedHigh[f][k];
      }
    }
  }

  private static boolean bounded(Layerwise form, BoundsBlock block) {
    form.bound(block);
    return true;
  }

  private void nothingKnown(int p) {
    for (int f = 0; f < providedLow[p].length; f++) {
      Arrays.fill(providedLow[p][f], Double.NaN);
      Arrays.fill(providedHigh[p][f], Double.NaN);
    }
  }

  private void fillNeeded(int p, int left) {
    List<Figure> needs = bound.plugins().get(p).plugin().needs();
    for (int i = 0; i < needs.size(); i++) {
      int from = provider(needs.get(i));
      for (int k = 0; k < left; k++) {
        int at = from < 0 ? 0 : index(from, needs.get(i));
        blocks[p].neededLow[i][k] = from < 0 ? Double.NaN : providedLow[from][at][rows[k]];
        blocks[p].neededHigh[i][k] = from < 0 ? Double.NaN : providedHigh[from][at][rows[k]];
      }
    }
  }

  private int provider(Figure figure) {
    for (int p = 0; p < blocks.length; p++) {
      if (index(p, figure) >= 0) {
        return p;
      }
    }
    return -1;
  }

  private int index(int plugin, Figure figure) {
    return bound.plugins().get(plugin).plugin().provides().indexOf(figure);
  }
}
