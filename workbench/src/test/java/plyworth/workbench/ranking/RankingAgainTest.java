package plyworth.workbench.ranking;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plyworth.shared.scoring.Join;
import plyworth.shared.scoring.ValueFunction;
import plyworth.shared.study.Limit;
import plyworth.shared.study.Weighting;
import plyworth.workbench.ToyPlugin;
import plyworth.workbench.ToyStudy;
import plyworth.workbench.engine.table.CandidateTable;
import plyworth.workbench.engine.table.Chunk;
import plyworth.workbench.engine.table.TableOfColumns;
import plyworth.workbench.host.BoundCriterion;

/** Tables of several chunks with ties, bounded and unknown figures and blocked candidates. */
class RankingAgainTest {

  private static final int CRITERIA = 4;
  private static final int ROWS = 2 * Chunk.ROWS + 3 * Chunk.ZONE + 5;
  private static final int BEST = 30;

  private static final List<BoundCriterion> OF =
      ToyStudy.bound(
              List.of(
                  new ToyPlugin(
                          "a",
                          List.of(Join.SUM, Join.SUM, Join.SUM, Join.SUM),
                          List.of(),
                          List.of(),
                          true,
                          false)
                      .bound()))
          .criteria();

  /**
   * A random table.
   *
   * @param figures row by criterion, as full scoring finds them
   * @param blocked by row
   */
  private record Made(CandidateTable table, double[][] figures, boolean[] blocked) {

    static Made of(long seed) {
      SplittableRandom random = new SplittableRandom(seed);
      double[][] figures = new double[ROWS][CRITERIA];
      boolean[] blocked = new boolean[ROWS];
      boolean[] bounded = {seed % 2 == 0, false, seed % 3 == 0, false};
      int[] levels = {1 + random.nextInt(400), 9, 1000, 3 + random.nextInt(60)};
      for (int row = 0; row < ROWS; row++) {
        blocked[row] = random.nextInt(10) == 0;
        for (int c = 0; c < CRITERIA; c++) {
          int drift = row / (700 * (c + 1)) % 5;
          figures[row][c] =
              random.nextInt(40) == 0 ? Double.NaN : drift + random.nextInt(levels[c]) / 256.0;
        }
      }
      CandidateTable table =
          TableOfColumns.of(
              OF,
              ROWS,
              (path, low, high, codes) -> {
                for (int row = 0; row < codes.length; row++) {
                  double[] exact = figures[(int) path + row];
                  boolean known = Arrays.stream(exact).noneMatch(Double::isNaN);
                  codes[row] = known ? Chunk.SCORED : Chunk.UNKNOWN;
                  codes[row] = blocked[(int) path + row] ? Chunk.BLOCKED : codes[row];
                }
                for (int c = 0; c < CRITERIA; c++) {
                  high[c] = bounded[c] ? new float[codes.length] : low[c];
                  for (int row = 0; row < codes.length; row++) {
                    float figure = (float) figures[(int) path + row][c];
                    boolean wide = bounded[c] && row % 7 < 3;
                    low[c][row] = wide ? figure - 0.25f : figure;
                    high[c][row] = wide ? figure + 0.125f : figure;
                  }
                }
              });
      return new Made(table, figures, blocked);
    }

    /** The best by scoring every candidate in full and sorting them all. */
    List<Shortlist.Entry> sorted(ValueModel model) {
      List<Shortlist.Entry> all = new ArrayList<>();
      for (int row = 0; row < ROWS; row++) {
        if (model.group(figures[row], blocked[row]) == Group.RANKED) {
          all.add(new Shortlist.Entry(model.value(figures[row]).value(), row));
        }
      }
      all.sort(
          Comparator.comparingDouble(Shortlist.Entry::value)
              .reversed()
              .thenComparingLong(Shortlist.Entry::path));
      return all.subList(0, Math.min(BEST, all.size()));
    }
  }

  private static ValueModel model(SplittableRandom random) {
    Map<String, Double> weights = new TreeMap<>();
    Map<String, ValueFunction> functions = new TreeMap<>();
    for (int c = 0; c < CRITERIA; c++) {
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
    return ValueModel.of(OF, new Weighting("w", weights), functions, limits);
  }

  static LongStream seeds() {
    return LongStream.rangeClosed(1, 12);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void skippingByTwoLevelsOfBoundsFindsWhatSortingEverythingFinds(long seed) {
    Made made = Made.of(seed);
    SplittableRandom random = new SplittableRandom(seed);
    Ranker ranker = new Ranker(made.table(), path -> made.figures()[(int) path]);
    for (int move = 0; move < 5; move++) {
      ValueModel model = model(random);
      List<RankedCandidate> found = ranker.refine(model, BEST).best();
      assertThat(found)
          .extracting(c -> new Shortlist.Entry(c.value(), c.path()))
          .isEqualTo(made.sorted(model));
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void whatTheLastBestAreWorthNowHidesNothing(long seed) {
    Made made = Made.of(seed);
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
    Made made = Made.of(seed);
    ValueModel before = model(new SplittableRandom(seed));
    Map<String, Double> weights = Map.of("a/c0", 1.0, "a/c1", 2.0, "a/c2", 1.0, "a/c3", 1.0);
    Map<String, ValueFunction> functions = new TreeMap<>();
    before.criteria().forEach(w -> functions.put(w.criterion().id(), w.value()));
    functions.put("a/c1", ValueFunction.linear(0, 0.25, 5, 1));
    ValueModel after = ValueModel.of(OF, new Weighting("w", weights), functions, before.limits());
    ValueBounds bounds = ValueBounds.of(made.table(), before);
    ValueBounds edited = bounds.under(after);
    assertThat(edited.of(1)).isNotSameAs(bounds.of(1));
    for (int c : new int[] {0, 2, 3}) {
      assertThat(edited.of(c)).isSameAs(bounds.of(c));
    }
  }
}
