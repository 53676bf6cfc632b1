package plyworth.workbench.analysis;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Comparator;
import org.junit.jupiter.api.Test;
import plyworth.shared.scoring.Finding;
import plyworth.shared.structure.LayerNotation;
import plyworth.shared.structure.Structure;
import plyworth.workbench.BrothStudy;
import plyworth.workbench.engine.Objection;
import plyworth.workbench.engine.table.Progress;
import plyworth.workbench.ranking.Group;

class SheetTest {

  private static final Ranked RANKED =
      Ranked.of(
          Scored.of(
              Compiled.of(Prepared.of(BrothStudy.study(), BrothStudy.plugins()), () -> false),
              Progress.NONE),
          47);

  private static Sheet sheet(String structure) {
    return RANKED.sheet(LayerNotation.readStructure(structure));
  }

  @Test
  void aCandidateHasItsPathAndNoObjection() {
    for (var candidate : RANKED.best()) {
      Structure structure = RANKED.structure(candidate.path());
      Sheet sheet = RANKED.sheet(structure);
      assertThat(sheet.path()).hasValue(candidate.path());
      assertThat(sheet.objections()).isEmpty();
      assertThat(sheet.group()).isEqualTo(Group.RANKED);
      assertThat(sheet.valuation()).isEqualTo(candidate.valuation());
    }
  }

  @Test
  void aStructureThatARuleForbidsHasThatObjection() {
    Sheet sheet = sheet("kraft-paper 40 g/m2 / ldpe 25 um @extrusion-coating");
    assertThat(sheet.onOffer()).isFalse();
    assertThat(sheet.objections()).extracting(Objection::rule).contains("a-print");
    assertThat(sheet.objections().stream().filter(Objection::isRule))
        .allMatch(o -> !o.reason().isBlank() && !o.source().isBlank());
  }

  @Test
  void aStructureOfLayersThatNoPositionOffersHasAnObjection() {
    Sheet sheet =
        sheet(
            "ink-wb 1.4 g/m2 @flexo-water 45 % / kraft-paper 90 g/m2"
                + " / ldpe 25 um @extrusion-coating");
    assertThat(sheet.objections()).isNotEmpty().noneMatch(Objection::isRule);
    assertThat(sheet.objections().get(0).reason()).contains("kraft-paper 90 g/m2");
  }

  @Test
  void theGravestFindingComesFirst() {
    Sheet sheet = sheet("kraft-paper 40 g/m2");
    assertThat(sheet.group()).isEqualTo(Group.BLOCKED);
    assertThat(sheet.remarks().get(0).finding().level()).isEqualTo(Finding.Level.BLOCKS);
    assertThat(sheet.remarks())
        .isSortedAccordingTo(Comparator.comparing(remark -> remark.finding().level()));
  }
}
