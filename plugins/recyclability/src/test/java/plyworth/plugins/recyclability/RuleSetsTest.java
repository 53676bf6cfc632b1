package plyworth.plugins.recyclability;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Which rule decides, worked out apart from this code; each expected outcome follows from the limit
 * and the source that stand beside the rule in the data files.
 */
class RuleSetsTest {

  static List<Arguments> fibre() {
    return Stream.concat(paperWithMetal(), paperWithout()).toList();
  }

  /** Paper with foil or a metallised film. */
  private static Stream<Arguments> paperWithMetal() {
    return Stream.of(
        row(
            Laminates.PAPER_FOIL,
            "it-band-d",
            "it-label-residual",
            "fr-paper-below-half",
            "uk-mills-over",
            "uk-label-plastic",
            "uk-fibre-composite",
            "eu-fibre-test-gate"),
        row(
            Laminates.PAPER_METALLISED_POLYESTER,
            "out of scope",
            "it-label-composite",
            "fr-paper-below-half",
            "out of scope",
            "out of scope",
            "uk-fibre-composite",
            "eu-fibre-test-gate"),
        row(
            Laminates.CARTON,
            "it-band-c2",
            "it-label-paper-bin",
            "fr-foil",
            "uk-mills-over",
            "uk-label-plastic",
            "uk-fibre-composite",
            "eu-fibre-test"));
  }

  /** Paper with a dispersion or a polymer alone. */
  private static Stream<Arguments> paperWithout() {
    return Stream.of(
        row(
            Laminates.DISPERSION_PAPER,
            "it-band-mono",
            "it-label-single",
            "fr-repulping",
            "uk-mills-within",
            "uk-label-recycle",
            "uk-paper-and-board",
            "eu-fibre-test"),
        row(
            Laminates.PE_PAPER_PE,
            "it-band-c2",
            "it-label-paper-bin",
            "fr-repulping",
            "uk-mills-over",
            "uk-label-specialist",
            "uk-fibre-composite",
            "eu-fibre-test"),
        row(
            Laminates.PAPER_BIOPOLYESTER,
            "it-band-c2",
            "it-label-paper-bin",
            "fr-repulping",
            "uk-mills-over",
            "uk-label-specialist",
            "uk-fibre-composite",
            "eu-fibre-test"),
        row(
            Laminates.FOIL_FREE_PAPER,
            "it-band-b2",
            "it-label-paper-bin",
            "fr-repulping",
            "uk-mills-over",
            "uk-label-specialist",
            "uk-fibre-composite",
            "eu-fibre-test"));
  }

  static List<Arguments> film() {
    return List.of(
        row(Laminates.PAPER_METALLISED_POLYESTER, "flexible-paper", "out of scope", "share"),
        row(Laminates.MONO_PE_EVOH, "eu-flexible-guideline", "pe-film-evoh-limited", "share"),
        row(Laminates.BOPP_LIGHT_PRINT, "flexible-metallised", "out of scope", "share"),
        row(Laminates.BOPP_HEAVY_PRINT, "flexible-main", "out of scope", "share"),
        row(Laminates.POLYESTER_FOIL, "flexible-foil", "pe-film-foil", "share"),
        row(Laminates.POLYESTER_PE, "flexible-polyester", "pe-film-polyester", "share"),
        row(Laminates.BOPP_PE, "flexible-main", "pe-film-share", "share"),
        row(Laminates.PE_POLYAMIDE, "flexible-main", "pe-film-polyamide", "share"),
        row(Laminates.MONO_PE, "eu-flexible-guideline", "eu-pe-film", "label"));
  }

  private static Arguments row(Object... expected) {
    return Arguments.of(expected);
  }

  @ParameterizedTest
  @MethodSource("fibre")
  void fibreSetsAreDecidedBy(
      String notation,
      String band,
      String label,
      String french,
      String mills,
      String onPack,
      String category,
      String test) {
    assertThat(decidedBy("it", "it-band", notation)).isEqualTo(band);
    assertThat(decidedBy("it", "it-label", notation)).isEqualTo(label);
    assertThat(decidedBy("eu", "fr-repulping", notation)).isEqualTo(french);
    assertThat(decidedBy("uk", "uk-mills", notation)).isEqualTo(mills);
    assertThat(decidedBy("uk", "uk-label-fibre", notation)).isEqualTo(onPack);
    assertThat(decidedBy("uk", "uk-category", notation)).isEqualTo(category);
    assertThat(decidedBy("eu", "eu-fibre-test", notation)).isEqualTo(test);
  }

  @ParameterizedTest
  @MethodSource("film")
  void filmSetsAreDecidedBy(String notation, String guideline, String peFilm, String store) {
    assertThat(decidedBy("eu", "eu-flexible-guideline", notation)).isEqualTo(guideline);
    assertThat(decidedBy("eu", "eu-pe-film", notation)).isEqualTo(peFilm);
    assertThat(decidedBy("uk", "uk-label-film", notation))
        .isEqualTo(store.equals("share") ? "uk-film-share" : "uk-label-film");
  }

  private static String decidedBy(String region, String set, String notation) {
    Verdict verdict = Trial.in(region).verdict(set, notation);
    return verdict.inScope() ? verdict.decidedBy() : verdict.words();
  }

  @Test
  void filmSetsHaveNothingToSayOfPaper() {
    for (String set : List.of("eu-flexible-guideline", "eu-pe-film")) {
      assertThat(decidedBy("eu", set, Laminates.FOIL_FREE_PAPER)).isEqualTo("out of scope");
    }
  }

  @Test
  void aPrintWithoutCoverageLeavesThePeFilmVerdictProvisional() {
    Verdict open = Trial.in("eu").verdict("eu-pe-film", Laminates.MONO_PE);
    assertThat(open.open()).containsExactly("print-coverage");
    Verdict closed =
        Trial.in("eu").verdict("eu-pe-film", "mdo-pe 25 um / ink-nc 1 g/m2 @flexo-solvent 30 %");
    assertThat(closed.open()).isEmpty();
  }

  @Test
  void aCertificateMovesTheItalianBand() {
    Trial certified = Trial.in("it", 2027, 2035, Map.of("laboratory-certificate", 1.0));
    assertThat(certified.verdict("it-band", Laminates.PAPER_PE).decidedBy())
        .isEqualTo("it-band-b1");
    assertThat(decidedBy("it", "it-band", Laminates.PAPER_PE)).isEqualTo("it-band-b2");
  }

  @Test
  void everyRuleOfAClassSetCanBeDecidedLayerwise() {
    for (String id : Region.known()) {
      for (RuleSet set : Region.named(id).orElseThrow().classSets()) {
        for (Rule rule : set.rules()) {
          assertThat(rule.when()).allMatch(c -> c.measure().layerwise());
          assertThat(rule.classNumber()).isBetween(0, 3);
        }
      }
    }
  }
}
