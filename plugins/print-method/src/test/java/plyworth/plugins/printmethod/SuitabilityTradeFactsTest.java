package plyworth.plugins.printmethod;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plyworth.shared.scoring.Finding.Level;

/** Which method suits which surface: common practice, with the standard library. */
class SuitabilityTradeFactsTest {

  private static final String INSIDE =
      " / adhesive-pu-solventless 2 g/m2 @solventless / lldpe 40 um";

  @ParameterizedTest
  @CsvSource({
    "ink-wb 1.2 g/m2 @flexo-water / kraft-paper 60 g/m2, 2",
    "ink-wb 1.2 g/m2 @flexo-water / kraft-paper 40 g/m2, 1",
    "ink-nc 1.2 g/m2 @gravure-solvent / kraft-paper 40 g/m2, 2",
    "ink-uv 1.2 g/m2 @flexo-uv / kraft-paper 60 g/m2, 1",
    "bopp 20 um / ink-nc 1.2 g/m2 @flexo-solvent, 2",
    "bopp 20 um / ink-wb 1.2 g/m2 @flexo-water, 1",
    "bopet 12 um / ink-nc 1.2 g/m2 @gravure-solvent, 2",
    "ink-nc 1.2 g/m2 @gravure-solvent / mdo-pe 25 um, 1",
    "ink-wb 1.2 g/m2 @flexo-water / aluminium-foil 9 um, 0",
    "ink-nc 1.2 g/m2 @flexo-solvent / aluminium-foil 9 um, 1",
    "ink-nc 1 g/m2 @flexo-solvent / wash-primer 1 g/m2 @flexo-solvent / aluminium-foil 9 um, 2",
    "ink-wb 1 g/m2 @flexo-water / wash-primer 1 g/m2 @flexo-water / aluminium-foil 9 um, 1",
    "ink-nc 1 g/m2 @flexo-solvent / wash-primer 1 g/m2 @wash-priming / aluminium-foil 9 um, 2",
    "bopet-alox 12 um !metal-in / ink-nc 1.2 g/m2 @gravure-solvent, 0",
    "bopet-alox 12 um / wash-primer 1 g/m2 @gravure-solvent / ink-nc 1 g/m2 @gravure-solvent, 2",
    "ink-nc 1.2 g/m2 @gravure-solvent / bopet-alox 12 um !metal-in, 2"
  })
  void classOfAMethodOnASurface(String printed, double expected) {
    assertThat(Bound.standard().figure("suitability", printed + INSIDE)).isEqualTo(expected);
  }

  @Test
  void untreatedPolypropyleneIsNotPrinted() {
    Bound untreated = Bound.with(Map.of("treated-webs", 0.0));
    String reverse = "bopp 20 um / ink-nc 1.2 g/m2 @flexo-solvent" + INSIDE;
    assertThat(untreated.figure("suitability", reverse)).isZero();
    assertThat(untreated.finds(Level.BLOCKS, "method-unsuitable", reverse)).isTrue();
  }

  @Test
  void meltOverReversePrintIsNotTakenForThePrintedSurface() {
    String coated = "bopet 12 um / ink-nc 1 g/m2 @gravure-solvent / ldpe 20 um @extrusion-coating";
    assertThat(Bound.standard().figure("suitability", coated)).isEqualTo(2);
  }

  @Test
  void printOnPolyethyleneCoatingOfPaperMeetsPolyethylene() {
    String coated =
        "ink-wb 1 g/m2 @flexo-water / ldpe 20 um @extrusion-coating / kraft-paper 60 g/m2";
    assertThat(Bound.standard().figure("suitability", coated)).isEqualTo(1);
  }

  @Test
  void lacquerFromAnotherPassLiesOverThePrint() {
    String lacquered =
        "heat-resistant-lacquer 2 g/m2 @lacquering / ink-nc 1 g/m2 @gravure-solvent"
            + " / kraft-paper 60 g/m2";
    assertThat(Bound.standard().figure("suitability", lacquered + INSIDE)).isEqualTo(2);
  }

  @Test
  void printTowardsTheProductBlocks() {
    Bound bound = Bound.standard();
    String inwards = "kraft-paper 60 g/m2 / ink-wb 1 g/m2 @flexo-water";
    String sealing = "kraft-paper 60 g/m2 / heat-seal-lacquer 5 g/m2 @gravure-solvent";
    assertThat(bound.finds(Level.BLOCKS, "print-on-product-side", inwards)).isTrue();
    assertThat(bound.finds(Level.BLOCKS, "print-on-product-side", sealing)).isFalse();
  }

  @Test
  void takingTheFoilOutCallsForANewLookAtMigration() {
    Bound bound = Bound.standard();
    String paper =
        "ink-wb 1.2 g/m2 @flexo-water / kraft-paper 60 g/m2 / ldpe 12 um @extrusion-lamination";
    String withFoil = paper + " / aluminium-foil 7 um / ldpe 25 um @extrusion-coating";
    String without = paper + " / bopet-met 12 um / ldpe 25 um @extrusion-coating";
    assertThat(bound.finds(Level.INFORMS, "set-off", withFoil)).isTrue();
    assertThat(bound.finds(Level.WARNS, "through-migration", withFoil)).isFalse();
    assertThat(bound.finds(Level.WARNS, "through-migration", without)).isTrue();
  }

  @Test
  void printInsidePaperIsHidden() {
    String hidden = "kraft-paper 60 g/m2 / ink-wb 1.2 g/m2 @flexo-water" + INSIDE;
    assertThat(Bound.standard().finds(Level.WARNS, "print-hidden", hidden)).isTrue();
  }
}
