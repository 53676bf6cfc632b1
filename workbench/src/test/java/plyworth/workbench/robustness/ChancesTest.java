package plyworth.workbench.robustness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.ForkJoinPool;
import java.util.function.LongFunction;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import plyworth.workbench.SmallStudy;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.engine.table.Progress;

/** What holds of all chances, whatever the values. */
class ChancesTest {

  private static final int DRAWS = 400;
  private static final int CANDIDATES = 30;
  private static final double[] WEIGHTS = {0.5, 0.3, 0.2, 0};

  private static Acceptability.Plan plan(Doubt doubt) {
    return new Acceptability.Plan(doubt, DRAWS, 0, 11);
  }

  /** Values around those of a candidate; one in twelve is not ranked. */
  private static World made(long seed, int candidates) {
    double[][] values = new double[WEIGHTS.length][candidates];
    boolean[] ranked = new boolean[candidates];
    for (int i = 0; i < candidates; i++) {
      SplittableRandom own = new SplittableRandom(i);
      SplittableRandom noise = new SplittableRandom(31 * seed + i);
      for (double[] column : values) {
        column[i] = 0.8 * own.nextDouble() + 0.2 * noise.nextDouble();
      }
      ranked[i] = noise.nextInt(12) > 0;
    }
    return new World(values, ranked);
  }

  private static Acceptability drawn(LongFunction<World> worlds, int many, Doubt doubt) {
    Field field = new Field(LongStream.range(0, many).boxed().toList(), true);
    return Acceptability.of(field, WEIGHTS, worlds, plan(doubt), Progress.NONE);
  }

  private static List<Chance> byPath(Acceptability acceptability) {
    return acceptability.chances().stream()
        .sorted((a, b) -> Long.compare(a.path(), b.path()))
        .toList();
  }

  @ParameterizedTest
  @EnumSource(Doubt.class)
  void sharesOfTheFirstRanksAddUpToThem(Doubt doubt) {
    List<Chance> chances = drawn(seed -> made(seed, CANDIDATES), CANDIDATES, doubt).chances();
    assertThat(chances.stream().mapToDouble(Chance::first).sum()).isCloseTo(1, within(1e-9));
    assertThat(chances.stream().mapToDouble(Chance::amongThree).sum()).isCloseTo(3, within(1e-9));
    assertThat(chances.stream().mapToDouble(Chance::amongTen).sum()).isCloseTo(10, within(1e-9));
    assertThat(chances)
        .allMatch(c -> c.first() <= c.amongThree() && c.amongThree() <= c.amongTen() + 1e-12);
  }

  /** The confidence is counted over few candidates a draw; here over all of them. */
  @ParameterizedTest
  @EnumSource(Doubt.class)
  void theConfidenceIsHowOftenItComesFirstAmongAllUnderItsCentralWeights(Doubt doubt) {
    LongFunction<World> worlds = seed -> made(seed, CANDIDATES);
    SplittableRandom random = new SplittableRandom(11);
    long[] seeds = LongStream.generate(random::nextLong).limit(DRAWS).toArray();
    for (Chance chance : drawn(worlds, CANDIDATES, doubt).chances()) {
      double[] central = chance.centralWeights().stream().mapToDouble(w -> w).toArray();
      if (central.length > 0) {
        double first =
            LongStream.of(seeds)
                .mapToDouble(seed -> first(worlds.apply(seed).sums(central), (int) chance.path()))
                .average()
                .orElseThrow();
        assertThat(chance.confidence()).isCloseTo(first, within(1e-9));
      }
    }
  }

  private static double first(double[] sums, int candidate) {
    double highest = Arrays.stream(sums).max().orElseThrow();
    return sums[candidate] == highest ? 1 : 0;
  }

  @ParameterizedTest
  @EnumSource(Doubt.class)
  void aDominatedCandidateMoreChangesNothing(Doubt doubt) {
    List<Chance> before = byPath(drawn(seed -> made(seed, CANDIDATES), CANDIDATES, doubt));
    LongFunction<World> withOneMore =
        seed -> {
          World world = made(seed, CANDIDATES + 1);
          for (double[] column : world.values()) {
            column[CANDIDATES] = Arrays.stream(column).min().orElseThrow() / 2;
          }
          return world;
        };
    List<Chance> after = byPath(drawn(withOneMore, CANDIDATES + 1, doubt));
    assertThat(after.subList(0, CANDIDATES)).isEqualTo(before);
    assertThat(after.get(CANDIDATES).amongTen()).isZero();
  }

  @Test
  void theSameSeedSaysTheSameHoweverManyThreadsThereAre() throws Exception {
    Ranked ranked = SmallStudy.ranked(SmallStudy.few());
    Acceptability.Plan plan = new Acceptability.Plan(Doubt.AROUND, 200, 0, 3);
    ForkJoinPool one = new ForkJoinPool(1);
    ForkJoinPool five = new ForkJoinPool(5);
    try {
      Acceptability alone = one.submit(() -> Acceptability.of(ranked, List.of(), plan)).get();
      assertThat(five.submit(() -> Acceptability.of(ranked, List.of(), plan)).get())
          .isEqualTo(alone);
    } finally {
      one.shutdown();
      five.shutdown();
    }
  }

  @Test
  void everyCandidateThatIsRankedIsComparedWhereTheyAreFew() {
    Ranked ranked = SmallStudy.ranked(SmallStudy.few());
    Acceptability.Plan plan = new Acceptability.Plan(Doubt.AROUND, 20, 0, 3);
    Acceptability drawn = Acceptability.of(ranked, List.of(), plan);
    assertThat(drawn.reach().whole()).isTrue();
    assertThat((long) drawn.reach().compared()).isEqualTo(ranked.ranking().counts().ranked());
    assertThat(drawn.chances()).hasSize(drawn.reach().compared());
  }
}
