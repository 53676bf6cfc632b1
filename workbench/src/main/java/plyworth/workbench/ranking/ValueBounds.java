package plyworth.workbench.ranking;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import plyworth.workbench.engine.table.CandidateTable;
import plyworth.workbench.engine.table.Chunk;

/**
 * Between which values the candidates of a chunk or zone lie, for every criterion. Weights do not
 * matter to it, so it is kept while they move; of a criterion without weight nothing is read.
 */
final class ValueBounds {

  private final CandidateTable table;
  private final CriterionValues[] criteria;
  private final RunSlots slots;

  private ValueBounds(CandidateTable table, CriterionValues[] criteria, RunSlots slots) {
    this.table = table;
    this.criteria = criteria;
    this.slots = slots;
  }

  /** The bounds of a table by the value functions of a model. */
  static ValueBounds of(CandidateTable table, ValueModel model) {
    CriterionValues[] none = new CriterionValues[model.criteria().size()];
    return new ValueBounds(table, none, RunSlots.of(table.chunks())).under(model);
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
    return new ValueBounds(table, after, slots);
  }

  /** The values of one criterion. */
  CriterionValues of(int criterion) {
    return criteria[criterion];
  }

  /** A number that changes when other criteria count, or one of them by another value function. */
  int generation(int[] counting) {
    return slots.generations().of(Arrays.stream(counting).mapToObj(this::of).toList());
  }

  /** Where what is kept of runs of candidates stands. */
  RunSlots slots() {
    return slots;
  }

  /** By chunk, a value that no candidate in it exceeds. */
  double[] whole(ValueModel model) {
    double[] sums = new double[table.chunks()];
    for (int c : Weights.counting(model)) {
      Weights.add(model.criteria().get(c).weight(), criteria[c].whole(), sums);
    }
    return sums;
  }

  /** By band of the table, a value that no candidate in it exceeds. */
  double[] bands(ValueModel model) {
    double[] sums = new double[Bands.in(table.rows())];
    for (int c : Weights.counting(model)) {
      Weights.add(model.criteria().get(c).weight(), criteria[c].bounds().bands(), sums);
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

  /** What a candidate is worth and why. */
  Valuation valuation(ValueModel model, long path) {
    Chunk chunk = table.chunkOf(path);
    int row = CandidateTable.rowOf(path);
    List<Valuation.Part> parts = new ArrayList<>();
    for (int c = 0; c < criteria.length; c++) {
      double low = chunk.has(c) ? chunk.low(c)[row] : Double.NaN;
      double high = chunk.has(c) ? chunk.high(c)[row] : Double.NaN;
      double weight = model.criteria().get(c).weight();
      parts.add(Valuation.Part.of(weight, criteria[c].curve(), low, high));
    }
    return Valuation.of(parts);
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

  /** What a candidate could be worth, to the last bit likewise. */
  double best(ValueModel model, long path) {
    double sum = 0;
    for (int c : Weights.counting(model)) {
      double value = criteria[c].best(table.chunkOf(path), CandidateTable.rowOf(path));
      sum += model.criteria().get(c).weight() * value;
    }
    return sum;
  }
}
