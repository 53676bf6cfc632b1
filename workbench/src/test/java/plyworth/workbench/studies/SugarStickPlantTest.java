package plyworth.workbench.studies;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.OptionalLong;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plyworth.workbench.analysis.NotMakeable;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.engine.table.CandidateTable;
import plyworth.workbench.engine.table.Chunk;
import plyworth.workbench.ranking.Group;

/** What the plant of the sugar study changes; plant and suppliers are invented. */
class SugarStickPlantTest {

  private static final String COATED_PAPER =
      "ink-wb 1.4 g/m2 @flexo-water 45 % / barrier-paper-wv 60 g/m2";

  private static final Desk DESK = Examples.whole(Examples.SUGAR);
  private static final Desk THINNED = Examples.thinned(Examples.SUGAR);

  @ParameterizedTest
  @ValueSource(strings = {"balanced", "cost-led", "protection-led", "sustainability-led"})
  void theLeaderIsMadeInThePlantInTime(String weighting) {
    ScoredStructure leader = DESK.leader(weighting);
    assertThat(leader.blocks()).isEmpty();
    assertThat(leader.figure("supply/lead-time")).isLessThanOrEqualTo(63);
    assertThat(leader.figure("supply/sent-out-per-1000")).isZero();
  }

  @Test
  void theBestPaperOnPaperFailsByItsMinimumOrder() {
    ScoredStructure coated = DESK.score(COATED_PAPER);
    assertThat(coated.blocks()).isEmpty();
    assertThat(coated.warnings()).contains("supply/minimum-order");
    assertThat(coated.sheet().group()).isEqualTo(Group.EXCLUDED);
    assertThat(coated.sheet().valuation().value())
        .isGreaterThan(DESK.leader("balanced").sheet().valuation().value());
  }

  @Test
  void todaysPrintIsSentOutYetMakeable() {
    assertThat(DESK.baseline().blocks()).isEmpty();
    assertThat(DESK.baseline().figure("supply/sent-out-per-1000")).isPositive();
  }

  @Test
  void whatCannotBeMadeIsCountedAsItIsJudgedOneByOne() {
    Ranked ranked = THINNED.ranked("balanced");
    CandidateTable table = THINNED.scored().table();
    long expected = 0;
    for (long path = 0; path < table.rows(); path++) {
      ScoredStructure scored = THINNED.score(ranked.structure(path).toString());
      boolean notMakeable = scored.blocks().stream().anyMatch(b -> b.startsWith("supply/"));
      expected += notMakeable ? 1 : 0;
      if (notMakeable) {
        byte code = table.chunkOf(path).codes()[CandidateTable.rowOf(path)];
        assertThat(code).as("%s", scored).isEqualTo(Chunk.BLOCKED);
      }
    }
    assertThat(NotMakeable.count(ranked)).isEqualTo(OptionalLong.of(expected));
    assertThat(expected).isPositive().isLessThan(table.rows());
  }

  @Test
  void aStudyWithoutAPlantCountsNothingOfTheKind() {
    Desk snack = Examples.thinned(Examples.SNACK);
    assertThat(NotMakeable.count(snack.ranked("balanced"))).isEmpty();
    assertThat(snack.baseline().figure("supply/lead-time")).isNaN();
  }
}
