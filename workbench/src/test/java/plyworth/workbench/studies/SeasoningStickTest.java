package plyworth.workbench.studies;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What the trade expects of a seasoning powder in the tropics; common practice. */
class SeasoningStickTest {

  private static final String PRINTED_PAPER =
      "ink-wb 1.4 g/m2 @flexo-water 45 % / kraft-paper 50 g/m2 / ";
  private static final String PAPER_OVER = "adhesive-acrylic-wb 3 g/m2 @water-based-lamination / ";
  private static final String OVER_SEALANT =
      " / adhesive-pu-solventless 1.8 g/m2 @solventless / lldpe 30 um";

  private static final Desk DESK = Examples.whole(Examples.SEASONING);

  private static ScoredStructure paperOver(String barrier) {
    return DESK.score(PRINTED_PAPER + PAPER_OVER + barrier + OVER_SEALANT);
  }

  @ParameterizedTest
  @ValueSource(ints = {12, 15, 20, 25})
  void paperAndPolyethyleneKeepsSeasoningForAboutAWeekInTheTropics(int um) {
    ScoredStructure scored = DESK.score(PRINTED_PAPER + "ldpe " + um + " um @extrusion-coating");
    assertThat(scored.days()).isBetween(3.0, 20.0);
    assertThat(scored.blocks()).contains("barrier/does-not-keep");
  }

  @Test
  void waterVapourDecidesSoMetallisedPolypropyleneBeatsPolyesterThoughOxygenPassesItManyTimes() {
    ScoredStructure polypropylene = paperOver("bopp-met 18 um");
    ScoredStructure polyester = paperOver("bopet-met 12 um");
    assertThat(polypropylene.figure("barrier/otr"))
        .isGreaterThan(20 * polyester.figure("barrier/otr"));
    assertThat(polypropylene.margin()).isGreaterThan(2 * polyester.margin());
    assertThat(polypropylene.keeps()).isTrue();
    assertThat(polyester.keeps()).isFalse();
  }

  @Test
  void foilKeepsSeasoningWithMargin() {
    assertThat(paperOver("aluminium-foil 7 um !bright-out").margin()).isGreaterThan(2);
    assertThat(DESK.baseline().margin()).isGreaterThan(2);
  }

  @Test
  void theFoilCarriesTheBarrierOfTodayAndShutsTheFibreStream() {
    ScoredStructure baseline = DESK.baseline();
    assertThat(baseline.warnings()).contains("recyclability/fibre-stream-blocked");
    ScoredStructure without =
        DESK.score(
            "ink-nc 1.8 g/m2 @gravure-solvent 45 % / kraft-paper 50 g/m2 / ldpe 12 um"
                + " @extrusion-coating / ldpe 25 um @extrusion-coating");
    assertThat(without.keeps()).isFalse();
    assertThat(without.figure("barrier/otr"))
        .isGreaterThan(10_000 * baseline.figure("barrier/otr"));
    assertThat(without.warnings()).doesNotContain("recyclability/fibre-stream-blocked");
  }

  @Test
  void fatWeakensPolyethyleneOnFoilAndAcidCopolymerHolds() {
    String foil =
        PRINTED_PAPER + "ldpe 12 um @extrusion-lamination / aluminium-foil 7 um !bright-out / ";
    assertThat(DESK.score(foil + "ldpe 25 um @extrusion-coating").warnings())
        .contains("machinability/fat-polyethylene-on-foil");
    assertThat(DESK.score(foil + "eaa 25 um @extrusion-coating").warnings())
        .doesNotContain("machinability/fat-polyethylene-on-foil");
  }

  @ParameterizedTest
  @ValueSource(strings = {"balanced", "cost-led", "sustainability-led"})
  void metallisedPolypropyleneLeadsWhereCostOrTheStreamCounts(String weighting) {
    ScoredStructure leader = Examples.thinned(Examples.SEASONING).leader(weighting);
    assertThat(leader.hasFoil()).as("%s", leader).isFalse();
    assertThat(leader.holds("bopp-met")).as("%s", leader).isTrue();
    assertThat(leader.keeps()).isTrue();
  }

  @Test
  void foilLeadsWhereProtectionComesFirst() {
    ScoredStructure leader = Examples.thinned(Examples.SEASONING).leader("protection-led");
    assertThat(leader.hasFoil()).as("%s", leader).isTrue();
  }
}
