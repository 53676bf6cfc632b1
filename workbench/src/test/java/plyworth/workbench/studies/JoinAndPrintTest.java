package plyworth.workbench.studies;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How the structures of the studies are joined and printed; common practice. */
class JoinAndPrintTest {

  private static final String TO_FOIL =
      " / aluminium-foil 7 um !bright-out / ldpe 25 um @extrusion-coating";
  private static final String PAPER = "kraft-paper 50 g/m2 / ";

  private static final Desk SUGAR = Examples.whole(Examples.SUGAR);

  @ParameterizedTest
  @ValueSource(
      strings = {
        "ldpe 12 um @extrusion-lamination",
        "adhesive-acrylic-wb 3 g/m2 @water-based-lamination"
      })
  void paperIsJoinedToFoilByExtrusionOrWaterBasedAdhesive(String bond) {
    ScoredStructure scored =
        SUGAR.score("ink-wb 1.4 g/m2 @flexo-water 45 % / " + PAPER + bond + TO_FOIL);
    assertThat(scored.sheet().onOffer()).isTrue();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "adhesive-pu-solvent 3 g/m2 @dry-bond",
        "adhesive-pu-solventless 1.8 g/m2 @solventless"
      })
  void dryBondAndSolventlessAreRefusedBetweenPaperAndFoil(String bond) {
    ScoredStructure scored =
        SUGAR.score("ink-wb 1.4 g/m2 @flexo-water 45 % / " + PAPER + bond + TO_FOIL);
    assertThat(scored.refusedBy()).contains("paper-outside-foil");
  }

  @Test
  void bareFilmPrintIsRefusedUnderHotJaws() {
    ScoredStructure scored =
        Examples.whole(Examples.SNACK)
            .score(
                "ink-nc 1.4 g/m2 @flexo-solvent 45 % / bopp 25 um / adhesive-pu-solventless 1.8"
                    + " g/m2 @solventless / aluminium-foil 7 um !bright-out /"
                    + " adhesive-pu-solventless 1.8 g/m2 @solventless / lldpe 40 um");
    assertThat(scored.refusedBy()).containsExactly("film-print-under-jaws");
  }

  @Test
  void withoutAbatementWaterBasedFlexoOnPaperEmitsFarLessSolventThanSolventGravure() {
    Desk open = new Desk(SUGAR.study().with("print-method", "abatement", 0));
    String inside = PAPER + "ldpe 20 um @extrusion-coating";
    double water =
        open.score("ink-wb 1.4 g/m2 @flexo-water 45 % / " + inside)
            .figure("print-method/solvent-emitted");
    double gravure =
        open.score("ink-nc 1.8 g/m2 @gravure-solvent 45 % / " + inside)
            .figure("print-method/solvent-emitted");
    assertThat(water).isPositive();
    assertThat(gravure).isGreaterThan(10 * water);
  }
}
