package plyworth.workbench.ranking;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import plyworth.shared.study.Limit;
import plyworth.shared.study.Weighting;
import plyworth.workbench.Oracle;
import plyworth.workbench.ToyStudy;
import plyworth.workbench.engine.table.CandidateTable;
import plyworth.workbench.engine.table.Progress;
import plyworth.workbench.engine.table.Tabulation;

/** What limits do to candidates, against every candidate judged one by one. */
class LimitTallyTest {

  static LongStream seeds() {
    return LongStream.rangeClosed(1, 60);
  }

  private static CandidateTable table(ToyStudy study) {
    return Tabulation.of(study.graph(), study.plugins()).run(Progress.NONE, 2);
  }

  private static ValueModel model(ToyStudy study, List<Limit> limits) {
    return ValueModel.of(
        study.plugins().criteria(), new Weighting("w", Map.of()), Map.of(), limits);
  }

  private static long count(ToyStudy study, List<Limit> limits, Oracle.Standing standing) {
    return study.scored().stream()
        .filter(s -> study.oracle().judge(s, Map.of(), limits).standing() == standing)
        .count();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void aLimitIsToldByTheCandidatesThatDoNotKeepToIt(long seed) {
    ToyStudy study = ToyStudy.random(seed);
    ValueModel model = model(study, study.limits(seed));
    for (LimitTally tally : LimitTally.of(table(study), model, study::figures)) {
      List<Limit> alone = List.of(tally.limit());
      assertThat(count(study, alone, Oracle.Standing.EXCLUDED))
          .isBetween(tally.broken(), tally.broken() + tally.open());
      assertThat(count(study, alone, Oracle.Standing.CANNOT_BE_JUDGED)).isEqualTo(tally.unknown());
    }
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void asManyDropOutAsAreRankedWithoutItAndNotWithIt(long seed) {
    ToyStudy study = ToyStudy.random(seed);
    ValueModel model = model(study, study.limits(seed));
    for (LimitTally tally : LimitTally.of(table(study), model, study::figures)) {
      List<Limit> others = new ArrayList<>(model.limits());
      others.remove(tally.limit());
      long dropped =
          count(study, others, Oracle.Standing.RANKED)
              - count(study, model.limits(), Oracle.Standing.RANKED);
      if (tally.open() == 0 && undecided(study, others) == 0) {
        assertThat(tally.dropped()).isEqualTo(dropped);
      }
    }
  }

  private static long undecided(ToyStudy study, List<Limit> limits) {
    return Ranking.of(table(study), model(study, limits), 0, study::figures).counts().open();
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void theRankedOfARunArePartsOfTheWhole(long seed) {
    ToyStudy study = ToyStudy.random(seed);
    ValueModel model = model(study, study.limits(seed));
    Ranking ranking = Ranking.of(table(study), model, 0, study::figures);
    Random random = new Random(seed);
    long total = ranking.counts().total();
    long sum = 0;
    for (long from = 0; from < total; ) {
      long to = Math.min(total, from + 1 + random.nextInt(300));
      long alone = LongStream.range(from, to).filter(p -> ranking.rankOf(p).isPresent()).count();
      assertThat(ranking.rankedBetween(from, to)).isEqualTo(alone);
      sum += alone;
      from = to;
    }
    assertThat(sum).isEqualTo(ranking.counts().ranked());
    assertThat(ranking.rankedBetween(0, total + 1)).isEqualTo(sum);
  }
}
