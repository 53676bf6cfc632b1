package plyworth.workbench.ranking;

import java.util.Arrays;
import java.util.function.IntFunction;
import plyworth.workbench.engine.table.Chunk;

/**
 * The values of the candidates of a zone, computed column by column. Columns without weight are not
 * read.
 */
final class RowValues {

  private final int[] criteria;
  private final double[] weights;

  /** The lowest value of each row, the unknown at 0: what it is ranked by. */
  final double[] worst = new double[Chunk.ZONE];

  /** The highest value of each row, the unknown at 0 all the same, as no refining can mend it. */
  final double[] best = new double[Chunk.ZONE];

  RowValues(ValueModel model) {
    criteria = Weights.counting(model);
    weights = Weights.of(model, criteria);
  }

  /**
   * Computes {@link #worst} and {@link #best} of the rows of a zone.
   *
   * @param byCriterion their values by a criterion
   */
  void compute(IntFunction<ZoneRows> byCriterion) {
    Arrays.fill(worst, 0);
    Arrays.fill(best, 0);
    for (int i = 0; i < criteria.length; i++) {
      ZoneRows rows = byCriterion.apply(criteria[i]);
      Weights.add(weights[i], rows.worst(), worst);
      Weights.add(weights[i], rows.best(), best);
    }
  }
}
