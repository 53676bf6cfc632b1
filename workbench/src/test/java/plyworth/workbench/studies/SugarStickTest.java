package plyworth.workbench.studies;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the trade expects of sugar in sticks; common practice. */
class SugarStickTest {

  private static final String PAPER =
      "ink-wb 1.4 g/m2 @flexo-water 45 % / kraft-paper 50 g/m2 / ldpe 20 um @extrusion-coating";
  private static final String FOIL =
      "ink-wb 1.4 g/m2 @flexo-water 45 % / kraft-paper 50 g/m2 / ldpe 12 um"
          + " @extrusion-lamination / aluminium-foil 7 um !bright-out / ldpe 20 um"
          + " @extrusion-coating";

  private static final Desk DESK = Examples.whole(Examples.SUGAR);

  @Test
  void sugarKeepsInPaperAndPolyethyleneForItTakesUpNothingBelowItsDeliquescencePoint() {
    ScoredStructure paper = DESK.score(PAPER);
    assertThat(paper.sheet().onOffer()).isTrue();
    assertThat(paper.keeps()).isTrue();
    assertThat(paper.blocks()).isEmpty();
  }

  @Test
  void foilIsWorthNoMoreThanPaperForSurplusBarrierEarnsNothing() {
    assertThat(DESK.score(FOIL).figure("barrier/wvtr"))
        .isLessThan(DESK.score(PAPER).figure("barrier/wvtr") / 100);
    assertThat(DESK.worth(FOIL, "barrier/margin")).isEqualTo(DESK.worth(PAPER, "barrier/margin"));
  }

  @Test
  void foilOnlyCosts() {
    assertThat(DESK.score(FOIL).figure("cost/packed-per-1000"))
        .isGreaterThan(1.2 * DESK.score(PAPER).figure("cost/packed-per-1000"));
    assertThat(DESK.score(FOIL).figure("recyclability/class"))
        .isLessThan(DESK.score(PAPER).figure("recyclability/class"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"balanced", "cost-led", "protection-led", "sustainability-led"})
  void noWeightingPutsFoilFirstWhereItIsNotNeeded(String weighting) {
    ScoredStructure leader = DESK.leader(weighting);
    assertThat(leader.hasFoil()).as("%s", leader).isFalse();
    assertThat(leader.keeps()).isTrue();
  }
}
