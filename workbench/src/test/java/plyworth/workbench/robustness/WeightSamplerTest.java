package plyworth.workbench.robustness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class WeightSamplerTest {

  private static final int DRAWS = 100_000;

  private static final double[] WEIGHTS = {0.4, 0.3, 0, 0.2, 0.1};

  private static List<double[]> draws(Doubt doubt) {
    WeightSampler sampler = new WeightSampler(WEIGHTS, doubt);
    SplittableRandom random = new SplittableRandom(3);
    List<double[]> draws = new ArrayList<>();
    for (int i = 0; i < DRAWS; i++) {
      draws.add(sampler.draw(random));
    }
    return draws;
  }

  private static double mean(List<double[]> draws, int criterion) {
    return draws.stream().mapToDouble(d -> d[criterion]).average().orElseThrow();
  }

  private static double variance(List<double[]> draws, int criterion) {
    double mean = mean(draws, criterion);
    return draws.stream()
        .mapToDouble(d -> (d[criterion] - mean) * (d[criterion] - mean))
        .average()
        .orElseThrow();
  }

  @ParameterizedTest
  @EnumSource(Doubt.class)
  void weightsAddUpToOneAndNoneIsBelowZero(Doubt doubt) {
    assertThat(draws(doubt))
        .allMatch(drawn -> Math.abs(Arrays.stream(drawn).sum() - 1) < 1e-12)
        .allMatch(drawn -> Arrays.stream(drawn).noneMatch(weight -> weight < 0))
        .allMatch(drawn -> drawn[2] == 0);
  }

  @Test
  void exactWeightsAreThoseOfTheWeighting() {
    assertThat(draws(Doubt.EXACT).get(5)).containsExactly(WEIGHTS, within(1e-12));
  }

  /** Mean 1/n and variance (n − 1)/(n² (n + 1)) of the flat Dirichlet distribution, n = 4. */
  @Test
  void anyWeightsAreUniformOnTheSimplex() {
    List<double[]> draws = draws(Doubt.ANY);
    for (int criterion : new int[] {0, 1, 3, 4}) {
      assertThat(mean(draws, criterion)).isCloseTo(0.25, within(0.004));
      assertThat(variance(draws, criterion)).isCloseTo(3.0 / 80, within(0.001));
    }
  }

  /** Mean w and variance w (1 − w)/(1 + concentration) of the Dirichlet distribution. */
  @Test
  void weightsAroundAWeightingHaveItAsTheirMean() {
    List<double[]> draws = draws(Doubt.AROUND);
    for (int criterion = 0; criterion < WEIGHTS.length; criterion++) {
      double w = WEIGHTS[criterion];
      assertThat(mean(draws, criterion)).isCloseTo(w, within(0.002));
      double expected = w * (1 - w) / (1 + WeightSampler.CONCENTRATION);
      assertThat(variance(draws, criterion)).isCloseTo(expected, within(0.0002));
    }
  }

  /** Rank-order-centroid weights for n = 4: Barron and Barrett 1996, from memory. */
  @Test
  void weightsInAnOrderHaveItsCentroidAsTheirMean() {
    List<double[]> draws = draws(Doubt.ORDER);
    double[] centroid = {0.52083333, 0.27083333, 0, 0.14583333, 0.0625};
    for (int criterion = 0; criterion < centroid.length; criterion++) {
      assertThat(mean(draws, criterion)).isCloseTo(centroid[criterion], within(0.003));
    }
    assertThat(draws).allMatch(d -> d[0] >= d[1] && d[1] >= d[3] && d[3] >= d[4]);
  }

  @Test
  void weightsBelowOneInFiftyKeepTheirMeanToo() {
    WeightSampler sampler = new WeightSampler(new double[] {0.99, 0.01}, Doubt.AROUND);
    SplittableRandom random = new SplittableRandom(5);
    double sum = 0;
    for (int i = 0; i < DRAWS; i++) {
      sum += sampler.draw(random)[1];
    }
    assertThat(sum / DRAWS).isCloseTo(0.01, within(0.0005));
  }
}
