package plyworth.workbench.ranking;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.LongStream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plyworth.shared.scoring.Join;
import plyworth.shared.scoring.ValueFunction;
import plyworth.shared.study.Limit;
import plyworth.shared.study.Weighting;
import plyworth.workbench.AdditiveLayers;
import plyworth.workbench.ToyGraph;
import plyworth.workbench.ToyPlugin;
import plyworth.workbench.ToyStudy;
import plyworth.workbench.engine.search.Line;
import plyworth.workbench.engine.search.SearchEffort;
import plyworth.workbench.engine.search.SearchSettings;
import plyworth.workbench.engine.table.Progress;
import plyworth.workbench.engine.table.Tabulation;
import plyworth.workbench.host.BoundCriterion;
import plyworth.workbench.host.BoundPlugin;

/** Searches where criteria are said to add up over the layers. */
class SumSearchTest {

  private static final long AMPLE = 1L << 30;
  private static final int CRITERIA = 4;

  static LongStream seeds() {
    return LongStream.rangeClosed(1, 60);
  }

  private static ToyStudy sums(ToyGraph toy, long seed, double spread) {
    return ToyStudy.of(toy, List.of(AdditiveLayers.near(toy, CRITERIA, seed, spread).bound()));
  }

  /** Sums beside criteria that bend, block and are bounded. */
  private static ToyStudy mixed(long seed) {
    ToyGraph toy = ToyGraph.random(seed);
    BoundPlugin sums = AdditiveLayers.of(toy, CRITERIA, seed).bound();
    List<Join> joins = List.of(Join.SUM, Join.MAX, Join.BENDING);
    ToyPlugin other = new ToyPlugin("other", joins, List.of(), List.of(), true, seed % 2 == 0);
    return ToyStudy.of(toy, List.of(sums, other.unknown(0.02).apart(0.1).bound()));
  }

  private static ValueModel model(
      ToyStudy study, long seed, Map<String, ValueFunction> functions, List<Limit> limits) {
    Weighting weighting = new Weighting("w", study.weights(seed));
    return ValueModel.of(study.plugins().criteria(), weighting, functions, limits);
  }

  /** Functions that bend within the figures that are met, straight and against the logarithm. */
  private static Map<String, ValueFunction> bent(ToyStudy study, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Map<String, ValueFunction> functions = new TreeMap<>();
    for (BoundCriterion criterion : study.plugins().criteria()) {
      double at = 1 + random.nextDouble();
      double between = random.nextDouble();
      functions.put(
          criterion.id(),
          random.nextBoolean()
              ? ValueFunction.linear(0.3, random.nextDouble(), at, between, 2 * at, 0.5)
              : ValueFunction.logarithmic(0.3, random.nextDouble(), at, between, 2 * at, 0.5));
    }
    return functions;
  }

  private static List<Long> paths(Ranking ranking) {
    return ranking.best().stream().map(RankedCandidate::path).toList();
  }

