package plyworth.plugins.barrier;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import plyworth.shared.brief.Isotherm;
import plyworth.shared.brief.MoistureLimit;

class MoistureTest {

  private static final double P0 = SaturatedVapour.pascal(30);
  private static final Isotherm SKIM_MILK = new Isotherm.Gab(0.0616, 31.4, 0.750);

  private static MoistureBalance balance(
      Isotherm isotherm, double dryG, double from, double to, double outside) {
    return new MoistureBalance(new MoistureLimit(isotherm, dryG, from, to), outside, P0);
  }

  /** Analytic: the logarithmic form for a straight isotherm at 30 °C 75 % RH. */
  @Test
  void straightIsothermGivesTheLogarithmicFormula() {
    double days =
        balance(new Isotherm.Linear(0.10), 20, 0.2, 0.5, 0.75).allowance() / (9.44142e-5 * 0.0144);
    assertThat(days).isCloseTo(273.77, withPercentage(0.05));
  }

  /** GAB constants of a skim milk powder from memory (J. Food Eng. 68 (2005) 257); analytic. */
  @Test
  void milkPowderFollowsItsGabIsotherm() {
    double conductance = 3.14714e-5 * 0.018;
    assertThat(SKIM_MILK.moisture(0.30)).isCloseTo(0.071627, within(1e-6));
    assertThat(balance(SKIM_MILK, 25, 0.20, 0.40, 0.75).allowance() / conductance)
        .isCloseTo(483.38, withPercentage(0.1));
    assertThat(balance(SKIM_MILK, 25, 0.10, 0.60, 0.75).allowance() / conductance)
        .isCloseTo(1892.6, withPercentage(0.1));
  }

  /** Against the differential equation W·m'(a) da/dt = G·p0·(RH − a), solved step by step. */
  @Test
  void integralAgreesWithTheDifferentialEquation() {
    MoistureBalance balance = balance(SKIM_MILK, 25, 0.20, 0.74, 0.75);
    double exposure = 0;
    int steps = 400_000;
    double step = (0.74 - 0.20) / steps;
    for (int i = 0; i < steps; i++) {
      double activity = 0.20 + (i + 0.5) * step;
      double slope =
          (SKIM_MILK.moisture(activity + 1e-6) - SKIM_MILK.moisture(activity - 1e-6)) / 2e-6;
      exposure += 25 * slope / (P0 * (0.75 - activity)) * step;
    }
    assertThat(balance.allowance()).isCloseTo(exposure, withPercentage(0.001));
  }

  @Test
  void driedFruitCanAlsoBeSpoiltByDrying() {
    double drying = balance(new Isotherm.Linear(0.2), 10, 0.6, 0.4, 0.2).allowance();
    assertThat(drying).isCloseTo(10 * 0.2 / P0 * Math.log(2), withPercentage(1e-6));
    assertThat(balance(new Isotherm.Linear(0.2), 10, 0.6, 0.4, 0.5).allowance()).isInfinite();
  }

  /** Published: saturated salt fit ln aw = 23.1092/T − 0.3607 (knowledgerevolution.com.au/salt). */
  @Test
  void drySaltTakesUpNothingBelowItsDeliquescencePoint() {
    double point = Math.exp(23.1092 / 303.15 - 0.3607);
    assertThat(point).isCloseTo(0.752413, withPercentage(0.001));
    Isotherm salt = new Isotherm.Deliquescent(point, 0.01);
    assertThat(balance(salt, 1, 0.4, 0.75, 0.75).allowance()).isInfinite();
    assertThat(balance(salt, 1, 0.4, 0.75, 0.80).allowance())
        .isCloseTo(0.01 / (P0 * (0.80 - 0.7524)), withPercentage(0.1));
  }

  @Test
  void productStopsAtTheHumidityOutside() {
    MoistureBalance balance = balance(SKIM_MILK, 25, 0.20, 0.80, 0.75);
    double most = 25 * (SKIM_MILK.moisture(0.75) - SKIM_MILK.moisture(0.20));
    assertThat(balance.allowance()).isInfinite();
    assertThat(balance.uptakeG(1e9, 1e-3)).isCloseTo(most, withPercentage(0.01));
    assertThat(balance.uptakeG(100, 5.66e-7)).isBetween(0.0, most);
  }

  @Test
  void uptakeAtTheLimitIsWhatTheLimitAllows() {
    MoistureBalance balance = balance(SKIM_MILK, 25, 0.20, 0.40, 0.75);
    double conductance = 5.66e-7;
    double uptake = balance.uptakeG(balance.allowance() / conductance, conductance);
    assertThat(uptake).isCloseTo(balance.allowedG(), withPercentage(0.001));
  }

  @Test
  void isothermThatEndsBeforeTheLimitIsRefused() {
    Isotherm lactose = new Isotherm.Gab(0.0491, 4.33, 1.18);
    assertThatThrownBy(() -> balance(lactose, 10, 0.2, 0.9, 0.95))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("0.9");
  }
}
