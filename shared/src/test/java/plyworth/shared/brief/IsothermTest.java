package plyworth.shared.brief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class IsothermTest {

  @Test
  void straightLineThroughTheOrigin() {
    assertThat(new Isotherm.Linear(0.25).moisture(0.4)).isCloseTo(0.1, within(1e-15));
  }

  /** With k = 1 the form is that of Brunauer, Emmett and Teller: m0·C·a/[(1 − a)(1 − a + C·a)]. */
  @Test
  void gabWithUnitKIsBet() {
    double bet = 0.05 * 10 * 0.3 / (0.7 * (0.7 + 10 * 0.3));
    assertThat(new Isotherm.Gab(0.05, 10, 1).moisture(0.3)).isCloseTo(bet, within(1e-15));
  }

  @Test
  void gabRisesFromZeroAndEndsWhereItsFormEnds() {
    Isotherm.Gab gab = new Isotherm.Gab(0.055, 12, 0.95);
    assertThat(gab.moisture(0)).isZero();
    for (double a = 0.05; a <= 1; a += 0.05) {
      assertThat(gab.moisture(a)).isGreaterThan(gab.moisture(a - 0.05));
    }
    assertThat(new Isotherm.Gab(0.055, 12, 1.1).moisture(0.95)).isNaN();
  }

  @Test
  void slopeIsTheDerivative() {
    Isotherm.Gab gab = new Isotherm.Gab(0.055, 12, 0.95);
    for (double a = 0.05; a < 1; a += 0.05) {
      double difference = (gab.moisture(a + 1e-6) - gab.moisture(a - 1e-6)) / 2e-6;
      assertThat(gab.slope(a)).isCloseTo(difference, within(1e-6 * difference));
    }
    assertThat(new Isotherm.Linear(0.25).slope(0.7)).isEqualTo(0.25);
    assertThat(new Isotherm.Deliquescent(0.84, 0.005).slope(0.9)).isNaN();
  }

  @Test
  void crystalsTakeUpNothingUntilTheyDissolve() {
    Isotherm crystals = new Isotherm.Deliquescent(0.84, 0.005);
    assertThat(crystals.moisture(0.8)).isZero();
    assertThat(crystals.moisture(0.9)).isNaN();
  }

  @Test
  void constantsMustBePositive() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Isotherm.Linear(0));
    assertThatIllegalArgumentException().isThrownBy(() -> new Isotherm.Gab(0.05, -1, 0.9));
    assertThatIllegalArgumentException().isThrownBy(() -> new Isotherm.Deliquescent(1.2, 0.01));
  }
}
