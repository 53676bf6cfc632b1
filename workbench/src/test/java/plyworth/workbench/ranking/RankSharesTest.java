package plyworth.workbench.ranking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plyworth.shared.scoring.ValueFunction;
import plyworth.shared.study.Limit;
import plyworth.shared.study.Weighting;
import plyworth.workbench.engine.table.CandidateTable;
import plyworth.workbench.engine.table.Progress;

/** Against ranking every candidate under every sample of weights. */
class RankSharesTest {

  private static final int K = 10;
  private static final int SAMPLES = 120;
  private static final double LEVEL = 1e-12;

  private static ValueModel model(double[] weights, Map<String, ValueFunction> functions) {
    Map<String, Double> named = new TreeMap<>();
    for (int c = 0; c < weights.length; c++) {
      named.put("a/c" + c, weights[c]);
    }
    List<Limit> limits = List.of(new Limit("a/c1", Limit.Bound.AT_MOST, 3.5, ""));
    return ValueModel.of(MadeTable.OF, new Weighting("w", named), functions, limits);
  }

  private static Map<String, ValueFunction> functions(SplittableRandom random) {
    Map<String, ValueFunction> functions = new TreeMap<>();
    for (int c = 0; c < MadeTable.CRITERIA; c++) {
      functions.put(
          "a/c" + c,
          random.nextBoolean()
              ? ValueFunction.linear(0, random.nextInt(2), 3, 0.8, 6, random.nextInt(2))
              : ValueFunction.linear(0.5, 0, 4.5, 1));
    }
    return functions;
  }

  /** Anywhere, or all near each other. */
  private static double[] weights(SplittableRandom random, double[] near) {
    double[] weights =
        DoubleStream.of(near)
            .map(w -> w == 0 ? 0 : w == 1 ? random.nextExponential() : w + random.nextDouble())
            .toArray();
    double sum = DoubleStream.of(weights).sum();
    return DoubleStream.of(weights).map(w -> w / sum).toArray();
  }

  private static double[][] samples(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    double[][] near = {{1, 1, 1, 1}, {1, 0, 1, 1}, {9, 4, 2, 15}, {0, 0, 1, 0}, {0, 3, 9, 0}};
    double[] around = near[(int) (seed % near.length)];
    return IntStream.range(0, SAMPLES)
        .mapToObj(i -> weights(random, around))
        .toArray(double[][]::new);
  }

  /** Shares of first and of first ten places, by the definition of level ranks. */
  private static Map<Long, double[]> byRankingAll(
      MadeTable made, double[][] samples, ValueModel model) {
    ValueBounds bounds = ValueBounds.of(made.table(), model);
    Groups groups = Groups.of(made.table(), model, path -> made.figures()[(int) path]);
    long[] paths = LongStream.range(0, made.table().rows()).filter(groups::isRanked).toArray();
    double[][] values =
        LongStream.of(paths).mapToObj(path -> values(made, bounds, path)).toArray(double[][]::new);
    Map<Long, double[]> shares = new HashMap<>();
    for (double[] weights : samples) {
      double[] sums = Arrays.stream(values).mapToDouble(v -> sum(weights, v)).toArray();
      double[] sorted = Arrays.stream(sums).sorted().toArray();
      for (int i = 0; i < sums.length; i++) {
        if (sums[i] >= sorted[sorted.length - K] - LEVEL) {
          int before = sums.length - upTo(sorted, sums[i] + LEVEL);
          int level = sums.length - before - upTo(sorted, sums[i] - LEVEL);
          double[] places = shares.computeIfAbsent(paths[i], p -> new double[2]);
          places[0] += share(1, before, level) / samples.length;
          places[1] += share(K, before, level) / samples.length;
        }
      }
    }
    return shares;
  }

  private static double[] values(MadeTable made, ValueBounds bounds, long path) {
    return IntStream.range(0, MadeTable.CRITERIA)
        .mapToDouble(
            c -> bounds.of(c).worst(made.table().chunkOf(path), CandidateTable.rowOf(path)))
        .toArray();
  }

  private static double sum(double[] weights, double[] values) {
    double sum = 0;
    for (int c = 0; c < weights.length; c++) {
      sum += weights[c] * values[c];
    }
    return sum;
  }

  private static int upTo(double[] sorted, double value) {
    int at = Arrays.binarySearch(sorted, value);
    return at < 0 ? -1 - at : at;
  }

  private static double share(int last, long before, long level) {
    return Math.max(0, Math.min(1, (double) (last - before) / level));
  }

  static LongStream seeds() {
    return LongStream.rangeClosed(1, 15);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void cellsOfWeightsCountWhatRankingEverythingCounts(long seed) {
    MadeTable made = MadeTable.of(seed);
    Ranker ranker = new Ranker(made.table(), path -> made.figures()[(int) path]);
    double[][] samples = samples(seed);
    ValueModel model = model(samples[0], functions(new SplittableRandom(seed)));
    List<RankShare> found = ranker.rankShares(model, samples, K, Progress.NONE);
    Map<Long, double[]> expected = byRankingAll(made, samples, model);
    assertThat(found).extracting(RankShare::path).hasSameElementsAs(expected.keySet());
    for (RankShare share : found) {
      double[] sums = expected.get(share.path());
      assertThat(share.first()).isCloseTo(sums[0], within(1e-9));
      assertThat(share.among()).isCloseTo(sums[1], within(1e-9));
    }
    assertThat(found).isSortedAccordingTo(Comparator.comparingDouble(RankShare::first).reversed());
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void theWeightsThatPutOneFirstAverageToAllWeights(long seed) {
    MadeTable made = MadeTable.of(seed);
    Ranker ranker = new Ranker(made.table(), path -> made.figures()[(int) path]);
    double[][] samples = samples(seed);
    ValueModel model = model(samples[0], functions(new SplittableRandom(seed)));
    List<RankShare> found = ranker.rankShares(model, samples, K, Progress.NONE);
    for (int c = 0; c < MadeTable.CRITERIA; c++) {
      int criterion = c;
      double central =
          found.stream()
              .filter(share -> share.first() > 0)
              .mapToDouble(share -> share.first() * share.centralWeights().get(criterion))
              .sum();
      double mean = IntStream.range(0, SAMPLES).mapToDouble(i -> samples[i][criterion]).sum();
      assertThat(central).isCloseTo(mean / SAMPLES, within(1e-9));
    }
  }

  @Test
  void theSameSamplesCountTheSame() {
    MadeTable made = MadeTable.of(4);
    double[][] samples = samples(5);
    ValueModel model = model(samples[0], functions(new SplittableRandom(4)));
    List<RankShare> once =
        new Ranker(made.table(), null).rankShares(model, samples, K, Progress.NONE);
    Ranker again = new Ranker(made.table(), null);
    again.rank(model, 3);
    assertThat(again.rankShares(model, samples, K, Progress.NONE)).isEqualTo(once);
  }

  @Test
  void whatIsCancelledSaysNothing() {
    MadeTable made = MadeTable.of(4);
    double[][] samples = samples(5);
    ValueModel model = model(samples[0], functions(new SplittableRandom(4)));
    Progress cancelled =
        new Progress() {
          @Override
          public void scored(long candidates, long of) {}

          @Override
          public boolean cancelled() {
            return true;
          }
        };
    Ranker ranker = new Ranker(made.table(), null);
    assertThatThrownBy(() -> ranker.rankShares(model, samples, K, cancelled))
        .isInstanceOf(CancellationException.class);
  }
}
