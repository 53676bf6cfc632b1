package plyworth.workbench.robustness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.LongFunction;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import plyworth.workbench.engine.table.Progress;

class AcceptabilityTest {

  private static final int DRAWS = 20_000;

  /** Four standard errors of a share of one half. */
  private static final double NOISE = 0.014;

  private static List<Chance> chances(LongFunction<double[][]> worlds, double... weights) {
    Acceptability.Plan plan = new Acceptability.Plan(Doubt.ANY, DRAWS, 0, 7);
    return drawn(worlds, weights, plan, Progress.NONE).chances().stream()
        .sorted((a, b) -> Long.compare(a.path(), b.path()))
        .toList();
  }

  /** Draws from worlds of values, candidate by criterion; null for one that is not ranked. */
  private static Acceptability drawn(
      LongFunction<double[][]> worlds,
      double[] weights,
      Acceptability.Plan plan,
      Progress progress) {
    int candidates = worlds.apply(0).length;
    Field field = new Field(LongStream.range(0, candidates).boxed().toList(), true);
    return Acceptability.of(field, weights, seed -> world(worlds.apply(seed)), plan, progress);
  }

  private static World world(double[][] candidates) {
    int criteria =
        Arrays.stream(candidates).mapToInt(c -> c == null ? 0 : c.length).max().orElse(0);
    double[][] values = new double[criteria][candidates.length];
    boolean[] ranked = new boolean[candidates.length];
    for (int i = 0; i < candidates.length; i++) {
      ranked[i] = candidates[i] != null;
      for (int c = 0; ranked[i] && c < criteria; c++) {
        values[c][i] = candidates[i][c];
      }
    }
    return new World(values, ranked);
  }

  /**
   * Rank acceptabilities, central weights and confidence factors as Lahdelma and Salminen define
   * them (Operations Research 49(3), 2001); the figures are lengths of intervals, by hand.
   */
  @Test
  void anAllRounderComesFirstWithAFifthOfAllWeightsAndSecondWithTheRest() {
    double[][] values = {{1, 0}, {0, 1}, {0.6, 0.6}};
    List<Chance> chances = chances(seed -> values, 0.5, 0.5);
    double[] first = {0.4, 0.4, 0.2};
    double[] central = {0.8, 0.2, 0.5};
    for (int i = 0; i < 3; i++) {
      assertThat(chances.get(i).first()).isCloseTo(first[i], within(NOISE));
      assertThat(chances.get(i).centralWeights().get(0)).isCloseTo(central[i], within(NOISE));
      assertThat(chances.get(i).confidence()).isEqualTo(1);
      assertThat(chances.get(i).amongThree()).isEqualTo(1);
    }
  }

  /** The same definitions; the figures are in closed form and by adaptive quadrature. */
  @Test
  void anUncertainFigureLowersTheConfidenceOfTheCandidateThatNeedsIt() {
    LongFunction<double[][]> worlds =
        seed -> {
          double uniform = 0.5 + 0.4 * new SplittableRandom(~seed).nextDouble();
          return new double[][] {{uniform, 0.3}, {0.5, 0.6}};
        };
    List<Chance> chances = chances(worlds, 0.5, 0.5);
    assertThat(chances.get(0).first()).isCloseTo(0.3645266, within(NOISE));
    assertThat(chances.get(1).first()).isCloseTo(0.6354734, within(NOISE));
    assertThat(chances.get(0).centralWeights().get(0)).isCloseTo(0.78379543, within(NOISE));
    assertThat(chances.get(1).centralWeights().get(0)).isCloseTo(0.33720643, within(NOISE));
    assertThat(chances.get(0).confidence()).isCloseTo(0.79311766, within(NOISE));
    assertThat(chances.get(1).confidence()).isEqualTo(1);
  }

  @Test
  void twinsShareTheirRanks() {
    double[][] values = {{0.5, 0.5}, {0.5, 0.5}, {0.4, 0.4}, {0.4, 0.4}};
    List<Chance> chances = chances(seed -> values, 0.5, 0.5);
    assertThat(chances).extracting(Chance::first).containsExactly(0.5, 0.5, 0.0, 0.0);
    assertThat(chances).extracting(Chance::amongThree).containsExactly(1.0, 1.0, 0.5, 0.5);
    assertThat(chances.get(2).centralWeights()).isEmpty();
    assertThat(chances.get(2).confidence()).isNaN();
  }

