package plyworth.workbench.robustness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plyworth.shared.store.StudyFile;
import plyworth.shared.study.Study;
import plyworth.shared.study.Weighting;
import plyworth.workbench.GivenValues;
import plyworth.workbench.SmallStudy;
import plyworth.workbench.ToyStudy;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.ranking.Weighed;

class LeaderStabilityTest {

  /** What a float keeps of the figures, times the steepness of the toy curves. */
  private static final double NARROWED = 3e-6;

  /**
   * Two specialists and an all-rounder. Where each leads follows by hand from 0.6 = w and 0.6 = 1 −
   * w: the definition of first-rank acceptability, Lahdelma and Salminen, Operations Research
   * 49(3), 2001, gives 0.4, 0.4 and 0.2 of the weights to them.
   */
  private static final double[][] SPECIALISTS = {{1, 0}, {0, 1}, {0.6, 0.6}};

  private static final Path WIPE = Path.of("../studies/isopropanol-wipe.study.json");

  static LongStream seeds() {
    return LongStream.rangeClosed(1, 60);
  }

  private static List<WeightInterval> given(double[][] values, double... weights) {
    ToyStudy study = GivenValues.study(values);
    return LeaderStability.of(
        ToyContest.of(study, ToyContest.model(study, weights)),
        IntStream.range(0, weights.length).toArray());
  }

  @Test
  void anAllRounderLeadsBetweenTheWeightsThatSuitTheSpecialists() {
    WeightInterval first = given(SPECIALISTS, 1, 1).get(0);
    assertThat(first.lower().weight()).isCloseTo(0.4, within(1e-7));
    assertThat(first.lower().overtaker()).hasValue(1);
    assertThat(first.upper().weight()).isCloseTo(0.6, within(1e-7));
    assertThat(first.upper().overtaker()).hasValue(0);
    assertThat(first.tied()).isFalse();
  }

  @Test
  void aLeaderThatIsLevelWithAnotherHasNoRoomTowardsIt() {
    WeightInterval first = given(new double[][] {{1, 0}, {0, 1}}, 1, 1).get(0);
    assertThat(first.tied()).isTrue();
    assertThat(first.lower().weight()).isCloseTo(0.5, within(1e-9));
    assertThat(first.upper().weight()).isEqualTo(1);
    assertThat(first.lower().overtaker()).hasValue(1);
  }

  @Test
  void aTwinNeverOvertakes() {
    for (WeightInterval interval : given(new double[][] {{0.7, 0.3}, {0.7, 0.3}}, 1, 3)) {
      assertThat(interval.lower())
          .isEqualTo(new WeightInterval.End(0, interval.lower().overtaker()));
      assertThat(interval.lower().overtaker()).isEmpty();
      assertThat(interval.upper().weight()).isEqualTo(1);
      assertThat(interval.tied()).isFalse();
    }
  }

  @Test
  void aWeightThatIsAllThereIsCannotFallInProportion() {
    List<WeightInterval> intervals = given(SPECIALISTS, 1, 0);
    assertThat(intervals.get(0).lower().defined()).isFalse();
    assertThat(intervals.get(0).upper().weight()).isEqualTo(1);
    assertThat(intervals.get(1).weight()).isZero();
    assertThat(intervals.get(1).upper().weight()).isCloseTo(0.4, within(1e-7));
    assertThat(intervals.get(1).upper().overtaker()).hasValue(2);
  }

  @Test
  void theUnknownCountsAtItsWorst() {
    WeightInterval second = given(new double[][] {{0.6, 0.6}, {0.9, Double.NaN}}, 1, 3).get(1);
    assertThat(second.lower().overtaker()).hasValue(1);
    assertThat(second.lower().weight()).isCloseTo(1.0 / 3, within(1e-6));
  }

  @Test
  void withoutWeightsThereIsNothingToJudge() {
    assertThat(given(SPECIALISTS, 0, 0)).isEmpty();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void nobodyBeatsTheLeaderWithinAndTheOvertakerBeatsItBeyond(long seed) {
    ToyStudy study = ToyStudy.random(seed);
    Contest contest =
        ToyContest.of(study, ToyContest.model(study, study.weights(seed), study.limits(seed)));
    List<Long> ranked = ToyContest.ranked(contest);
    int[] criteria =
        IntStream.range(0, contest.weights().length)
            .filter(c -> study.plugins().criteria().get(c).applies())
            .toArray();
    for (WeightInterval interval : LeaderStability.of(contest, criteria)) {
      check(contest, ranked, interval, interval.lower(), 0);
      check(contest, ranked, interval, interval.upper(), 1);
    }
  }

  private static void check(
      Contest contest,
      List<Long> ranked,
      WeightInterval interval,
      WeightInterval.End end,
      double extreme) {
    if (!end.defined() || interval.weight() >= 1) {
      return;
    }
    double[] there = moved(contest, interval, end.weight());
    double leader = ToyContest.value(contest, there, ranked.get(0));
    for (long other : ranked) {
      assertThat(ToyContest.value(contest, there, other)).isLessThan(leader + NARROWED);
    }
    if (end.overtaker().isEmpty()) {
      assertThat(end.weight()).isEqualTo(extreme);
      return;
    }
    long overtaker = end.overtaker().getAsLong();
    double[] beyond = moved(contest, interval, (end.weight() + extreme) / 2);
    assertThat(ToyContest.value(contest, there, overtaker)).isCloseTo(leader, within(NARROWED));
    assertThat(ToyContest.value(contest, beyond, overtaker))
        .isGreaterThan(ToyContest.value(contest, beyond, ranked.get(0)));
  }

  private static double[] moved(Contest contest, WeightInterval interval, double share) {
    double[] weights = contest.weights();
    for (int c = 0; c < weights.length; c++) {
      weights[c] *= (1 - share) / (1 - interval.weight());
    }
    weights[interval.criterion()] = share;
    return weights;
  }

  @Test
  void rankingAgainOnEitherSideOfAnEndFindsTheLeaderAndTheOvertaker() {
    Ranked ranked = SmallStudy.ranked(StudyFile.open(WIPE).study());
    long leader = ranked.best().get(0).path();
    int ends = 0;
    for (WeightInterval interval : LeaderStability.of(ranked)) {
      for (WeightInterval.End end : List.of(interval.lower(), interval.upper())) {
        if (end.overtaker().isPresent()) {
          double step = (end.weight() - interval.weight()) * 0.001;
          assertThat(leader(ranked, interval, end.weight() - step)).isEqualTo(leader);
          assertThat(leader(ranked, interval, end.weight() + step))
              .isEqualTo(end.overtaker().getAsLong());
          ends++;
        }
      }
    }
    assertThat(ends).isPositive();
  }

  private static long leader(Ranked ranked, WeightInterval interval, double share) {
    Map<String, Double> weights = new TreeMap<>();
    for (Weighed weighed : ranked.ranking().model().criteria()) {
      weights.put(
          weighed.criterion().id(), weighed.weight() * (1 - share) / (1 - interval.weight()));
    }
    String moved = ranked.ranking().model().criteria().get(interval.criterion()).criterion().id();
    weights.put(moved, share);
    Study study = ranked.study().with(new Weighting(ranked.study().weighting(), weights));
    return ranked.again(study, 1).best().get(0).path();
  }
}
