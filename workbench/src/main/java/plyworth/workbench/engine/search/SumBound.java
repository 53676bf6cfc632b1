package plyworth.workbench.engine.search;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;
import plyworth.workbench.engine.CompiledGraph;
import plyworth.workbench.engine.table.Tabulation;

/**
 * What candidates can be worth by the criteria that add up: a line over each value makes of all of
 * them one sum along the edges, whose greatest completion is known for every node. What rises in
 * one criterion as it falls in another is so weighed against each other, which intervals of each
 * cannot do.
 */
final class SumBound {

  /** Share by which sums in another order may differ. */
  private static final double ROUNDING = 1e-12;

  private final double[] byEdge;
  private final double[] completions;
  private final boolean[] summed;
  private final double constant;
  private final boolean everything;
  private final boolean several;

  private SumBound(
      double[] byEdge,
      double[] completions,
      boolean[] summed,
      double constant,
      boolean everything) {
    this.byEdge = byEdge;
    this.completions = completions;
    this.summed = summed;
    this.constant = constant;
    this.everything = everything;
    several = IntStream.range(0, summed.length).filter(c -> summed[c]).count() > 1;
  }

  static SumBound of(Tabulation tabulation, SumColumns columns, Goal goal) {
    CompiledGraph graph = tabulation.graph();
    double[] byEdge = new double[graph.edges()];
    boolean[] summed = new boolean[tabulation.plugins().criteria().size()];
    boolean everything = !goal.excludes() && nothingBlocks(tabulation);
    double constant = 0;
    for (int c = 0; c < summed.length; c++) {
      Optional<SumColumn> column = goal.counts(c) ? columns.of(c) : Optional.empty();
      if (column.isPresent()) {
        Line line = goal.above(c, column.get().low(), column.get().high());
        add(line.slope(), column.get().byEdge(), byEdge);
        constant += line.atZero() + ROUNDING * Math.abs(line.slope()) * column.get().size();
        everything &= line.exact();
        summed[c] = true;
      }
      everything &= summed[c] || !goal.counts(c);
    }
    return new SumBound(byEdge, SumColumn.greatest(graph, byEdge), summed, constant, everything);
  }

  private static boolean nothingBlocks(Tabulation tabulation) {
    return tabulation.plugins().plugins().stream()
        .allMatch(bound -> bound.plugin().blockingRules().isEmpty());
  }

  private static void add(double slope, double[] figures, double[] sums) {
    for (int i = 0; i < sums.length; i++) {
      sums[i] += slope * figures[i];
    }
  }

  /** What an edge adds. */
  double of(int edge) {
    return byEdge[edge];
  }

  /** The most that the criteria that add up can be worth together behind a prefix. */
  double atMost(double prefix, int node) {
    return constant + (prefix + completions[node]);
  }

  /** The same for a region; where no more than one criterion adds up intervals say as much. */
  double atMost(Kinds kinds, Region region) {
    if (!several) {
      return Double.POSITIVE_INFINITY;
    }
    double[] sums = {0};
    for (int layer = 0; layer < region.edges.length; layer++) {
      sums = followed(kinds, region, layer, sums);
    }
    double most = Double.NEGATIVE_INFINITY;
    int first = region.range(region.edges.length - 1).from();
    for (int i = 0; i < sums.length; i++) {
      double inner = region.ended ? 0 : completions[kinds.node(region.kind(), first + i)];
      most = Math.max(most, sums[i] + inner);
    }
    return constant + most;
  }

  /** By member of a layer, the greatest sum of the layers down to it. */
  private double[] followed(Kinds kinds, Region region, int layer, double[] outer) {
    Range range = region.ranges[layer];
    int first = region.range(layer - 1).from();
    double[] sums = new double[range.size()];
    Arrays.fill(sums, Double.NEGATIVE_INFINITY);
    for (int o = 0; o < outer.length; o++) {
      for (int i = 0; i < sums.length; i++) {
        int edge = kinds.edge(region.edges[layer], first + o, range.from() + i);
        sums[i] = Math.max(sums[i], outer[o] + byEdge[edge]);
      }
    }
    return sums;
  }

  /** The criteria that add up. */
  boolean[] summed() {
    return summed;
  }

  /** Whether nothing else decides: bounds of the plugins would say no more. */
  boolean everything() {
    return everything;
  }
}
