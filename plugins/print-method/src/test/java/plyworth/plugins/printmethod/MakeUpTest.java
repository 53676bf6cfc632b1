package plyworth.plugins.printmethod;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Mass balances worked by hand; the reference inks by volume are those of a published rule. */
class MakeUpTest {

  private static final double TIGHT = 1e-6;

  @Test
  void threeHundredKilogramsOfFilmTakeEightySixKilogramsOfLiquidInk() {
    double area = 300 / (12e-6 * 1400);
    double dry = 1.2 * area / 1000;
    MakeUp ink = new MakeUp(0.25, 0, 0.75);
    assertThat(area).isCloseTo(17857.1429, within(1e-3));
    assertThat(dry).isCloseTo(21.4285714, within(TIGHT));
    assertThat(ink.wet(dry)).isCloseTo(85.7142857, within(TIGHT));
    assertThat(ink.wet(dry) * ink.solvent()).isCloseTo(64.2857143, within(TIGHT));
  }

  @Test
  void thinnerCountsAmongTheVolatileOrganics() {
    MakeUp supplied = new MakeUp(0.38, 0, 0.62);
    MakeUp ready = supplied.thinned(0.35);
    assertThat(ready.solids()).isCloseTo(0.281481481, within(TIGHT));
    assertThat(ready.solvent()).isCloseTo(0.718518519, within(TIGHT));
    assertThat(ready.wet(1.5)).isCloseTo(5.32894737, within(TIGHT));
    assertThat(ready.wet(1.5) * ready.solvent()).isCloseTo(3.82894737, within(TIGHT));
    assertThat(ready.solventPerSolids()).isCloseTo(2.55263158, within(TIGHT));
    assertThat(supplied.wet(1.5)).isCloseTo(3.94736842, within(TIGHT));
  }

  @Test
  void takingThinnerOutGivesTheInkAsSupplied() {
    MakeUp supplied = new MakeUp(0.38, 0, 0.62);
    MakeUp back = supplied.thinned(0.35).asSupplied(0.35);
    assertThat(back.solids()).isCloseTo(0.38, within(1e-12));
    assertThat(back.solvent()).isCloseTo(0.62, within(1e-12));
  }

  /** Reference inks of an emission regulation: 25 % solids by volume, solvent 0.8 kg/L. */
  @Test
  void aQuarterOfSolidsByVolumeIsFarMoreByMass() {
    MakeUp flexo = MakeUp.ofVolume(1.1, 0.8, 0.25);
    MakeUp gravure = MakeUp.ofVolume(1.0, 0.8, 0.25);
    assertThat(flexo.solvent()).isCloseTo(0.545454545, within(TIGHT));
    assertThat(flexo.solventPerSolids()).isCloseTo(1.2, within(TIGHT));
    assertThat(gravure.solvent()).isCloseTo(0.6, within(TIGHT));
    assertThat(gravure.solventPerSolids()).isCloseTo(1.5, within(TIGHT));
  }

  @Test
  void kindFollowsFromWhatEvaporates() {
    assertThat(new MakeUp(0.38, 0.57, 0.05).kind()).isEqualTo(InkKind.WATER);
    assertThat(new MakeUp(0.22, 0, 0.78).kind()).isEqualTo(InkKind.SOLVENT);
    assertThat(new MakeUp(0.98, 0, 0.02).kind()).isEqualTo(InkKind.CURED);
  }
}
