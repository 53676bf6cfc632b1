package plyworth.workbench.ranking;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plyworth.shared.scoring.Join;
import plyworth.shared.study.Limit;
import plyworth.shared.study.Weighting;
import plyworth.workbench.Oracle;
import plyworth.workbench.ToyGraph;
import plyworth.workbench.ToyPlugin;
import plyworth.workbench.ToyStudy;
import plyworth.workbench.engine.table.CandidateTable;
import plyworth.workbench.engine.table.Progress;
import plyworth.workbench.engine.table.Tabulation;

class RankingTest {

  /** Values agree to what a float keeps of the figures, times the steepness of the toy curves. */
  private static final double NARROWED = 3e-6;

  static LongStream seeds() {
    return LongStream.rangeClosed(1, 40);
  }

  private static CandidateTable table(ToyStudy study) {
    return Tabulation.of(study.graph(), study.plugins()).run(Progress.NONE, 2);
  }

  private static ValueModel model(ToyStudy study, Map<String, Double> weights, List<Limit> limits) {
    return ValueModel.of(study.plugins().criteria(), new Weighting("w", weights), Map.of(), limits);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void theRefinedRankingIsThatOfTheOracle(long seed) {
    ToyStudy study = ToyStudy.random(seed);
    Map<String, Double> weights = study.weights(seed);
    List<Limit> limits = study.limits(seed);
    Ranking ranking =
        new Ranker(table(study), study::figures).refine(model(study, weights, limits), 20);
    List<Oracle.Judged> expected = study.oracle().rank(study.scored(), weights, limits);
    assertThat(ranking.best()).hasSize(Math.min(20, expected.size()));
    for (int i = 0; i < ranking.best().size(); i++) {
      RankedCandidate found = ranking.best().get(i);
      Oracle.Judged own =
          study.oracle().judge(study.scored().get((int) found.path()), weights, limits);
      assertThat(own.standing()).isEqualTo(Oracle.Standing.RANKED);
      assertThat(found.value()).isCloseTo(own.value(), within(NARROWED));
      assertThat(found.valueHigh()).isCloseTo(own.valueHigh(), within(NARROWED));
      assertThat(found.value()).isCloseTo(expected.get(i).value(), within(NARROWED));
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void groupsAreThoseOfTheOracleButForWhatIsStillOpen(long seed) {
    ToyStudy study = ToyStudy.random(seed);
    List<Limit> limits = study.limits(seed);
    GroupCounts counts =
        Ranking.of(table(study), model(study, Map.of(), limits), 0, study::figures).counts();
    Map<Oracle.Standing, Long> expected = new EnumMap<>(Oracle.Standing.class);
    for (Oracle.Scored scored : study.scored()) {
      expected.merge(study.oracle().judge(scored, Map.of(), limits).standing(), 1L, Long::sum);
    }
    assertThat(counts.total()).isEqualTo(study.scored().size());
    assertThat(counts.blocked()).isEqualTo(expected.getOrDefault(Oracle.Standing.BLOCKED, 0L));
    assertThat(expected.getOrDefault(Oracle.Standing.RANKED, 0L))
        .isBetween(counts.ranked(), counts.ranked() + counts.open());
    assertThat(expected.getOrDefault(Oracle.Standing.EXCLUDED, 0L))
        .isBetween(counts.excluded(), counts.excluded() + counts.open());
    assertThat(expected.getOrDefault(Oracle.Standing.CANNOT_BE_JUDGED, 0L))
        .isBetween(0L, counts.cannotBeJudged());
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void rankingAgainAfterAMoveIsRankingAfresh(long seed) {
    ToyStudy study = ToyStudy.random(seed);
    CandidateTable table = table(study);
    Ranker ranker = new Ranker(table, study::figures);
    for (int move = 0; move < 6; move++) {
      ValueModel model = model(study, study.weights(move), study.limits(move / 2));
      Ranking again = ranker.rank(model, 9);
      Ranking afresh = Ranking.of(table, model, 9, study::figures);
      assertThat(again.best()).isEqualTo(afresh.best());
      assertThat(again.counts()).isEqualTo(afresh.counts());
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void ranksCountThroughTheWholeList(long seed) {
    ToyStudy study = ToyStudy.random(seed);
    ValueModel model = model(study, study.weights(seed), study.limits(seed));
    Ranking ranking = Ranking.of(table(study), model, Integer.MAX_VALUE, study::figures);
    assertThat((long) ranking.best().size()).isEqualTo(ranking.counts().ranked());
    for (int i = 0; i < ranking.best().size(); i += 1 + i / 3) {
      assertThat(ranking.rankOf(ranking.best().get(i).path())).hasValue(i + 1);
    }
    if (!ranking.best().isEmpty()) {
      double median = ranking.best().get(ranking.best().size() / 2).value();
      long better = ranking.best().stream().filter(c -> c.value() > median).count();
      assertThat(ranking.worthMoreThan(median)).isEqualTo(better);
    }
  }

  @Test
  void onEqualValuesTheLowerPathNumberComesFirst() {
    ToyStudy study = large();
    ValueModel weightless = model(study, Map.of(), List.of());
    assertThat(weightless.weighted()).isFalse();
    Ranking ranking = Ranking.of(table(study), weightless, 5, study::figures);
    assertThat(ranking.best())
        .extracting(RankedCandidate::path)
        .containsExactly(0L, 1L, 2L, 3L, 4L);
    assertThat(ranking.best()).allMatch(c -> c.value() == 0);
  }

  @Test
  void skippingBlocksFindsTheSameAsReadingEverything() {
    ToyStudy study = large();
    CandidateTable table = table(study);
    Ranker ranker = new Ranker(table, study::figures);
    for (long seed = 0; seed < 8; seed++) {
      ValueModel model = model(study, study.weights(seed), study.limits(seed));
      List<RankedCandidate> all = ranker.rank(model, Integer.MAX_VALUE).best();
      assertThat(ranker.rank(model, 50).best()).isEqualTo(all.subList(0, Math.min(50, all.size())));
    }
  }

  private static ToyStudy large() {
    List<Join> joins = List.of(Join.SUM, Join.SUM, Join.MAX, Join.INNERMOST);
    return ToyStudy.of(
        ToyGraph.full(5, 8),
        List.of(new ToyPlugin("a", joins, List.of(), List.of(), true, false).bound()));
  }

  @Test
  void aLimitIsItselfAllowedThoughNoFloatCanHoldIt() {
    ToyStudy study = large();
    double figure = study.figures(4321)[0];
    assertThat((double) (float) figure).isNotEqualTo(figure);
    Limit limit = new Limit("a/c0", Limit.Bound.AT_MOST, figure, "");
    Limit tighter = new Limit("a/c0", Limit.Bound.AT_MOST, Math.nextDown(figure), "");
    CandidateTable table = table(study);
    long kept = counts(study, table, limit).ranked();
    long keptTighter = counts(study, table, tighter).ranked();
    assertThat(kept - keptTighter)
        .isEqualTo(study.scored().stream().filter(s -> s.figures().get("a/c0") == figure).count());
  }

  private static GroupCounts counts(ToyStudy study, CandidateTable table, Limit limit) {
    return Ranking.of(table, model(study, Map.of(), List.of(limit)), 0, study::figures).counts();
  }

  @Test
  void theBestIsListedWithItsFiguresAndContributions() {
    ToyStudy study = large();
    Map<String, Double> weights = Map.of("a/c0", 3.0, "a/c1", 1.0);
    Ranking ranking = Ranking.of(table(study), model(study, weights, List.of()), 1, study::figures);
    RankedCandidate best = ranking.best().get(0);
    double[] figures = study.figures(best.path());
    List<Double> contributions = new ArrayList<>();
    for (Valuation.Part part : best.valuation().parts()) {
      contributions.add(part.contribution());
    }
    assertThat(best.valuation().parts().get(1).low()).isCloseTo(figures[1], within(1e-5));
    assertThat(contributions.get(0) + contributions.get(1)).isEqualTo(best.value());
    assertThat(contributions.subList(2, 4)).containsOnly(0.0);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void theParetoFrontIsWhatNothingBeats(long seed) {
    ToyStudy study = ToyStudy.random(seed);
    ValueModel model = model(study, study.weights(seed), study.limits(seed));
    Ranker ranker = new Ranker(table(study), study::figures);
    List<RankedCandidate> all = ranker.rank(model, Integer.MAX_VALUE).best();
    List<Long> expected = new ArrayList<>();
    for (RankedCandidate candidate : all) {
      if (all.stream().noneMatch(other -> beats(model, other, candidate))) {
        expected.add(candidate.path());
      }
    }
    ParetoFront front = ranker.paretoFront(model, Integer.MAX_VALUE);
    assertThat(front.complete()).isTrue();
    assertThat(front.paths()).containsExactlyInAnyOrderElementsOf(expected);
  }

  private static boolean beats(ValueModel model, RankedCandidate a, RankedCandidate b) {
    boolean better = false;
    for (int c = 0; c < model.criteria().size(); c++) {
      if (model.criteria().get(c).weight() > 0) {
        double mine = a.valuation().parts().get(c).valueLow();
        double other = b.valuation().parts().get(c).valueLow();
        if (mine < other) {
          return false;
        }
        better |= mine > other;
      }
    }
    return better;
  }

  @Test
  void aParetoFrontBeyondItsCapSaysThatItIsNotWhole() {
    ToyStudy study = large();
    ValueModel weightless = model(study, Map.of(), List.of());
    ParetoFront front = new Ranker(table(study), study::figures).paretoFront(weightless, 100);
    assertThat(front.complete()).isFalse();
    assertThat(front.cap()).isEqualTo(100);
  }
}
