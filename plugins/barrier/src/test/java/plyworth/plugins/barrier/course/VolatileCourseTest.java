package plyworth.plugins.barrier.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import plyworth.plugins.barrier.permeation.Alcohol;
import plyworth.plugins.barrier.permeation.AlcoholWater;
import plyworth.plugins.barrier.permeation.AlcoholWaterTest;

class VolatileCourseTest {

  private static final AlcoholWater ISOPROPANOL = AlcoholWater.at(Alcohol.ISOPROPANOL, 25);

  private static VolatileCourse course(double strength, double outside) {
    return new VolatileCourse(ISOPROPANOL, (1 - strength) / strength, outside);
  }

  /** Against small steps of the middle-point rule in time, not in loss: an independent way. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 0.1, 1, 10, 100})
  void courseAgreesWithSmallStepsInTime(double ratio) {
    VolatileCourse course = course(0.7, 0.6);
    double alcohol = 1;
    double water = course.waterG();
    int steps = 200_000;
    double step = 0.3 / steps;
    for (int i = 0; i < steps; i++) {
      double x = ISOPROPANOL.moleFraction(alcohol, water);
      double halfAlcohol = alcohol - step / 2 * ISOPROPANOL.alcoholActivity(x);
      double halfWater = water - step / 2 * ratio * (ISOPROPANOL.waterActivity(x) - 0.6);
      double half = ISOPROPANOL.moleFraction(halfAlcohol, halfWater);
      alcohol -= step * ISOPROPANOL.alcoholActivity(half);
      water -= step * ratio * (ISOPROPANOL.waterActivity(half) - 0.6);
    }
    VolatileCourse.Point end = course.after(0.3, ratio);
    assertThat(end.loss()).isCloseTo(1 - alcohol, within(1e-8));
    assertThat(end.waterG()).isCloseTo(water, within(1e-8));
  }

  /** What has left is the mean activity times the exposure, what has left of water its flux. */
  @Test
  void massBalanceOfBothComponentsCloses() {
    VolatileCourse course = course(0.7, 0.6);
    double alcohol = 0;
    double water = 0;
    double last = 0;
    for (int i = 1; i <= 400; i++) {
      double now = 0.4 * i / 400;
      for (double node : new double[] {-1, 1}) {
        double at = (last + now) / 2 + node * (now - last) / 2 / Math.sqrt(3);
        VolatileCourse.Point point = course.after(at, 2);
        double x = ISOPROPANOL.moleFraction(1 - point.loss(), point.waterG());
        alcohol += (now - last) / 2 * ISOPROPANOL.alcoholActivity(x);
        water += (now - last) / 2 * 2 * (ISOPROPANOL.waterActivity(x) - 0.6);
      }
      last = now;
    }
    VolatileCourse.Point end = course.after(0.4, 2);
    assertThat(end.loss()).isCloseTo(alcohol, within(1e-9));
    assertThat(course.waterG() - end.waterG()).isCloseTo(water, within(1e-9));
  }

  @Test
  void daysUntilALossAndLossAfterTheDaysAreInverse() {
    VolatileCourse course = course(0.7, 0.5);
    for (double loss : new double[] {1e-4, 0.05, 0.5, 0.9}) {
      VolatileCourse.Point there = course.until(loss, 3);
      assertThat(course.after(there.exposure(), 3).loss()).isCloseTo(loss, withPercentage(1e-6));
    }
  }

  /**
   * Analytic: where alcohol and water leave in the proportion in which they are filled, nothing
   * changes but the amount.
   */
  @Test
  void mixtureThatLeavesAsItIsFilledKeepsItsComposition() {
    double x = AlcoholWaterTest.azeotrope(ISOPROPANOL);
    double strength = 60.096 * x / (60.096 * x + 18.0153 * (1 - x));
    VolatileCourse course = course(strength, 0);
    double ratio = course.waterG() * course.activity() / ISOPROPANOL.waterActivity(x);
    for (double loss : new double[] {0.05, 0.5, 0.95}) {
      VolatileCourse.Point point = course.until(loss, ratio);
      assertThat(point.strength()).isCloseTo(strength, within(1e-8));
      assertThat(point.exposure()).isCloseTo(loss / course.activity(), within(1e-8));
    }
  }

  /** Analytic: pure alcohol in dry air leaves at a constant rate. */
  @Test
  void pureAlcoholInDryAirLeavesAtAConstantRate() {
    assertThat(course(1, 0).after(0.37, 5).loss()).isCloseTo(0.37, within(1e-9));
    assertThat(course(1, 0).after(3, 5).loss()).isEqualTo(1);
  }

  @Test
  void tightPackLosesNothingAndKeepsItsStrength() {
    VolatileCourse.Point point = course(0.7, 0.5).after(0, 1);
    assertThat(point.loss()).isZero();
    assertThat(point.strength()).isCloseTo(0.7, within(1e-12));
  }

  /** Analytic: water that cannot leave weakens what is left and slows the loss. */
  @Test
  void lossSlowsWhereWaterStaysAndQuickensWhereItLeaves() {
    VolatileCourse course = course(0.7, 0.5);
    double constant = 0.1 / course.activity();
    assertThat(course.until(0.1, 0).exposure()).isGreaterThan(constant);
    assertThat(course.until(0.1, 50).exposure()).isLessThan(constant);
  }

  @Test
  void humidAirMayWaterThePadDown() {
    assertThat(course(0.9, 0.9).dries()).isFalse();
    VolatileCourse.Point point = course(0.9, 0.9).after(0.05, 10);
    assertThat(point.waterG()).isGreaterThan(course(0.9, 0.9).waterG());
    assertThat(point.strength()).isLessThan(0.9);
  }

  @Test
  void moreConductanceToEitherNeverLosesLessWhereTheLiquidDries() {
    VolatileCourse course = course(0.7, 0.5);
    Random random = new Random(5);
    for (int i = 0; i < 200; i++) {
      double exposure = Math.exp(random.nextDouble(-9, 2));
      double water = Math.exp(random.nextDouble(-6, 4));
      double loss = course.after(exposure, water / exposure).loss();
      assertThat(course.after(exposure * 1.1, water / exposure / 1.1).loss())
          .isGreaterThanOrEqualTo(loss * (1 - 1e-9));
      assertThat(course.after(exposure, water * 1.1 / exposure).loss())
          .isGreaterThanOrEqualTo(loss * (1 - 1e-6));
    }
  }
}
