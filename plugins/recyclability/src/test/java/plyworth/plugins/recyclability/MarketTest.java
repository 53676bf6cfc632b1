package plyworth.plugins.recyclability;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import plyworth.shared.material.Material;
import plyworth.shared.scoring.Assessment;
import plyworth.shared.scoring.Finding;
import plyworth.shared.scoring.Finding.Level;
import plyworth.shared.scoring.Outcome;
import plyworth.shared.scoring.ScoringContext;

/**
 * What the market adds: dates of Regulation (EU) 2025/40, Article 6 (none barred from 2030, C from
 * 2038; packaging guide on the web, name withheld), UK labels, and regions without rules.
 */
class MarketTest {

  private static final Map<String, Double> ENFORCED = Map.of("enforce-market-access", 1.0);

  @Test
  void gradeCIsBarredFrom2038Alone() {
    assertThat(access(2037, Laminates.PE_PAPER_PE)).isNull();
    assertThat(access(2038, Laminates.PE_PAPER_PE)).isEqualTo(Level.BLOCKS);
    assertThat(access(2038, Laminates.PAPER_PE)).isNull();
  }

  @Test
  void noGradeIsBarredFrom2030() {
    assertThat(access(2029, Laminates.PAPER_FOIL)).isNull();
    assertThat(access(2030, Laminates.PAPER_FOIL)).isEqualTo(Level.BLOCKS);
  }

  @Test
  void withoutEnforcementTheBarOnlyWarns() {
    Assessment scored = Trial.in("eu", 2027, 2035, Map.of()).score(Laminates.PAPER_FOIL);
    assertThat(scored.blocked()).isFalse();
    assertThat(level(scored, "market-access")).isEqualTo(Level.WARNS);
  }

  private static Level access(int end, String notation) {
    return level(Trial.in("eu", 2027, end, ENFORCED).score(notation), "market-access");
  }

  private static Level level(Assessment scored, String rule) {
    return scored.findings().stream()
        .filter(f -> f.rule().equals(rule))
        .map(Finding::level)
        .findFirst()
        .orElse(null);
  }

  @Test
  void foilInPaperShutsTheFibreStreamAndWarns() {
    Assessment today = Trial.in("eu").score(Laminates.PAPER_FOIL);
    assertThat(level(today, "fibre-stream-blocked")).isEqualTo(Level.WARNS);
    assertThat(today.figure("class")).isZero();
    assertThat(level(Trial.in("eu").score(Laminates.FOIL_FREE_PAPER), "fibre-stream-blocked"))
        .isNull();
  }

  @Test
  void withoutFoilTheFoodContactFileIsReopened() {
    assertThat(level(Trial.in("eu").score(Laminates.FOIL_FREE_PAPER), "functional-barrier-gone"))
        .isEqualTo(Level.INFORMS);
    assertThat(level(Trial.in("eu").score(Laminates.PAPER_FOIL), "functional-barrier-gone"))
        .isNull();
  }

  @Test
  void ukLabelsBecomeClasses() {
    Trial uk = Trial.in("uk");
    assertThat(uk.figure(Laminates.DISPERSION_PAPER, "class")).isEqualTo(3);
    assertThat(uk.figure(Laminates.MONO_PE, "class")).isEqualTo(2);
    assertThat(uk.figure(Laminates.FOIL_FREE_PAPER, "class")).isEqualTo(1);
    assertThat(uk.figure(Laminates.PAPER_FOIL, "class")).isZero();
    assertThat(uk.figure("aluminium-foil 30 um / ldpe 10 um @extrusion-coating", "class")).isZero();
  }

  @Test
  void foilCannotDiluteThePlasticBelowTheUkLabelLimit() {
    String paper = "kraft-paper 70 g/m2 / ldpe 8.5 g/m2 @extrusion-coating";
    Trial uk = Trial.in("uk");
    assertThat(uk.measured(paper + " / aluminium-foil 7 um").of(Measure.PLASTIC_LAYERS))
        .isLessThan(0.10);
    assertThat(uk.figure(paper + " / aluminium-foil 7 um", "class")).isZero();
  }

  @Test
  void regionWithoutRulesPassesNothing() {
    Trial elsewhere = Trial.in("us");
    Assessment scored = elsewhere.score(Laminates.MONO_PE);
    assertThat(elsewhere.scorer().notApplicable()).containsOnlyKeys("class", "recyclable-share");
    assertThat(scored.outcomes().get("class")).isInstanceOf(Outcome.NotApplicable.class);
    assertThat(scored.figure("target-share")).isGreaterThan(96);
  }

  @Test
  void undeclaredCompositionIsMissingAndNotZero() {
    Trial eu = Trial.in("eu");
    Trial bare = new Trial(withBareFilm(eu));
    assertThat(bare.score("kraft-paper 50 g/m2 / bare-film 20 um").outcomes().get("class"))
        .isEqualTo(new Outcome.DataMissing("bare-film", "share-fibre"));
  }

  private static ScoringContext withBareFilm(Trial trial) {
    var context = trial.context();
    var metal = context.materials().require("vapour-metal");
    var density = Map.of("density", metal.properties().get("density"));
    var bare =
        new Material(
            "bare-film", "Bare film", "unknown", Set.of("web"), "film", List.of(), density, "");
    return new ScoringContext(
        context.brief(),
        context.materials().with(List.of(bare)),
        context.processes(),
        context.parameters(),
        context.available(),
        context.draw());
  }
}
