package plyworth.plugins.printmethod;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a printer knows of solvent, with the figures of the standard library. */
class SolventTradeFactsTest {

  private static final String WATER = "ink-wb 1.2 g/m2 @flexo-water / kraft-paper 60 g/m2";
  private static final String GRAVURE = "ink-nc 1.5 g/m2 @gravure-solvent / kraft-paper 60 g/m2";
  private static final String INSIDE = " / ldpe 20 um @extrusion-coating";

  private static Bound controlled(double capture, double destruction) {
    return Bound.with(Map.of("abatement", 2.0, "capture", capture, "destruction", destruction));
  }

  @Test
  void unabatedGravureEmitsThirtyTimesWhatWaterBasedFlexoDoes() {
    Bound unabated = Bound.with(Map.of("abatement", 0.0));
    double gravure = unabated.figure("solvent-emitted", GRAVURE + INSIDE);
    double water = unabated.figure("solvent-emitted", WATER + INSIDE);
    assertThat(gravure).isCloseTo(5.31818, within(1e-4));
    assertThat(water).isCloseTo(0.157895, within(1e-5));
    assertThat(gravure / water).isGreaterThan(30);
  }

  /** Mass balance: they tie at a capture of 0.980112 with 0.99 destroyed. */
  @Test
  void wellEnclosedGravureOvertakesWaterBasedFlexo() {
    assertThat(controlled(0.98, 0.99).figure("solvent-emitted", GRAVURE))
        .isCloseTo(0.158482, within(1e-5))
        .isGreaterThan(controlled(0.98, 0.99).figure("solvent-emitted", WATER));
    assertThat(controlled(0.985, 0.99).figure("solvent-emitted", GRAVURE))
        .isCloseTo(0.132157, within(1e-5))
        .isLessThan(controlled(0.985, 0.99).figure("solvent-emitted", WATER));
  }

  @Test
  void waterBasedInkIsNeverLedToTheOxidiser() {
    assertThat(controlled(1, 1).figure("solvent-emitted", WATER))
        .isEqualTo(controlled(0, 0).figure("solvent-emitted", WATER));
  }

  @ParameterizedTest
  @ValueSource(strings = {WATER, GRAVURE, "bopet 12 um / ink-nc 2 g/m2 @flexo-solvent"})
  void emissionNeverRisesWithCapture(String structure) {
    double last = Double.POSITIVE_INFINITY;
    for (double capture = 0; capture <= 1; capture += 0.05) {
      double emitted = controlled(capture, 0.98).figure("solvent-emitted", structure);
      assertThat(emitted).isLessThanOrEqualTo(last).isNotNegative();
      last = emitted;
    }
  }

  @Test
  void unprintedWithoutSolventIsARealZero() {
    Bound bound = Bound.standard();
    String plain = "kraft-paper 60 g/m2 / ldpe 20 um @extrusion-coating";
    assertThat(bound.figure("solvent-emitted", plain)).isZero();
    assertThat(bound.figure("drying-heat", plain)).isZero();
    assertThat(bound.figure("suitability", plain)).isEqualTo(2);
  }

  @Test
  void solventOfDryBondAdhesiveCountsAmongTheEmissionButNotTheDryingOfPrint() {
    Bound bound = Bound.standard();
    String bonded = "bopp 20 um / adhesive-pu-solvent 3 g/m2 @dry-bond / lldpe 40 um";
    assertThat(bound.figure("solvent-input", bonded)).isCloseTo(3 / 0.35 * 0.65, within(1e-9));
    assertThat(bound.figure("solvent-emitted", bonded)).isPositive();
    assertThat(bound.figure("drying-heat", bonded)).isZero();
    assertThat(bound.figure("ink-dry", bonded)).isZero();
  }

  /** US EPA, Flexographic Ink Options: water-based used least energy, against first intuition. */
  @Test
  void waterBasedFlexoDriesWithLessHeatThanSolventGravure() {
    Bound bound = Bound.standard();
    assertThat(bound.figure("drying-heat", WATER))
        .isLessThan(bound.figure("drying-heat", GRAVURE) / 3);
  }
}