  @Test
  void aCandidateThatIsNotRankedInADrawTakesNoRankInIt() {
    LongFunction<double[][]> worlds =
        seed -> new double[][] {seed % 4 == 0 ? null : new double[] {1}, {0.5}};
    List<Chance> chances = chances(worlds, 1);
    double unranked = chances.get(0).unranked();
    assertThat(unranked).isCloseTo(0.25, within(NOISE));
    assertThat(chances.get(0).first()).isCloseTo(1 - unranked, within(1e-9));
    assertThat(chances.get(1).first()).isCloseTo(unranked, within(1e-9));
    assertThat(chances.get(1).unranked()).isZero();
  }

  @Test
  void drawingStopsAtThePrecisionOrAtTheLimitAndSaysWhich() {
    double[][] values = {{1, 0}, {0, 1}};
    double[] weights = {0.5, 0.5};
    Acceptability.Plan loose = new Acceptability.Plan(Doubt.ANY, DRAWS, 0.03, 7);
    Acceptability precise = drawn(seed -> values, weights, loose, Progress.NONE);
    assertThat(precise.precise()).isTrue();
    assertThat(precise.draws()).isLessThan(DRAWS);
    assertThat(precise.chances()).allMatch(chance -> chance.firstError() <= 0.03);
    Acceptability.Plan tight = new Acceptability.Plan(Doubt.ANY, 150, 0.001, 7);
    Acceptability limited = drawn(seed -> values, weights, tight, Progress.NONE);
    assertThat(limited.precise()).isFalse();
    assertThat(limited.draws()).isEqualTo(150);
  }

  /** 1 of 1 + n draws has the standard error 0.005 at about n = 200. */
  @Test
  void alwaysFirstSoFarIsNotTakenForCertain() {
    double[][] values = {{1}, {0}};
    Acceptability.Plan plan = new Acceptability.Plan(Doubt.ANY, DRAWS, 0.005, 7);
    Acceptability found = drawn(seed -> values, new double[] {1}, plan, Progress.NONE);
    assertThat(found.precise()).isTrue();
    assertThat(found.draws()).isEqualTo(200);
  }

  @Test
  void theSameSeedGivesTheSameDraws() {
    double[][] values = {{1, 0}, {0, 1}, {0.6, 0.6}};
    List<Chance> once = chances(seed -> values, 0.2, 0.8);
    assertThat(chances(seed -> values, 0.2, 0.8)).isEqualTo(once);
  }

  @Test
  void whatIsDrawnWhenItIsStoppedCounts() {
    double[][] values = {{1, 0}, {0, 1}};
    AtomicLong drawn = new AtomicLong();
    Progress stopping =
        new Progress() {
          @Override
          public void scored(long draws, long of) {
            drawn.set(Math.max(drawn.get(), draws));
          }

          @Override
          public boolean cancelled() {
            return drawn.get() >= 60;
          }
        };
    Acceptability.Plan plan = new Acceptability.Plan(Doubt.ANY, DRAWS, 0.001, 7);
    Acceptability stopped = drawn(seed -> values, new double[] {0.5, 0.5}, plan, stopping);
    assertThat(stopped.draws()).isBetween(60, 100);
    assertThat(stopped.precise()).isFalse();
    assertThat(stopped.chances().stream().mapToDouble(Chance::first).sum())
        .isCloseTo(1, within(1e-9));
  }

  @Test
  void whatIsStoppedBeforeTheFirstDrawKnowsNothing() {
    Progress stopped =
        new Progress() {
          @Override
          public void scored(long draws, long of) {}

          @Override
          public boolean cancelled() {
            return true;
          }
        };
    Acceptability.Plan plan = new Acceptability.Plan(Doubt.ANY, DRAWS, 0.001, 7);
    double[][] values = {{1}};
    Acceptability found = drawn(seed -> values, new double[] {1}, plan, stopped);
    assertThat(found.draws()).isZero();
    assertThat(found.chances()).isEmpty();
  }
}
