package plyworth.plugins.barrier.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;
import static plyworth.plugins.barrier.course.Courses.DRY_FOOD;
import static plyworth.plugins.barrier.course.Courses.SKIM_MILK;
import static plyworth.plugins.barrier.course.Courses.constant;
import static plyworth.plugins.barrier.course.Courses.days;
import static plyworth.plugins.barrier.course.Courses.moisture;

import org.junit.jupiter.api.Test;
import plyworth.plugins.barrier.climate.Seasons;
import plyworth.plugins.barrier.permeation.PackConductance;
import plyworth.plugins.barrier.permeation.SaturatedVapour;
import plyworth.shared.brief.Isotherm;
import plyworth.shared.brief.MoistureLimit;

class MoistureTest {

  private static final Seasons HOT = constant(30, 75);
  private static final double P0 = SaturatedVapour.pascal(30);

  private static Balance milk(double from, double to, Seasons seasons) {
    return moisture(new MoistureLimit(SKIM_MILK, 25, from, to), 0, seasons);
  }

  /** Analytic: the logarithmic form for a straight isotherm at 30 °C 75 % RH. */
  @Test
  void straightIsothermGivesTheLogarithmicFormula() {
    assertThat(days(moisture(DRY_FOOD, 0, HOT), 9.44142e-5 * 0.0144))
        .isCloseTo(273.77, withPercentage(0.05));
  }

  /** GAB constants of a skim milk powder from memory (J. Food Eng. 68 (2005) 257); analytic. */
  @Test
  void milkPowderFollowsItsGabIsotherm() {
    double conductance = 3.14714e-5 * 0.018;
    assertThat(SKIM_MILK.moisture(0.30)).isCloseTo(0.071627, within(1e-6));
    assertThat(days(milk(0.20, 0.40, HOT), conductance)).isCloseTo(483.38, withPercentage(0.1));
    assertThat(days(milk(0.10, 0.60, HOT), conductance)).isCloseTo(1892.6, withPercentage(0.1));
  }

  /** Published for 3 years in Natick report ADA553338: 0.004 g per pouch, 0.13 g/(m²·day). */
  @Test
  void crackerPouchNeedsWhatItsLimitLeavesPerDay() {
    double area = 0.004 / 0.13;
    assertThat(area).isCloseTo(0.030769, withPercentage(0.1));
    assertThat(0.004 * 1095).isCloseTo(4.38, withPercentage(0.1));
    MoistureLimit slow = new MoistureLimit(new Isotherm.Deliquescent(0.01, 0.0438), 100, 0, 0);
    double permeance = 0.13 / (0.74 * P0);
    assertThat(days(moisture(slow, 0, HOT), permeance * area)).isCloseTo(1095, withPercentage(0.1));
  }

  @Test
  void driedFruitCanAlsoBeSpoiltByDrying() {
    MoistureLimit drying = new MoistureLimit(new Isotherm.Linear(0.2), 10, 0.6, 0.4);
    assertThat(days(moisture(drying, 0, constant(30, 20)), 1))
        .isCloseTo(10 * 0.2 / P0 * Math.log(2), withPercentage(1e-6));
    assertThat(days(moisture(drying, 0, constant(30, 50)), 1)).isInfinite();
  }

  private static double deliquescence(double celsius) {
    return Math.exp(23.1092 / (celsius + 273.15) - 0.3607);
  }

  /**
   * Published: saturated salt fit ln aw = 23.1092/T − 0.3607 (published data as shown on a teaching
   * page).
   */
  @Test
  void drySaltTakesUpNothingBelowItsDeliquescencePoint() {
    double point = deliquescence(30);
    assertThat(deliquescence(25)).isCloseTo(0.753376, withPercentage(0.001));
    assertThat(point).isCloseTo(0.752413, withPercentage(0.001));
    assertThat(deliquescence(38)).isCloseTo(0.750940, withPercentage(0.001));
    MoistureLimit salt = new MoistureLimit(new Isotherm.Deliquescent(point, 0.01), 1, 0.4, 0.75);
    assertThat(days(moisture(salt, 0, HOT), 1)).isInfinite();
    assertThat(moisture(salt, 0, HOT).canLimit()).isFalse();
    assertThat(days(moisture(salt, 0, constant(30, 80)), 1))
        .isCloseTo(0.01 / (P0 * (0.80 - 0.7524)), withPercentage(0.1));
  }

  /**
   * Analytic: an ideal gas at the saturated pressure, 30.26 g/m³ at 30 °C; it needs filling too.
   */
  @Test
  void vapourInTheHeadspaceIsPartOfTheBalance() {
    double perCm3 = 1e-6 * P0 * 18.0153 / (8.314462618 * 303.15);
    double without = days(moisture(DRY_FOOD, 0, HOT), 1);
    double with = days(moisture(DRY_FOOD, 500, HOT), 1);
    assertThat(with / without).isCloseTo(1 + 500 * perCm3 / (20 * 0.10), withPercentage(1e-7));
  }

  @Test
  void productStopsAtTheHumidityOutside() {
    Balance balance = milk(0.20, 0.80, HOT);
    double most = 25 * (SKIM_MILK.moisture(0.75) - SKIM_MILK.moisture(0.20));
    assertThat(days(balance, 1e-3)).isInfinite();
    Course course = balance.course(Courses.pack(1e-3), 3000);
    assertThat(course.after(3000)).isCloseTo(most, withPercentage(1e-6));
  }

  @Test
  void packThatConductsMoreWhileTheProductIsDampEndsBetweenItsExtremes() {
    Balance balance = milk(0.20, 0.60, HOT);
    PackConductance swelling = (permeant, season, inside) -> 1e-6 * Math.exp(2 * inside);
    double days = balance.life(swelling).days();
    assertThat(days).isLessThan(days(balance, 1e-6 * Math.exp(0.4)));
    assertThat(days).isGreaterThan(days(balance, 1e-6 * Math.exp(1.2)));
    Course course = balance.course(swelling, 10_000);
    assertThat(course.end()).isCloseTo(days, withPercentage(0.01));
  }

  @Test
  void moreConductanceNeverKeepsLongerAndMoreAllowedUptakeNeverShorter() {
    for (double conductance = 1e-8; conductance < 1e-3; conductance *= 1.7) {
      double days = days(milk(0.20, 0.50, HOT), conductance);
      assertThat(days(milk(0.20, 0.50, HOT), 1.1 * conductance)).isLessThan(days);
      assertThat(days(milk(0.20, 0.52, HOT), conductance)).isGreaterThan(days);
    }
  }

  @Test
  void aProductAtItsLimitWhenPackedKeepsForNoTime() {
    Balance balance = milk(0.40, 0.40, HOT);
    assertThat(balance.atOnce()).isTrue();
    assertThat(days(balance, 1e-6)).isZero();
    assertThat(balance.atMost(Double.NaN)).isZero();
  }

  @Test
  void anInfiniteBarrierAndNoDrivingForceBothKeepForEver() {
    assertThat(days(milk(0.20, 0.40, HOT), 0)).isInfinite();
    assertThat(days(milk(0.20, 0.40, constant(30, 40)), 1)).isInfinite();
    assertThat(days(milk(0.20, 0.40, HOT), Double.NaN)).isNaN();
  }

  @Test
  void isothermThatEndsBeforeTheLimitIsRefused() {
    MoistureLimit lactose = new MoistureLimit(new Isotherm.Gab(0.0491, 4.33, 1.18), 10, 0.2, 0.9);
    assertThatThrownBy(() -> moisture(lactose, 0, constant(30, 95)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("0.9");
  }
}
