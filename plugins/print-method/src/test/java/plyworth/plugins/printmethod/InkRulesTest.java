package plyworth.plugins.printmethod;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InkRulesTest {

  /** GB 38507-2020, table of limits as read in a published summary. */
  @ParameterizedTest
  @CsvSource({
    "WATER, flexo, true, 4.8, true",
    "WATER, flexo, true, 6, false",
    "WATER, flexo, false, 6, true",
    "WATER, gravure, true, 18, false",
    "WATER, gravure, false, 18, true",
    "SOLVENT, gravure, false, 74, true",
    "SOLVENT, gravure, false, 78, false",
    "CURED, flexo, false, 6, false",
    "CURED, gravure, false, 6, true"
  })
  void chineseLimitDependsOnKindMethodAndStock(
      InkKind kind, String method, boolean absorbent, double percent, boolean passes) {
    assertThat(percent <= InkLimits.limit(kind, method, absorbent)).isEqualTo(passes);
  }

  /** US EPA control techniques guideline for flexible package printing, 2006, from memory. */
  @Test
  void solventInksNeedControlUnderTheAmericanGuideline() {
    MakeUp flexo = new MakeUp(0.3, 0, 0.7);
    MakeUp gravure = new MakeUp(0.22, 0, 0.78);
    assertThat(flexo.solventPerSolids()).isCloseTo(2.3333, within(1e-4));
    assertThat(SolventGuideline.controlNeeded(flexo)).isCloseTo(0.657143, within(1e-6));
    assertThat(SolventGuideline.controlNeeded(gravure)).isCloseTo(0.774359, within(1e-6));
  }

  @Test
  void waterBasedInksPassTheAmericanGuideline() {
    assertThat(SolventGuideline.passes(new MakeUp(0.38, 0.57, 0.05))).isTrue();
    assertThat(SolventGuideline.passes(new MakeUp(0.3, 0.62, 0.08))).isTrue();
  }

  @Test
  void eitherLimitOfTheGuidelineSuffices() {
    MakeUp dilute = new MakeUp(0.19, 0.655, 0.155);
    assertThat(dilute.solventPerSolids()).isGreaterThan(0.8);
    assertThat(SolventGuideline.passes(dilute)).isTrue();
  }
}
