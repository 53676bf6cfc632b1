package plyworth.workbench.ranking;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.LongFunction;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plyworth.shared.study.Weighting;
import plyworth.workbench.ToyStudy;
import plyworth.workbench.engine.search.SearchSettings;
import plyworth.workbench.engine.table.Progress;
import plyworth.workbench.engine.table.Tabulation;

class BestOfEachTest {

  private static final int KINDS = 7;

  /** Neighbours are alike, as gauges of one structure are. */
  private static final LongFunction<Long> ALIKE = path -> path / 5 % KINDS;

  static LongStream seeds() {
    return LongStream.rangeClosed(1, 60);
  }

  private static ValueModel model(ToyStudy study, long seed) {
    Weighting weighting = new Weighting("w", study.weights(seed));
    return ValueModel.of(study.plugins().criteria(), weighting, Map.of(), study.limits(seed));
  }

  /** Goes through all candidates, best first, and keeps the first of each kind. */
  private static List<Long> firstOfEach(Ranking all, int k) {
    Set<Long> seen = new HashSet<>();
    return paths(all).stream().filter(path -> seen.add(ALIKE.apply(path))).limit(k).toList();
  }

  private static List<Long> paths(Ranking ranking) {
    return ranking.best().stream().map(RankedCandidate::path).toList();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void theBestOfEachKindAreTheFirstOfTheirKindInTheRanking(long seed) {
    ToyStudy study = ToyStudy.random(seed);
    Tabulation tabulation = Tabulation.of(study.graph(), study.plugins());
    Ranker table = new Ranker(tabulation.run(Progress.NONE, 2), study::figures);
    SearchSettings narrow = new SearchSettings(5, 2, 1L << 30);
    SearchRanker search = new SearchRanker(tabulation, study::figures, Progress.NONE, narrow);
    ValueModel model = model(study, seed);
    Ranking all = table.refine(model, Integer.MAX_VALUE);
    for (int k : new int[] {1, 3, KINDS, 100}) {
      List<Long> expected = firstOfEach(all, k);
      assertThat(paths(table.bestOfEach(model, k, ALIKE))).isEqualTo(expected);
      assertThat(paths(search.bestOfEach(model, k, ALIKE))).isEqualTo(expected);
    }
  }
}
