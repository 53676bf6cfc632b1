package plyworth.workbench.engine.table;

import java.util.Arrays;
import java.util.List;
import plyworth.shared.scoring.Layerwise;
import plyworth.workbench.host.BoundPlugin;

/** The joined states of all nodes of listed structures in one world after another. */
final class ListedStates implements PluginBlocks.States {

  private final ListedStructures listed;
  private final StateLayout layout;
  private final double[][] contributions;
  private final double[][] states;
  private final double[][] inner;
  private final double[][] joined;
  private final double[] neutral;

  ListedStates(ListedStructures listed, StateLayout layout) {
    this.listed = listed;
    this.layout = layout;
    contributions = new double[listed.pairs().size()][layout.size()];
    states = new double[layout.size()][listed.size()];
    inner = new double[layout.size()][Stretches.LONGEST];
    joined = new double[layout.size()][Stretches.LONGEST];
    neutral = layout.neutral();
  }

  /** Asks a plugin what every pair contributes. */
  void contribute(int plugin, BoundPlugin bound, Layerwise form) {
    Plugins.call(
        bound,
        () -> {
          contribute(plugin, form);
          return true;
        });
  }

  private void contribute(int plugin, Layerwise form) {
    int start = layout.start(plugin);
    double[] preset = Arrays.copyOfRange(neutral, start, start + layout.size(plugin));
    double[] own = new double[preset.length];
    List<ListedStructures.Neighbours> pairs = listed.pairs();
    for (int i = 0; i < contributions.length; i++) {
      System.arraycopy(preset, 0, own, 0, own.length);
      form.contribute(pairs.get(i).inner(), pairs.get(i).outer(), own);
      System.arraycopy(own, 0, contributions[i], start, own.length);
    }
  }

  /** Joins what was contributed, from the inside out. */
  void join() {
    for (ListedStructures.Group group : listed.groups()) {
      double[] outer = contributions[group.pair()];
      if (group.inner().length == 0) {
        for (int c = 0; c < states.length; c++) {
          states[c][group.first()] = outer[c];
        }
      }
      for (int at = 0; at < group.inner().length; at += Stretches.LONGEST) {
        int count = Math.min(Stretches.LONGEST, group.inner().length - at);
        join(outer, group.inner(), at, count, group.first() + at);
      }
    }
  }

  private void join(double[] outer, int[] nodes, int from, int count, int first) {
    boolean run = nodes[from + count - 1] - nodes[from] == count - 1;
    for (int c = 0; c < states.length; c++) {
      if (run) {
        System.arraycopy(states[c], nodes[from], inner[c], 0, count);
      } else {
        gather(states[c], nodes, from, count, inner[c]);
      }
    }
    ColumnJoin.join(layout, outer, inner, joined, count);
    for (int c = 0; c < states.length; c++) {
      System.arraycopy(joined[c], 0, states[c], first, count);
    }
  }

  private static void gather(double[] column, int[] nodes, int from, int count, double[] front) {
    for (int k = 0; k < count; k++) {
      front[k] = column[nodes[from + k]];
    }
  }

  @Override
  public void join(int plugin, Remaining rows, double[][] columns) {
    int start = layout.start(plugin);
    for (int c = 0; c < layout.size(plugin); c++) {
      double[] column = states[start + c];
      for (int k = 0; k < rows.size(); k++) {
        columns[c][k] = column[listed.node(rows.row(k))];
      }
    }
  }
}
