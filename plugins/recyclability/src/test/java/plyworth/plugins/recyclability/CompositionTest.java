package plyworth.plugins.recyclability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Masses and mass shares, worked out by hand from the grammages. */
class CompositionTest {

  private static final Trial EU = Trial.in("eu");

  static List<Arguments> shares() {
    return List.of(
        row(Laminates.PAPER_FOIL, 105.900, Family.FIBRE, 47.21),
        row(Laminates.PAPER_FOIL, 105.900, Family.PE, 34.94),
        row(Laminates.PAPER_FOIL, 105.900, Family.ALUMINIUM, 17.85),
        row(Laminates.DISPERSION_PAPER, 74.500, Family.COATING, 4.70),
        row(Laminates.PAPER_METALLISED_POLYESTER, 106.508, Family.PET, 15.77),
        row(Laminates.MONO_PE_EVOH, 83.230, Family.EVOH, 4.25),
        row(Laminates.MONO_PE_EVOH, 83.230, Family.PE, 91.54),
        row(Laminates.BOPP_LIGHT_PRINT, 37.798, Family.ADHESIVE, 4.76),
        row(Laminates.BOPP_HEAVY_PRINT, 36.783, Family.INK, 8.16),
        row(Laminates.POLYESTER_FOIL, 96.400, Family.ADHESIVE, 4.15),
        row(Laminates.POLYESTER_PE, 75.500, Family.PET, 22.25),
        row(Laminates.BOPP_PE, 49.200, Family.PP, 36.79),
        row(Laminates.PE_POLYAMIDE, 68.760, Family.PA, 19.72),
        row(Laminates.PAPER_BIOPOLYESTER, 93.500, Family.BIOPOLYMER, 33.69),
        row(Laminates.PE_PAPER_PE, 107.000, Family.FIBRE, 74.77),
        row(Laminates.CARTON, 294.550, Family.ALUMINIUM, 5.96),
        row(Laminates.FOIL_FREE_PAPER, 83.108, Family.PVOH, 2.41),
        row(Laminates.FOIL_FREE_PAPER, 83.108, Family.LACQUER, 1.20),
        row(Laminates.MONO_PE, 72.250, Family.PE, 96.54));
  }

  private static Arguments row(Object... figures) {
    return Arguments.of(figures);
  }

  @ParameterizedTest
  @MethodSource("shares")
  void shareIsTakenOfTheWholeDryLaminate(
      String notation, double total, Family family, double percent) {
    Composition composition = EU.composition(notation);
    assertThat(composition.total()).isEqualTo(total, within(1e-3));
    assertThat(100 * composition.share(family)).isEqualTo(percent, within(0.006));
  }

  @Test
  void sidesArePolymerOutsideAndInsideOfThePaper() {
    assertThat(sides("kraft-paper 50 g/m2")).isZero();
    assertThat(sides(Laminates.DISPERSION_PAPER)).isEqualTo(1);
    assertThat(sides(Laminates.FOIL_FREE_PAPER)).isEqualTo(1);
    assertThat(sides(Laminates.PE_PAPER_PE)).isEqualTo(2);
    assertThat(sides("barrier-paper-wv 75 um")).isEqualTo(1);
    assertThat(sides("ldpe 12 um @extrusion-coating / barrier-paper-wv 75 um")).isEqualTo(2);
  }

  @Test
  void inkVarnishFoilAndAdhesiveArePolymerOnNeitherSide() {
    assertThat(
            sides(
                "overprint-varnish-wb 1 g/m2 @flexo-water / ink-wb 1 g/m2 @flexo-water"
                    + " / kraft-paper 50 g/m2 / adhesive-starch 3 g/m2 @water-based-lamination"
                    + " / aluminium-foil 7 um"))
        .isZero();
  }

  @Test
  void polymerBehindAnInkStillLiesOnThatSide() {
    assertThat(
            sides(
                "ldpe 10 um @extrusion-coating / ink-wb 1 g/m2 @flexo-water"
                    + " / kraft-paper 50 g/m2 / ldpe 10 um @extrusion-coating"))
        .isEqualTo(2);
  }

  private static double sides(String notation) {
    return EU.measured(notation).of(Measure.POLYMER_SIDES);
  }
}
