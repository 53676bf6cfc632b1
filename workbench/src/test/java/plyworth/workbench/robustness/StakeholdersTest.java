package plyworth.workbench.robustness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plyworth.shared.scoring.Join;
import plyworth.workbench.GivenValues;
import plyworth.workbench.ToyGraph;
import plyworth.workbench.ToyPlugin;
import plyworth.workbench.ToyStudy;
import plyworth.workbench.ranking.ValueModel;

class StakeholdersTest {

  /** What a float keeps of the figures, times the steepness of the toy curves. */
  private static final double NARROWED = 3e-6;

  private static final List<String> NAMES = List.of("one", "two", "three");

  static LongStream seeds() {
    return LongStream.rangeClosed(1, 60);
  }

  private static Stakeholders compared(ToyStudy study, List<ValueModel> models, int depth) {
    Contest contest = ToyContest.of(study, models.get(0));
    return Stakeholders.of(contest, NAMES, List.of(), models, depth);
  }

  /**
   * The greatest losses under the corners of the ordinal weights w1 ≥ w2 ≥ w3, which are weightings
   * like any other: own data, by vertex enumeration and by linear programming; the idea is that of
   * Weber 1987 and of Salo and Hämäläinen 1992, from memory.
   */
  @Test
  void theGreatestLossesUnderOrdinalWeightsAreThoseOfTheWorkedCase() {
    double[][] values = {{0.8, 0.4, 0.3}, {0.6, 0.7, 0.35}, {0.5, 0.6, 0.9}, {0.55, 0.45, 0.3}};
    ToyStudy study = GivenValues.study(values);
    List<ValueModel> corners =
        List.of(
            ToyContest.model(study, 1, 0, 0),
            ToyContest.model(study, 1, 1, 0),
            ToyContest.model(study, 1, 1, 1));
    Stakeholders stakeholders = compared(study, corners, 4);
    double[] expected = {0.16666667, 0.2, 0.3, 0.25};
    assertThat(stakeholders.leastRegret()).hasValue(0);
    assertThat(stakeholders.standings()).hasSize(4);
    for (Stakeholders.Standing standing : stakeholders.standings()) {
      assertThat(standing.greatestLoss()).isCloseTo(expected[(int) standing.path()], within(1e-6));
    }
  }

  @Test
  void aCompromiseIsShownThoughNobodyHasItAmongTheirBest() {
    double[][] values = {{1, 0}, {0, 1}, {0.7, 0.7}};
    ToyStudy study = GivenValues.study(values);
    List<ValueModel> opposed =
        List.of(ToyContest.model(study, 1, 0), ToyContest.model(study, 0, 1));
    Stakeholders stakeholders = compared(study, opposed, 1);
    assertThat(stakeholders.agreed()).isEmpty();
    assertThat(stakeholders.leastRegret()).hasValue(2);
    assertThat(stakeholders.standings()).extracting(Stakeholders.Standing::path).contains(2L);
    assertThat(stakeholders.standings().get(0).ranks().get(0)).hasValue(2);
    assertThat(compared(study, opposed, 2).agreed()).containsExactly(2L);
  }

  private static List<ValueModel> models(ToyStudy study, long seed) {
    return LongStream.of(seed, seed + 1000, seed + 2000)
        .mapToObj(s -> ToyContest.model(study, study.weights(s), study.limits(seed)))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void noCandidateLosesLessThanTheOneOfLeastRegret(long seed) {
    ToyStudy study = ToyStudy.random(seed);
    assertLeast(study, models(study, seed));
  }

  @Test
  void noneOfManyCandidatesLosesLessThanTheOneOfLeastRegret() {
    List<Join> joins = List.of(Join.SUM, Join.SUM, Join.MAX, Join.INNERMOST);
    ToyStudy study =
        ToyStudy.of(
            ToyGraph.full(5, 8),
            List.of(new ToyPlugin("a", joins, List.of(), List.of(), true, false).bound()));
    assertLeast(study, models(study, 5));
  }

  private static void assertLeast(ToyStudy study, List<ValueModel> models) {
    Contest contest = ToyContest.of(study, models.get(0));
    List<Long> ranked = ToyContest.ranked(contest);
    Stakeholders stakeholders = compared(study, models, 3);
    if (ranked.isEmpty()) {
      assertThat(stakeholders.leastRegret()).isEmpty();
      return;
    }
    double[] best =
        models.stream()
            .mapToDouble(
                m -> ranked.stream().mapToDouble(p -> value(study, m, p)).max().orElseThrow())
            .toArray();
    double least =
        ranked.stream().mapToDouble(p -> loss(study, models, best, p)).min().orElseThrow();
    long found = stakeholders.leastRegret().orElseThrow();
    assertThat(ranked).contains(found);
    assertThat(loss(study, models, best, found)).isCloseTo(least, within(NARROWED));
  }

  private static double loss(ToyStudy study, List<ValueModel> models, double[] best, long path) {
    double loss = 0;
    for (int m = 0; m < best.length; m++) {
      loss = Math.max(loss, best[m] - value(study, models.get(m), path));
    }
    return loss;
  }

  private static double value(ToyStudy study, ValueModel model, long path) {
    return model.value(study.figures(path)).value();
  }
}
