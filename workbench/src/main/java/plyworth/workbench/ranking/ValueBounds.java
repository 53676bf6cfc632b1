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

  /** Most zones whose strips are kept: 4 MiB a criterion. */
  private static final int ZONES = 1 << 16;

  /** Most strips whose rows are kept: 16 MiB a criterion. */
  private static final int STRIPS = 1 << 17;

  private final CriterionValues[] criteria;
  private final Slots zones;
  private final Slots strips;
  private final Generations generations;

  private ValueBounds(
      CandidateTable table,
      CriterionValues[] criteria,
      Slots zones,
      Slots strips,
      Generations generations) {
    this.table = table;
    this.criteria = criteria;
    this.zones = zones;
    this.strips = strips;
    this.generations = generations;
  }

  /** The bounds of a table by the value functions of a model. */
  static ValueBounds of(CandidateTable table, ValueModel model) {
    CriterionValues[] none = new CriterionValues[model.criteria().size()];
    Slots zones = new Slots(table.chunks(), Chunk.ROWS / Chunk.ZONE, ZONES);
    Slots strips = new Slots(table.chunks(), Strips.PER_CHUNK, STRIPS);
    return new ValueBounds(table, none, zones, strips, new Generations()).under(model);
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
    return new ValueBounds(table, after, zones, strips, generations);
  }

  /** The values of one criterion. */
  CriterionValues of(int criterion) {
    return criteria[criterion];
  }

  /** A number that changes when other criteria count, or one of them by another value function. */
  int generation(int[] counting) {
    return generations.of(Arrays.stream(counting).mapToObj(this::of).toList());
  }

  /** Where what is kept of zones stands. */
  Slots zones() {
    return zones;
  }

  /** Where what is kept of strips stands. */
  Slots strips() {
    return strips;
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
      Weights.add(model.criteria().get(c).weight(), criteria[c].bands(), sums);
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
}
