package plyworth.workbench.ranking;

import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Under how many weights each candidate comes first and among the first few. */
final class RankTally {

  /** Values that differ by less come from rounding: these candidates share their ranks. */
  static final double LEVEL = 1e-12;

  private static final int FIRST = 0;
  private static final int AMONG = 1;
  private static final int WEIGHTS = 2;

  private final int k;
  private final Map<Long, double[]> byPath = new HashMap<>();

  RankTally(int k) {
    this.k = k;
  }

  /**
   * Counts one sample in.
   *
   * @param paths path numbers of candidates
   * @param values what they are worth; all candidates are there that reach the last of the first
   *     few, or are level with it
   */
  void count(double[] weights, long[] paths, double[] values) {
    double[] ascending = values.clone();
    Arrays.sort(ascending);
    for (int i = 0; i < values.length; i++) {
      int before = values.length - below(ascending, values[i] + LEVEL);
      int end = values.length - below(ascending, values[i] - LEVEL);
      double among = within(k, before, end);
      if (among > 0) {
        add(paths[i], within(1, before, end), among, weights);
      }
    }
  }

  /** How many are below a value. */
  private static int below(double[] ascending, double value) {
    int at = Arrays.binarySearch(ascending, value);
    return at < 0 ? -1 - at : at;
  }

  /** The share in the ranks up to {@code last} of one of those that take the ranks between. */
  private static double within(int last, int before, int end) {
    return Math.max(0, Math.min(1, (double) (last - before) / (end - before)));
  }

  private void add(long path, double first, double among, double[] weights) {
    double[] sums = byPath.computeIfAbsent(path, p -> new double[WEIGHTS + weights.length]);
    sums[FIRST] += first;
    sums[AMONG] += among;
    for (int c = 0; first > 0 && c < weights.length; c++) {
      sums[WEIGHTS + c] += first * weights[c];
    }
  }

  /** Adds what was counted elsewhere. */
  RankTally plus(RankTally other) {
    other.byPath.forEach(
        (path, more) -> {
          double[] sums = byPath.putIfAbsent(path, more);
          for (int i = 0; sums != null && i < sums.length; i++) {
            sums[i] += more[i];
          }
        });
    return this;
  }

  /**
   * The shares, those most often first before the others.
   *
   * @param samples number of samples that were counted
   * @param counting the criteria that were weighed
   * @param criteria how many criteria there are
   */
  List<RankShare> shares(int samples, int[] counting, int criteria) {
    return byPath.entrySet().stream()
        .map(
            entry -> {
              double[] sums = entry.getValue();
              return new RankShare(
                  entry.getKey(),
                  sums[FIRST] / samples,
                  sums[AMONG] / samples,
                  central(sums, counting, criteria));
            })
        .sorted(
            Comparator.comparingDouble(RankShare::first)
                .thenComparingDouble(RankShare::among)
                .reversed()
                .thenComparingLong(RankShare::path))
        .toList();
  }

  private static List<Double> central(double[] sums, int[] counting, int criteria) {
    if (sums[FIRST] == 0) {
      return List.of();
    }
    double[] central = new double[criteria];
    for (int i = 0; i < counting.length; i++) {
      central[counting[i]] = sums[WEIGHTS + i] / sums[FIRST];
    }
    return Arrays.stream(central).boxed().toList();
  }
}
