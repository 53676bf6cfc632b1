package plyworth.workbench.ranking;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plyworth.shared.scoring.ValueFunction;
import plyworth.shared.study.Limit;
import plyworth.shared.study.Weighting;

class RankingAgainTest {

  private static final int BEST = 30;

  private static ValueModel model(SplittableRandom random) {
    Map<String, Double> weights = new TreeMap<>();
    Map<String, ValueFunction> functions = new TreeMap<>();
    for (int c = 0; c < MadeTable.CRITERIA; c++) {
      weights.put("a/c" + c, (double) Math.max(0, random.nextInt(6) - 2));
      if (random.nextBoolean()) {
        double middle = 1 + 3 * random.nextDouble();
        functions.put(
            "a/c" + c,
            ValueFunction.linear(0, random.nextInt(2), middle, 0.8, 6, random.nextInt(2)));
      } else {
        functions.put("a/c" + c, ValueFunction.linear(0.5, 0, 4.5, 1));
      }
    }
    List<Limit> limits =
        random.nextBoolean()
            ? List.of()
            : List.of(new Limit("a/c" + random.nextInt(3), Limit.Bound.AT_MOST, 2.5, ""));
    return ValueModel.of(MadeTable.OF, new Weighting("w", weights), functions, limits);
  }

  static LongStream seeds() {
    return LongStream.rangeClosed(1, 12);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void skippingByTwoLevelsOfBoundsFindsWhatSortingEverythingFinds(long seed) {
    MadeTable made = MadeTable.of(seed);
    SplittableRandom random = new SplittableRandom(seed);
    Ranker ranker = new Ranker(made.table(), path -> made.figures()[(int) path]);
    for (int move = 0; move < 5; move++) {
      ValueModel model = model(random);
      List<RankedCandidate> found = ranker.refine(model, BEST).best();
      assertThat(found)
          .extracting(c -> new Shortlist.Entry(c.value(), c.path()))
          .isEqualTo(made.sorted(model, BEST));
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void whatTheLastBestAreWorthNowHidesNothing(long seed) {
    MadeTable made = MadeTable.of(seed);
    SplittableRandom random = new SplittableRandom(seed);
    Ranker ranker = new Ranker(made.table(), path -> made.figures()[(int) path]);
    for (int move = 0; move < 8; move++) {
      ValueModel model = model(random);
      int k = 1 + random.nextInt(200);
      assertThat(ranker.rank(model, k).best())
          .isEqualTo(
              new Ranker(made.table(), path -> made.figures()[(int) path]).rank(model, k).best());
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void anEditedValueFunctionLeavesTheValuesOfTheOtherCriteriaAlone(long seed) {
    MadeTable made = MadeTable.of(seed);
    ValueModel before = model(new SplittableRandom(seed));
    Map<String, Double> weights = Map.of("a/c0", 1.0, "a/c1", 2.0, "a/c2", 1.0, "a/c3", 1.0);
    Map<String, ValueFunction> functions = new TreeMap<>();
    before.criteria().forEach(w -> functions.put(w.criterion().id(), w.value()));
    functions.put("a/c1", ValueFunction.linear(0, 0.25, 5, 1));
    ValueModel after =
        ValueModel.of(MadeTable.OF, new Weighting("w", weights), functions, before.limits());
    ValueBounds bounds = ValueBounds.of(made.table(), before);
    ValueBounds edited = bounds.under(after);
    assertThat(edited.of(1)).isNotSameAs(bounds.of(1));
    for (int c : new int[] {0, 2, 3}) {
      assertThat(edited.of(c)).isSameAs(bounds.of(c));
    }
  }
}
