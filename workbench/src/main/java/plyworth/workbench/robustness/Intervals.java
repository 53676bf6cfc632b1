package plyworth.workbench.robustness;

import java.util.Arrays;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Intervals of indices by the percentile bootstrap: the points are drawn again with replacement,
 * and the indices estimated anew (Efron 1979; from memory). Points of a low-discrepancy sequence
 * are more even than the independent ones this supposes, so the intervals err on the wide side.
 */
final class Intervals {

  private static final int RESAMPLES = 500;

  /** What lies outside at either end. */
  private static final double TAIL = 0.025;

  private final VarianceShares.Indices estimate;
  private final double[][] first;
  private final double[][] total;

  private Intervals(VarianceShares.Indices estimate, double[][] first, double[][] total) {
    this.estimate = estimate;
    this.first = first;
    this.total = total;
  }

  /** Draws the points again and again; they repeat with the seed. */
  static Intervals of(VarianceShares shares, long seed) {
    int points = shares.a().length;
    int inputs = shares.mixed().length;
    double[][] first = new double[inputs][RESAMPLES];
    double[][] total = new double[inputs][RESAMPLES];
    long[] seeds = new SplittableRandom(seed).longs(RESAMPLES).toArray();
    IntStream.range(0, points == 0 ? 0 : RESAMPLES)
        .parallel()
        .forEach(
            r -> {
              int[] again = new SplittableRandom(seeds[r]).ints(points, 0, points).toArray();
              VarianceShares.Indices indices = shares.of(again);
              for (int i = 0; i < inputs; i++) {
                first[i][r] = indices.first()[i];
                total[i][r] = indices.total()[i];
              }
            });
    return new Intervals(shares.of(shares.points()), first, total);
  }

  /** The influence of an input. */
  Influence influence(UncertainInput input, int place) {
    return new Influence(
        input,
        index(estimate.first()[place], first[place]),
        index(estimate.total()[place], total[place]));
  }

  private static Influence.Index index(double estimate, double[] again) {
    double[] sorted = Arrays.stream(again).filter(x -> !Double.isNaN(x)).sorted().toArray();
    if (Double.isNaN(estimate) || sorted.length == 0) {
      return new Influence.Index(Double.NaN, Double.NaN, Double.NaN);
    }
    int last = sorted.length - 1;
    return new Influence.Index(
        estimate, sorted[(int) (TAIL * last)], sorted[(int) Math.ceil((1 - TAIL) * last)]);
  }
}
