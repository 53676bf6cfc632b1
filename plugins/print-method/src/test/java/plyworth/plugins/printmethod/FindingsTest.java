package plyworth.plugins.printmethod;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plyworth.shared.scoring.Explanation;
import plyworth.shared.scoring.Finding.Level;
import plyworth.shared.structure.LayerNotation;

class FindingsTest {

  private static final String GRAVURE =
      "bopet 12 um / ink-nc 1.5 g/m2 @gravure-solvent / adhesive-pu-solvent 3 g/m2 @dry-bond"
          + " / lldpe 40 um";

  @Test
  void solventPrintCarriesItsCautions() {
    Bound bound = Bound.standard();
    assertThat(bound.finds(Level.INFORMS, "solvent-handling", GRAVURE)).isTrue();
    assertThat(bound.finds(Level.INFORMS, "nitrocellulose", GRAVURE)).isTrue();
    assertThat(bound.finds(Level.INFORMS, "crossover", GRAVURE)).isTrue();
    assertThat(bound.finds(Level.INFORMS, "solvent-of-adhesive", GRAVURE)).isTrue();
  }

  /** A quarter of the limit of ethyl acetate is 18 g/m³ (IEC 60079-20-1:2010). */
  @Test
  void richExhaustWarnsOfTheFlammableLimit() {
    assertThat(
            Bound.with(Map.of("running-concentration", 17.0))
                .finds(Level.WARNS, "explosion-limit", GRAVURE))
        .isFalse();
    assertThat(
            Bound.with(Map.of("running-concentration", 19.0))
                .finds(Level.WARNS, "explosion-limit", GRAVURE))
        .isTrue();
  }

  /** Common practice. */
  @Test
  void thinFoilBreaksOnPressAndBareInkMeetsTheJaws() {
    Bound bound = Bound.standard();
    String printed = "ink-nc 1 g/m2 @flexo-solvent / wash-primer 1 g/m2 @flexo-solvent / ";
    String varnished = "heat-resistant-lacquer 2 g/m2 @lacquering / " + printed;
    assertThat(bound.finds(Level.WARNS, "thin-foil", printed + "aluminium-foil 7 um")).isTrue();
    assertThat(bound.finds(Level.WARNS, "thin-foil", printed + "aluminium-foil 20 um")).isFalse();
    assertThat(bound.finds(Level.INFORMS, "jaws-touch-print", printed + "aluminium-foil 20 um"))
        .isTrue();
    assertThat(bound.finds(Level.INFORMS, "jaws-touch-print", varnished + "aluminium-foil 20 um"))
        .isFalse();
  }

  @Test
  void moreInkThanThePressHasColoursForIsOutOfReach() {
    Bound bound = Bound.standard();
    String usual = "ink-wb 1.5 g/m2 @flexo-water 30 % / kraft-paper 60 g/m2";
    String heavy = "ink-wb 12 g/m2 @flexo-water 30 % / kraft-paper 60 g/m2";
    assertThat(bound.finds(Level.WARNS, "lay-down-out-of-reach", usual)).isFalse();
    assertThat(bound.finds(Level.WARNS, "lay-down-out-of-reach", heavy)).isTrue();
  }

  @ParameterizedTest
  @CsvSource({"eu, eu-emission-per-solids", "us, us-guideline", "cn, cn-ink-limit"})
  void regionsBringTheirRules(String region, String rule) {
    assertThat(Bound.in(region).finds(Level.INFORMS, rule, GRAVURE)).isTrue();
  }

  @Test
  void explanationShowsAbatementEnergyOxidiserAndGates() {
    Explanation explanation =
        Bound.standard().scorer().explain(LayerNotation.readStructure(GRAVURE), Map.of());
    assertThat(explanation.sections().stream().map(s -> s.title().key()))
        .contains(
            "section.lay-down",
            "section.abatement",
            "section.crossover",
            "section.residual",
            "section.oxidiser",
            "section.energy",
            "section.gates",
            "note.solvent-safety");
  }

  @Test
  void energyBarsAddUpToTheCriterion() {
    Bound bound = Bound.standard();
    Explanation explanation =
        bound.scorer().explain(LayerNotation.readStructure(GRAVURE), Map.of());
    double sum =
        explanation.sections().stream()
            .filter(Explanation.Bars.class::isInstance)
            .flatMap(s -> ((Explanation.Bars) s).lengths().stream())
            .mapToDouble(Double::doubleValue)
            .sum();
    double figure = bound.figure("drying-heat", GRAVURE);
    assertThat(sum).isCloseTo(figure, org.assertj.core.api.Assertions.within(1e-9));
  }
}
