package plyworth.workbench.robustness;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import plyworth.workbench.GivenValues;
import plyworth.workbench.ToyStudy;
import plyworth.workbench.ranking.RankedCandidate;
import plyworth.workbench.robustness.SecondOpinion.Method;
import plyworth.workbench.robustness.SecondOpinion.Opinion;

class SecondOpinionTest {

  private static SecondOpinion on(double[][] values, double... weights) {
    ToyStudy study = GivenValues.study(values);
    Contest contest = ToyContest.of(study, ToyContest.model(study, weights));
    List<RankedCandidate> best = contest.best(Integer.MAX_VALUE);
    double sum = IntStream.range(0, weights.length).mapToDouble(c -> weights[c]).sum();
    double[] shares =
        IntStream.range(0, weights.length).mapToDouble(c -> weights[c] / sum).toArray();
    return SecondOpinion.of(best, IntStream.range(0, weights.length).toArray(), shares);
  }

  @Test
  void whatBeatsAllOthersInEverythingLeadsByEveryMethod() {
    double[][] values = {{0.2, 0.3}, {0.9, 0.8}, {0.5, 0.7}, {0.6, 0.1}};
    SecondOpinion second = on(values, 2, 1);
    assertThat(second.opinions()).extracting(Opinion::method).containsExactly(Method.values());
    assertThat(second.opinions()).extracting(Opinion::leader).containsOnly(0);
  }

  @Test
  void threeTiersAreOrderedAlikeByAllMethods() {
    double[][] values = {{0.1, 0.1}, {0.5, 0.5}, {0.9, 0.9}};
    assertThat(on(values, 1, 1).opinions()).extracting(Opinion::correlation).containsOnly(1.0);
  }

  /** Whoever is best by far in the heavier criterion wins by sum; the even one by comparison. */
  @Test
  void aLeaderByTheSumNeedNotLeadByPairs() {
    double[][] values = {{1, 0}, {0.45, 0.5}, {0.4, 0.45}, {0.35, 0.4}};
    SecondOpinion second = on(values, 0.5, 0.5);
    Opinion pairs = second.opinions().get(Method.PROMETHEE_II.ordinal());
    assertThat(second.candidates().get(0).path()).isZero();
    assertThat(pairs.ranks().get(0)).isGreaterThan(1);
    assertThat(pairs.correlation()).isLessThan(1);
  }

  @Test
  void oneCandidateAloneGetsNoSecondOpinion() {
    assertThat(on(new double[][] {{0.5, 0.5}}, 1, 1).opinions()).isEmpty();
  }
}
