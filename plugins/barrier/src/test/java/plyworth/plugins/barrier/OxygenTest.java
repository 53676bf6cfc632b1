package plyworth.plugins.barrier;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import plyworth.shared.brief.Brief;
import plyworth.shared.brief.OxygenLimit;
import plyworth.shared.brief.Pack;

class OxygenTest {

  private static OxygenBalance balance(double headspaceCm3, double percent) {
    Pack pack = new Pack(Pack.Format.PILLOW, 200, 225, 10, 10, headspaceCm3);
    Brief brief =
        Bench.brief(
            Bench.product(250, null, new OxygenLimit(100, percent), null), pack, 23, 50, 365);
    return OxygenBalance.of(brief);
  }

  /** Analytic: 250 g with a limit of 100 ppm, OTR 1.5 over 0.09 m². */
  @Test
  void oxygenThatEntersIsAllConsumed() {
    assertThat(balance(0, 0).allowedCm3()).isCloseTo(17.5120, withPercentage(0.01));
    assertThat(balance(0, 0).allowance() / (1.5 * 0.09)).isCloseTo(611.09, withPercentage(0.05));
  }

  /** Analytic: 150 cm³ of head-space at 2 % oxygen, 23 °C, 1 atm. */
  @Test
  void headspaceUsesUpPartOfTheLimit() {
    assertThat(balance(150, 2).headspaceCm3()).isCloseTo(2.76701, withPercentage(0.01));
    assertThat(balance(150, 2).allowance() / (1.5 * 0.09)).isCloseTo(514.53, withPercentage(0.05));
    assertThat(balance(150, 2).allowance() / 365 / 0.09).isCloseTo(2.11451, withPercentage(0.05));
  }

  @Test
  void tooMuchHeadspaceLeavesNoTimeAtAll() {
    assertThat(balance(300, 21).allowance()).isZero();
    assertThat(new Mechanism(Permeant.OXYGEN, 0).days(Double.NaN)).isZero();
  }
}
