package plyworth.plugins.recyclability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Shares, routes and grades, worked out apart from this code. Thresholds: Regulation (EU) 2025/40,
 * Annex II Table 3 (95, 80, 70 %), read at tube makers’ web page on packaging law, name withheld;
 * the share itself is an engineering assumption.
 */
class ProxyTest {

  private static final Trial EU = Trial.in("eu");

  static List<Arguments> grades() {
    return List.of(
        row(Laminates.PAPER_FOIL, 34.94, Route.SPECIALISED_MILL, 0, 0, "none", "none"),
        row(Laminates.DISPERSION_PAPER, 4.70, Route.CONVENTIONAL_MILL, 93.96, 95.30, "B", "A"),
        row(Laminates.PAPER_METALLISED_POLYESTER, 46.94, Route.NONE, 0, 0, "none", "none"),
        row(Laminates.MONO_PE_EVOH, 0, Route.PE_FILM, 91.54, 100, "B", "A"),
        row(Laminates.BOPP_LIGHT_PRINT, 0.29, Route.PP_FILM, 90.98, 100, "B", "A"),
        row(Laminates.BOPP_HEAVY_PRINT, 0.29, Route.PP_FILM, 86.11, 86.41, "B", "B"),
        row(Laminates.POLYESTER_FOIL, 19.61, Route.NONE, 0, 0, "none", "none"),
        row(Laminates.POLYESTER_PE, 0, Route.NONE, 0, 0, "none", "none"),
        row(Laminates.BOPP_PE, 0, Route.MIXED_POLYOLEFIN, 92.89, 100, "B", "A"),
        row(Laminates.PE_POLYAMIDE, 0, Route.PE_FILM, 0, 0, "none", "none"),
        row(
            Laminates.PAPER_BIOPOLYESTER,
            33.69,
            Route.CONVENTIONAL_MILL,
            64.17,
            64.17,
            "none",
            "none"),
        row(Laminates.PE_PAPER_PE, 25.23, Route.SPECIALISED_MILL, 74.77, 74.77, "C", "C"),
        row(Laminates.CARTON, 22.75, Route.SPECIALISED_MILL, 71.30, 71.30, "C", "C"),
        row(Laminates.FOIL_FREE_PAPER, 14.44, Route.CONVENTIONAL_MILL, 84.23, 85.43, "B", "B"),
        row(Laminates.MONO_PE, 0, Route.PE_FILM, 96.54, 100, "A", "A"));
  }

  private static Arguments row(Object... figures) {
    return Arguments.of(figures);
  }

  @ParameterizedTest
  @MethodSource("grades")
  void gradeFollowsFromTheRecyclableShare(
      String notation,
      double second,
      Route route,
      double strict,
      double tolerant,
      String grade,
      String tolerantGrade) {
    Case scored = EU.measured(notation);
    Region region = Region.named("eu").orElseThrow();
    assertThat(100 * scored.of(Measure.SECOND_MATERIAL)).isEqualTo(second, within(0.006));
    assertThat(Route.of(scored, Proxy.STANDARD)).isEqualTo(route);
    assertThat(100 * scored.of(Measure.RECYCLABLE)).isEqualTo(strict, within(0.006));
    assertThat(100 * scored.of(Measure.RECYCLABLE_TOLERANT)).isEqualTo(tolerant, within(0.006));
    assertThat(region.classVerdict(scored.figures()).words()).isEqualTo(grade);
    assertThat(region.classVerdict(scored.tolerant().figures()).words()).isEqualTo(tolerantGrade);
  }

  static List<Arguments> yields() {
    return List.of(
        row(Laminates.PAPER_FOIL, 0.317, 0.660),
        row(Laminates.DISPERSION_PAPER, 0.886, 0.054),
        row(Laminates.PAPER_METALLISED_POLYESTER, 0.366, 0.610),
        row(Laminates.PAPER_BIOPOLYESTER, 0.556, 0.412),
        row(Laminates.PE_PAPER_PE, 0.647, 0.315),
        row(Laminates.CARTON, 0.577, 0.388),
        row(Laminates.FOIL_FREE_PAPER, 0.777, 0.181));
  }

  @ParameterizedTest
  @MethodSource("yields")
  void yieldRejectLossAndInkAddUpToOne(String notation, double yield, double reject) {
    Case scored = EU.measured(notation);
    double fibre = scored.of(Measure.FIBRE);
    assertThat(scored.of(Measure.FIBRE_YIELD)).isEqualTo(yield, within(6e-4));
    assertThat(scored.of(Measure.REJECT)).isEqualTo(reject, within(6e-4));
    assertThat(yieldAndAllElse(scored)).isEqualTo(1, within(1e-12));
    assertThat(fibre).isPositive();
  }

  private static double yieldAndAllElse(Case scored) {
    return scored.of(Measure.FIBRE_YIELD)
        + scored.of(Measure.REJECT)
        + 0.05 * scored.of(Measure.FIBRE)
        + scored.of(Measure.INK);
  }

  @Test
  void whatDisqualifiesIsNamed() {
    assertThat(EU.score(Laminates.POLYESTER_FOIL).findings())
        .extracting("rule")
        .contains("film-polyolefin", "film-foil", "film-polyester");
    assertThat(EU.score(Laminates.PE_POLYAMIDE).findings())
        .extracting("rule")
        .contains("film-polyamide")
        .doesNotContain("film-polyolefin");
    assertThat(EU.score(Laminates.PAPER_FOIL).findings())
        .extracting("rule")
        .contains("fibre-below-half");
  }

  @Test
  void exactlyFourFifthsPaperIsGradeB() {
    assertThat(EU.figure(Laminates.PAPER_PE, "class")).isEqualTo(2);
    assertThat(EU.figure("kraft-paper 60 g/m2 / ldpe 15.001 g/m2 @extrusion-coating", "class"))
        .isEqualTo(1);
  }

  @Test
  void aLittlePvdcSinksAPolypropyleneFilm() {
    String film = "bopp 40 um / pvdc-coating 1.5 g/m2 @dispersion-coating";
    assertThat(EU.measured(film).of(Measure.CHLORINATED)).isBetween(0.039, 0.041);
    assertThat(EU.figure(film, "target-share")).isGreaterThan(95);
    assertThat(EU.figure(film, "class")).isZero();
  }

  @Test
  void moreThanFivePercentEvohSinksAPolyethyleneFilm() {
    assertThat(EU.figure("ldpe 95 g/m2 / evoh-32 5 g/m2 @coextruded", "class")).isEqualTo(3);
    assertThat(EU.figure("ldpe 94.9 g/m2 / evoh-32 5.1 g/m2 @coextruded", "class")).isZero();
  }

  @Test
  void paperMayLeadWithLessThanHalfOfTheMass() {
    assertThat(EU.measured(Laminates.PAPER_FOIL).of(Measure.PAPER_LEADS)).isEqualTo(1);
    assertThat(EU.measured(Laminates.PAPER_METALLISED_POLYESTER).of(Measure.PLASTIC_LEADS))
        .isEqualTo(1);
  }

  @Test
  void ethyleneCopolymersAreWeighedWithPolyethylene() {
    String film = "ldpe 60 g/m2 / eaa 20 g/m2 @coextruded / ionomer 20 g/m2 @coextruded";
    assertThat(EU.figure(film, "recyclable-share")).isEqualTo(100, within(1e-9));
  }
}