  private static void findsWhatTheTableShows(ToyStudy study, ValueModel model) {
    Tabulation tabulation = Tabulation.of(study.graph(), study.plugins());
    Ranker table = new Ranker(tabulation.run(Progress.NONE, 2), study::figures);
    for (SearchSettings settings :
        List.of(
            new SearchSettings(0, 1, AMPLE),
            new SearchSettings(20, 3, AMPLE),
            new SearchSettings(2, 2, 500),
            new SearchSettings(0, 2, 0))) {
      SearchRanker search = new SearchRanker(tabulation, study::figures, Progress.NONE, settings);
      for (int k : new int[] {1, 20, 5000}) {
        assertThat(paths(search.refine(model, k)))
            .as("%s best with %s", k, settings)
            .isEqualTo(paths(table.refine(model, k)));
        assertThat(paths(search.bestOfEach(model, k, path -> path % 4)))
            .as("%s best of each with %s", k, settings)
            .isEqualTo(paths(table.bestOfEach(model, k, path -> path % 4)));
      }
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void straightSumsAreRankedAsInTheTable(long seed) {
    ToyStudy study = sums(ToyGraph.random(seed), seed, 1);
    findsWhatTheTableShows(study, model(study, seed, Map.of(), List.of()));
    findsWhatTheTableShows(study, model(study, seed, Map.of(), study.limits(seed)));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void nearTiesAreRankedAsInTheTableDownToTheLastPlaceOfAFloat(long seed) {
    for (double spread : new double[] {1e-3, 1e-6, 1e-8, 0}) {
      ToyStudy study = sums(ToyGraph.random(seed), seed, spread);
      findsWhatTheTableShows(study, model(study, seed, Map.of(), List.of()));
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void bentValuesOfSumsAreRankedAsInTheTable(long seed) {
    ToyStudy study = sums(ToyGraph.random(seed), seed, 1);
    findsWhatTheTableShows(study, model(study, seed, bent(study, seed), List.of()));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void sumsBesideOtherCriteriaAreRankedAsInTheTable(long seed) {
    ToyStudy study = mixed(seed);
    findsWhatTheTableShows(study, model(study, seed, Map.of(), study.limits(seed)));
    findsWhatTheTableShows(study, model(study, seed, bent(study, seed), List.of()));
  }

  /** 12^10 candidates; each layer adds to the value by itself, so the best is the best of each. */
  @Test
  void ofBillionsOfSumsFewPrefixesAreOpened() {
    for (double spread : new double[] {1, 1e-3}) {
      ToyGraph toy = ToyGraph.full(10, 12);
      AdditiveLayers layers = AdditiveLayers.near(toy, CRITERIA, 5, spread);
      Tabulation tabulation = Tabulation.of(toy.graph(), ToyStudy.bound(List.of(layers.bound())));
      Map<String, Double> weights =
          Map.of("sums/c0", 3.0, "sums/c1", 1.0, "sums/c2", 2.0, "sums/c3", 1.0);
      ValueModel model =
          ValueModel.of(
              tabulation.plugins().criteria(), new Weighting("w", weights), Map.of(), List.of());
      ExactScores exact = path -> figures(tabulation, layers, path);
      Ranking ranking = new SearchRanker(tabulation, exact, Progress.NONE).refine(model, 100);
      assertThat(ranking.best().get(0).valuation().value())
          .isCloseTo(bestOfEachLayer(toy, layers), Offset.offset(1e-9));
      SearchEffort effort = ranking.search().orElseThrow();
      assertThat(effort.complete()).isTrue();
      assertThat(effort.opened()).isLessThan(2000);
      assertThat(effort.scored()).isLessThan(10_000);
    }
  }

  private static double[] figures(Tabulation tabulation, AdditiveLayers layers, long path) {
    double[] sums = new double[CRITERIA];
    for (int node : tabulation.graph().nodesOf(path)) {
      double[] own = layers.figures(tabulation.graph().layer(node));
      for (int c = 0; c < CRITERIA; c++) {
        sums[c] += own[c];
      }
    }
    return sums;
  }

  private static double bestOfEachLayer(ToyGraph toy, AdditiveLayers layers) {
    return toy.positions().stream()
            .mapToDouble(
                position ->
                    position.stream()
                        .map(layers::figures)
                        .mapToDouble(f -> (3 * f[0] + f[1] + 2 * f[2] + f[3]) / 7)
                        .max()
                        .orElseThrow())
            .sum()
        / toy.positions().size();
  }

  @Test
  void linesLieOverTheCurvesTheyAreMadeFor() {
    Random random = new Random(1);
    for (int i = 0; i < 2000; i++) {
      List<Double> at = new ArrayList<>();
      for (int p = 0; p < 3; p++) {
        at.add(0.1 + 5 * random.nextDouble());
      }
      at.sort(null);
      double[] pairs = {
        at.get(0), random.nextDouble(), at.get(1), random.nextDouble(), at.get(2), 0.4
      };
      ValueCurve curve =
          new ValueCurve(
              random.nextBoolean()
                  ? ValueFunction.linear(pairs)
                  : ValueFunction.logarithmic(pairs));
      double low = 6 * random.nextDouble() - 0.5;
      double high = low + 4 * random.nextDouble();
      Line line = curve.above(low, high);
      for (int step = 0; step <= 100; step++) {
        double figure = low + (high - low) * step / 100;
        double over = line.atZero() + line.slope() * figure - curve.value(figure);
        assertThat(over).isGreaterThan(-1e-14);
        assertThat(!line.exact() || over < 1e-12).isTrue();
      }
    }
  }
}
