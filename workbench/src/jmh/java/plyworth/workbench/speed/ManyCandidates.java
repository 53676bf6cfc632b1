package plyworth.workbench.speed;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import plyworth.shared.scoring.Join;
import plyworth.shared.scoring.ValueFunction;
import plyworth.shared.study.Weighting;
import plyworth.workbench.ToyPlugin;
import plyworth.workbench.ToyStudy;
import plyworth.workbench.engine.table.CandidateTable;
import plyworth.workbench.engine.table.TableOfColumns;
import plyworth.workbench.host.BoundCriterion;
import plyworth.workbench.ranking.ValueModel;
import plyworth.workbench.ranking.Weighed;

/**
 * Made-up candidates in the order of enumeration, ten materials in every layer: five figures add up
 * over the layers, the sixth is what layers in series let through.
 */
final class ManyCandidates {

  /** Criteria with a column. */
  static final int CRITERIA = 6;

  /** As many as are weighed by {@link #weighing}, where that is asked for. */
  static final int FIRST_FIVE = 5;

  private static final int MATERIALS = 10;
  private static final int SERIES = CRITERIA - 1;

  private final int layers;
  private final double[][][] contributions;
  private final List<BoundCriterion> criteria;

  /** Candidates of as many layers, ten to the power of these. */
  ManyCandidates(int layers) {
    this.layers = layers;
    SplittableRandom random = new SplittableRandom(5);
    contributions = new double[CRITERIA][layers][MATERIALS];
    for (int c = 0; c < CRITERIA; c++) {
      for (double[] layer : contributions[c]) {
        for (int m = 0; m < MATERIALS; m++) {
          layer[m] = c == SERIES ? Math.exp(9 * random.nextDouble()) : random.nextDouble();
        }
      }
    }
    List<Join> joins = new ArrayList<>();
    for (int c = 0; c < CRITERIA; c++) {
      joins.add(Join.SUM);
    }
    criteria =
        ToyStudy.bound(
                List.of(new ToyPlugin("a", joins, List.of(), List.of(), true, false).bound()))
            .criteria();
  }

  CandidateTable table() {
    return TableOfColumns.of(
        criteria,
        Math.round(Math.pow(MATERIALS, layers)),
        (path, low, high, codes) -> {
          for (int row = 0; row < codes.length; row++) {
            figures(path + row, low, row);
          }
        });
  }

  /** Candidates whose figures are drawn at random, each for itself. */
  CandidateTable independent(long rows) {
    return TableOfColumns.of(
        criteria,
        rows,
        (path, low, high, codes) -> {
          SplittableRandom random = new SplittableRandom(path);
          for (float[] column : low) {
            for (int row = 0; row < codes.length; row++) {
              column[row] = (float) (layers * random.nextDouble());
            }
          }
        });
  }

  /** What every candidate is worth by each criterion that counts, criterion by row. */
  double[][] values(CandidateTable table, ValueModel model) {
    double[][] values = new double[CRITERIA][];
    for (int c = 0; c < CRITERIA; c++) {
      values[c] = new double[(int) table.rows()];
      ValueFunction function = model.criteria().get(c).value();
      for (int row = 0; row < values[c].length; row++) {
        values[c][row] = function.value(table.chunkOf(row).low(c)[CandidateTable.rowOf(row)]);
      }
    }
    return Arrays.stream(values)
        .limit(model.criteria().stream().filter(Weighed::counts).count())
        .toArray(double[][]::new);
  }

  /** Equal weights of the first few criteria. */
  ValueModel weighing(int first) {
    Map<String, Double> weights = new TreeMap<>();
    for (int c = 0; c < first; c++) {
      weights.put("a/c" + c, 1.0);
    }
    return model(weights, 0);
  }

  private void figures(long path, float[][] columns, int row) {
    for (int c = 0; c < CRITERIA; c++) {
      long rest = path;
      double sum = 0;
      for (int layer = layers - 1; layer >= 0; layer--) {
        sum += contributions[c][layer][(int) (rest % MATERIALS)];
        rest /= MATERIALS;
      }
      columns[c][row] = (float) (c == SERIES ? 1 / sum : sum);
    }
  }

  /** Random weights, all directions alike. */
  ValueModel moved(SplittableRandom random) {
    return model(weights(random), 0);
  }

  /** The same weights whatever the seed, and another value function of the first criterion. */
  ValueModel edited(double by) {
    return model(weights(new SplittableRandom(1)), by);
  }

  private static Map<String, Double> weights(SplittableRandom random) {
    Map<String, Double> weights = new TreeMap<>();
    for (int c = 0; c < CRITERIA; c++) {
      weights.put("a/c" + c, random.nextExponential());
    }
    return weights;
  }

  private ValueModel model(Map<String, Double> weights, double edit) {
    Map<String, ValueFunction> functions = new TreeMap<>();
    for (int c = 0; c < SERIES; c++) {
      functions.put("a/c" + c, ValueFunction.linear(0, 1, layers, 0));
    }
    functions.put("a/c0", ValueFunction.linear(0, 1, layers * 0.5, 0.5 + 0.3 * edit, layers, 0));
    functions.put("a/c" + SERIES, ValueFunction.logarithmic(1e-5, 1, 1, 0));
    return ValueModel.of(criteria, new Weighting("random", weights), functions, List.of());
  }
}
