package plyworth.workbench.engine.table;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import plyworth.shared.scoring.Join;
import plyworth.shared.scoring.Layerwise;
import plyworth.shared.scoring.StatePart;
import plyworth.workbench.host.BoundPlugin;

/** Where the state of each plugin lies in one common state, plugins and parts in order. */
public final class StateLayout {

  private final Join[] joins;
  private final int[] offsets;
  private final int[] pluginStart;
  private final int[] firstPart;
  private final double[] neutral;

  private StateLayout(
      Join[] joins, int[] offsets, int[] pluginStart, int[] firstPart, double[] neutral) {
    this.joins = joins;
    this.offsets = offsets;
    this.pluginStart = pluginStart;
    this.firstPart = firstPart;
    this.neutral = neutral;
  }

  /** The layout of the layerwise forms; a plugin without one takes no room. */
  static StateLayout of(List<BoundPlugin> plugins, List<Optional<Layerwise>> forms) {
    List<Join> joins = new ArrayList<>();
    int[] start = new int[plugins.size() + 1];
    int[] firstPart = new int[plugins.size() + 1];
    for (int p = 0; p < plugins.size(); p++) {
      start[p + 1] = start[p];
      for (StatePart part : parts(plugins.get(p), forms.get(p))) {
        joins.add(part.join());
        start[p + 1] += part.join().size();
      }
      firstPart[p + 1] = joins.size();
    }
    int[] offsets = new int[joins.size()];
    for (int i = 1; i < offsets.length; i++) {
      offsets[i] = offsets[i - 1] + joins.get(i - 1).size();
    }
    double[] neutral = new double[start[plugins.size()]];
    for (int i = 0; i < offsets.length; i++) {
      joins.get(i).neutral(neutral, offsets[i]);
    }
    return new StateLayout(joins.toArray(Join[]::new), offsets, start, firstPart, neutral);
  }

  /**
   * The same components without the parts to which nothing contributes: they stay neutral, and need
   * neither be kept nor joined.
   */
  StateLayout joining(Contributions contributions) {
    int[] first = new int[firstPart.length];
    List<Integer> parts = new ArrayList<>();
    for (int p = 0; p + 1 < firstPart.length; p++) {
      for (int part = firstPart[p]; part < firstPart[p + 1]; part++) {
        int from = offsets[part];
        if (contributions.differ(neutral, from, from + joins[part].size())) {
          parts.add(part);
        }
      }
      first[p + 1] = parts.size();
    }
    return new StateLayout(
        parts.stream().map(part -> joins[part]).toArray(Join[]::new),
        parts.stream().mapToInt(part -> offsets[part]).toArray(),
        pluginStart,
        first,
        neutral);
  }

  private static List<StatePart> parts(BoundPlugin plugin, Optional<Layerwise> form) {
    return Plugins.call(plugin, () -> form.map(Layerwise::state).orElse(List.of()));
  }

  /** Number of components of the common state. */
  public int size() {
    return pluginStart[pluginStart.length - 1];
  }

  /** Number of components that are part of something. */
  int kept() {
    return Arrays.stream(joins).mapToInt(Join::size).sum();
  }

  /** First component of a plugin. */
  public int start(int plugin) {
    return pluginStart[plugin];
  }

  /** Number of components of a plugin. */
  public int size(int plugin) {
    return pluginStart[plugin + 1] - pluginStart[plugin];
  }

  /** Number of parts. */
  public int parts() {
    return joins.length;
  }

  /** First part of a plugin; that of the plugin after the last is the number of parts. */
  public int firstPart(int plugin) {
    return firstPart[plugin];
  }

  /** How a part is joined. */
  public Join join(int part) {
    return joins[part];
  }

  /** First component of a part. */
  public int offset(int part) {
    return offsets[part];
  }

  /** A new neutral state. */
  public double[] neutral() {
    return neutral.clone();
  }

  /** Columns for states: neutral ones, and none for components of no part. */
  double[][] columns(int rows) {
    double[][] columns = new double[size()][];
    for (int part = 0; part < joins.length; part++) {
      for (int c = offsets[part]; c < offsets[part] + joins[part].size(); c++) {
        columns[c] = new double[rows];
        Arrays.fill(columns[c], neutral[c]);
      }
    }
    return columns;
  }

  /** Makes the columns of a plugin neutral. */
  void fillNeutral(int plugin, double[][] columns) {
    for (int c = 0; c < columns.length; c++) {
      Arrays.fill(columns[c], neutral[start(plugin) + c]);
    }
  }

  /** Joins two states; {@code result} must be neither of them. */
  public void join(double[] outer, double[] inner, double[] result) {
    for (int i = 0; i < joins.length; i++) {
      joins[i].join(outer, inner, result, offsets[i]);
    }
  }
}
