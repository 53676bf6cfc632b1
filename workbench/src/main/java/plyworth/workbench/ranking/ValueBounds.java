package plyworth.workbench.ranking;

import plyworth.workbench.engine.table.CandidateTable;

/**
 * Between which values the candidates of a chunk or zone lie, for every criterion. Weights do not
 * matter to it, so it is kept while they move; of a criterion without weight nothing is read.
 */
final class ValueBounds {

  private final CandidateTable table;
  private final CriterionValues[] criteria;

  private ValueBounds(CandidateTable table, CriterionValues[] criteria) {
    this.table = table;
    this.criteria = criteria;
  }

  /** The bounds of a table by the value functions of a model. */
  static ValueBounds of(CandidateTable table, ValueModel model) {
    return new ValueBounds(table, new CriterionValues[model.criteria().size()]).under(model);
  }

  /** The bounds by the value functions of a model; what is known of those that stay is kept. */
  ValueBounds under(ValueModel model) {
    CriterionValues[] after = criteria.clone();
    for (int c = 0; c < after.length; c++) {
      var function = model.criteria().get(c).value();
      if (after[c] == null || !after[c].function().equals(function)) {
        after[c] = new CriterionValues(table, c, function);
      }
    }
    return new ValueBounds(table, after);
  }

  /** The values of one criterion. */
  CriterionValues of(int criterion) {
    return criteria[criterion];
  }

  /** By chunk, a value that no candidate in it exceeds. */
  double[] whole(ValueModel model) {
    double[] sums = new double[table.chunks()];
    for (int c : Weights.counting(model)) {
      Weights.add(model.criteria().get(c).weight(), criteria[c].whole(), sums);
    }
    return sums;
  }

  /** By zone of a chunk, a value that no candidate in it exceeds. */
  double[] highest(ValueModel model, int chunk) {
    double[] sums = new double[table.chunk(chunk).zones().count()];
    for (int c : Weights.counting(model)) {
      Weights.add(model.criteria().get(c).weight(), criteria[c].highest(chunk), sums);
    }
    return sums;
  }

  /** By zone of a chunk, a value that no candidate in it falls short of. */
  double[] lowest(ValueModel model, int chunk) {
    double[] sums = new double[table.chunk(chunk).zones().count()];
    for (int c : Weights.counting(model)) {
      Weights.add(model.criteria().get(c).weight(), criteria[c].lowest(chunk), sums);
    }
    return sums;
  }

  /** What a candidate is ranked by, to the last bit as {@link RowValues} has it. */
  double worst(ValueModel model, long path) {
    double sum = 0;
    for (int c : Weights.counting(model)) {
      double value = criteria[c].worst(table.chunkOf(path), CandidateTable.rowOf(path));
      sum += model.criteria().get(c).weight() * value;
    }
    return sum;
  }
}
