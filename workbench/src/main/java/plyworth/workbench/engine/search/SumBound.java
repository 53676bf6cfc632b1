package plyworth.workbench.engine.search;

import java.util.Optional;
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

  /** The criteria that add up. */
  boolean[] summed() {
    return summed;
  }

  /** Whether nothing else decides: bounds of the plugins would say no more. */
  boolean everything() {
    return everything;
  }
}
