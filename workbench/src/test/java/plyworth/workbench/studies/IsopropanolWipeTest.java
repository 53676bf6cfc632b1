package plyworth.workbench.studies;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Structure;
import plyworth.workbench.engine.table.CandidateTable;
import plyworth.workbench.engine.table.Chunk;

/** What the trade expects of a wipe with 70 % isopropanol; common practice. */
class IsopropanolWipeTest {

  private static final String PRINTED_PAPER =
      "ink-nc 1.4 g/m2 @flexo-solvent 45 % / kraft-paper 50 g/m2 / ";
  private static final String FOIL =
      PRINTED_PAPER + "ldpe 12 um @extrusion-lamination / aluminium-foil 7 um !bright-out / ";
  private static final String METALLISED =
      "bopet 12 um / ink-nc 2 g/m2 @flexo-solvent 65 % / adhesive-pu-solventless 1.8 g/m2"
          + " @solventless / bopet-met 12 um / adhesive-pu-solventless 1.8 g/m2 @solventless / ";

  private static final String PERMEATION = "barrier/volatile-loss";
  private static final String ATTACK = "machinability/attack-on-bond";

  private static final Desk DESK = Examples.whole(Examples.WIPE);

  @Test
  void withoutFoilAlcoholLeavesThroughPolyethyleneWithinDays() {
    ScoredStructure scored = DESK.score(PRINTED_PAPER + "ldpe 25 um @extrusion-coating");
    assertThat(scored.days()).isLessThan(7);
    assertThat(scored.figure("barrier/volatile-loss")).isEqualTo(100);
    assertThat(scored.blocks()).contains(PERMEATION);
  }

  @ParameterizedTest
  @ValueSource(strings = {"lldpe 50 um", "cpp 40 um"})
  void metallisedFilmHoldsAlcoholForWeeksNotForYears(String sealant) {
    ScoredStructure scored = DESK.score(METALLISED + sealant);
    assertThat(scored.sheet().onOffer()).isTrue();
    assertThat(scored.days()).isBetween(14.0, 90.0);
    assertThat(scored.blocks()).contains(PERMEATION);
  }

  @Test
  void aSealantThatHoldsAlcoholBackHelpsButDoesNotReplaceFoil() {
    ScoredStructure acrylonitrile = DESK.score(METALLISED + "pan-copolymer 40 um");
    assertThat(acrylonitrile.days()).isGreaterThan(2 * DESK.score(METALLISED + "cpp 40 um").days());
    assertThat(acrylonitrile.blocks()).contains(PERMEATION);
  }

  @Test
  void everyCandidateWithoutFoilIsBlocked() {
    CandidateTable table = DESK.scored().table();
    for (long path = 0; path < table.rows(); path++) {
      Structure structure = DESK.compiled().paths().structure(path);
      if (structure.layers().stream().noneMatch(l -> l.material().equals("aluminium-foil"))) {
        assertThat(table.chunkOf(path).codes()[CandidateTable.rowOf(path)])
            .as("%s", structure)
            .isEqualTo(Chunk.BLOCKED);
      }
    }
  }

  @Test
  void foilHoldsTheAlcoholYetItLiftsPlainPolyethyleneFromTheFoil() {
    ScoredStructure scored = DESK.score(FOIL + "ldpe 25 um @extrusion-coating");
    assertThat(scored.figure("barrier/volatile-loss")).isLessThan(1);
    assertThat(scored.blocks()).containsExactly(ATTACK);
  }

  @ParameterizedTest
  @ValueSource(strings = {"eaa", "ionomer"})
  void acidGroupsHoldTheFoilThoughAlcoholPassesThemAsReadily(String sealant) {
    ScoredStructure scored = DESK.score(FOIL + sealant + " 25 um @extrusion-coating");
    assertThat(scored.blocks()).isEmpty();
    assertThat(scored.figure("machinability/attack")).isEqualTo(2);
    assertThat(DESK.score(PRINTED_PAPER + sealant + " 25 um @extrusion-coating").days())
        .isLessThan(7);
  }

  @Test
  void permeationAndAttackAreTwoFindings() {
    assertThat(DESK.score(PRINTED_PAPER + "ldpe 25 um @extrusion-coating").blocks())
        .contains(PERMEATION)
        .doesNotContain(ATTACK);
    assertThat(DESK.score(FOIL + "ldpe 25 um @extrusion-coating").blocks())
        .contains(ATTACK)
        .doesNotContain(PERMEATION);
  }

  @Test
  void flammableVapourNearHotJawsIsWarnedOf() {
    assertThat(DESK.baseline().warnings()).contains("machinability/flammable-vapour");
  }

  @ParameterizedTest
  @ValueSource(strings = {"balanced", "cost-led", "protection-led", "sustainability-led"})
  void everyLeaderHasFoilAndNoPlainPolyethyleneOnIt(String weighting) {
    ScoredStructure leader = DESK.leader(weighting);
    assertThat(leader.hasFoil()).as("%s", leader).isTrue();
    assertThat(insideFoil(leader).material()).as("%s", leader).isNotIn("ldpe", "lldpe");
  }

  @ParameterizedTest
  @ValueSource(strings = {"balanced", "protection-led", "sustainability-led"})
  void anAcidCopolymerOnTheFoilLeadsUnlessCostAloneCounts(String weighting) {
    assertThat(insideFoil(DESK.leader(weighting)).material()).isIn("eaa", "ionomer");
  }

  private static Layer insideFoil(ScoredStructure scored) {
    List<Layer> layers = scored.sheet().structure().layers();
    int foil = 0;
    while (!layers.get(foil).material().equals("aluminium-foil")) {
      foil++;
    }
    return layers.get(foil + 1);
  }
}
