package plyworth.workbench.engine.table;

import java.util.Arrays;
import java.util.List;
import plyworth.shared.scoring.Block;
import plyworth.workbench.host.BoundCriterion;

/** What the criteria say of listed structures in one world, in the order of the list. */
public final class ListedFigures implements PluginBlocks.Sink {

  private final ListedStructures listed;
  private final List<BoundCriterion> criteria;
  private final boolean[] blocked;
  private final double[][] low;
  private final double[][] high;

  ListedFigures(ListedStructures listed, List<BoundCriterion> criteria, boolean[] kept) {
    this.listed = listed;
    this.criteria = criteria;
    blocked = new boolean[listed.count()];
    low = new double[kept.length][];
    high = new double[kept.length][];
    for (int c = 0; c < kept.length; c++) {
      if (kept[c]) {
        low[c] = new double[listed.count()];
        Arrays.fill(low[c], Double.NaN);
        high[c] = low[c];
      }
    }
  }

  @Override
  public void take(int plugin, Block block, Remaining rows) {
    for (int k = 0; k < rows.size(); k++) {
      blocked[place(rows, k)] |= block.blocked[k] != 0;
    }
    for (int c = 0; c < low.length; c++) {
      BoundCriterion criterion = criteria.get(c);
      if (low[c] != null && criterion.plugin() == plugin) {
        int index = criterion.index();
        put(block.low[index], rows, low[c]);
        if (block.high[index] != block.low[index]) {
          high[c] = low[c].clone();
          put(block.high[index], rows, high[c]);
        }
      }
    }
  }

  private void put(double[] column, Remaining rows, double[] figures) {
    for (int k = 0; k < rows.size(); k++) {
      figures[place(rows, k)] = column[k];
    }
  }

  private int place(Remaining rows, int k) {
    return listed.place(rows.row(k));
  }

  /** Whether a plugin blocks a structure. What is blocked has no figures from there on. */
  public boolean blocked(int structure) {
    return blocked[structure];
  }

  /**
   * Lower ends of a criterion by structure, NaN when unknown; null when it is not wanted or does
   * not apply.
   */
  public double[] low(int criterion) {
    return low[criterion];
  }

  /** Upper ends; the same array where all are exact. */
  public double[] high(int criterion) {
    return high[criterion];
  }
}
