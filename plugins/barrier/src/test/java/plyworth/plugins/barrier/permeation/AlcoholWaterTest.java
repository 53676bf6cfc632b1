package plyworth.plugins.barrier.permeation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

public class AlcoholWaterTest {

  /** Analytic: 70 % w/w isopropanol after Wilson and Antoine, constants from memory. */
  @Test
  void vapourOverSeventyPercentIsopropanolFollowsWilson() {
    AlcoholWater at25 = AlcoholWater.at(Alcohol.ISOPROPANOL, 25);
    double x = at25.moleFraction(0.70, 0.30);
    assertThat(x).isCloseTo(0.411583, within(1e-6));
    assertThat(at25.l12()).isCloseTo(0.11217, within(1e-5));
    assertThat(at25.l21()).isCloseTo(0.52677, within(1e-5));
    assertThat(at25.alcoholActivity(x) / x).isCloseTo(1.63603, within(1e-5));
    assertThat(at25.waterActivity(x) / (1 - x)).isCloseTo(1.47582, within(1e-5));
    assertThat(at25.alcoholPa(x)).isCloseTo(4054.2, withPercentage(0.1));
    assertThat(at25.waterPa(x)).isCloseTo(2742.3, withPercentage(0.1));
    AlcoholWater at40 = AlcoholWater.at(Alcohol.ISOPROPANOL, 40);
    assertThat(at40.alcoholPa(x)).isCloseTo(9301.0, withPercentage(0.1));
    assertThat(at40.waterPa(x)).isCloseTo(6321.4, withPercentage(0.1));
  }

  /** Published: Preprint 202401.2022 lists 0.061 and 0.0317 bar for the pure liquids at 298 K. */
  @Test
  void pureLiquidsHaveTheirPublishedVapourPressure() {
    AlcoholWater mixture = AlcoholWater.at(Alcohol.ISOPROPANOL, 24.85);
    assertThat(mixture.alcoholPa(1)).isCloseTo(6100, withPercentage(3));
    assertThat(mixture.waterPa(0)).isCloseTo(3170, withPercentage(2));
  }

  /**
   * Published: 95.6 % w/w ethanol boils unchanged at 78.17 °C (Evans 1916, as shown on a college’s
   * physical chemistry pages, figure 5.06).
   */
  @Test
  void ethanolAndWaterBoilTogetherNearTheirPublishedAzeotrope() {
    AlcoholWater boiling = AlcoholWater.at(Alcohol.ETHANOL, 78.17);
    assertThat(boiling.alcoholPa(azeotrope(boiling)) + boiling.waterPa(azeotrope(boiling)))
        .isCloseTo(101_325, withPercentage(0.5));
    double x = azeotrope(boiling);
    double strength = 46.069 * x / (46.069 * x + 18.0153 * (1 - x));
    assertThat(strength).isCloseTo(0.956, within(0.006));
  }

  /** From memory: the isopropanol azeotrope at 1 atm, x = 0.68 to 0.69 at 80.3 °C. */
  @Test
  void isopropanolAndWaterBoilTogetherNearTheirAzeotrope() {
    AlcoholWater boiling = AlcoholWater.at(Alcohol.ISOPROPANOL, 80.3);
    assertThat(azeotrope(boiling)).isCloseTo(0.685, within(0.04));
    assertThat(boiling.alcoholPa(azeotrope(boiling)) + boiling.waterPa(azeotrope(boiling)))
        .isCloseTo(101_325, withPercentage(1));
  }

  /** Where the vapour has the composition of the liquid. */
  public static double azeotrope(AlcoholWater mixture) {
    double low = 0.3;
    double high = 0.999;
    for (int i = 0; i < 60; i++) {
      double x = (low + high) / 2;
      boolean richer = mixture.alcoholPa(x) / x > mixture.waterPa(x) / (1 - x);
      low = richer ? x : low;
      high = richer ? high : x;
    }
    return low;
  }

  /** Gibbs and Duhem at constant temperature: x1 d ln γ1 + x2 d ln γ2 = 0. */
  @ParameterizedTest
  @EnumSource
  void activitiesOfBothAgreeWithEachOther(Alcohol alcohol) {
    AlcoholWater mixture = AlcoholWater.at(alcohol, 25);
    double step = 1e-5;
    for (double x = 0.05; x < 0.96; x += 0.05) {
      double first =
          Math.log(
              mixture.alcoholActivity(x + step)
                  / mixture.alcoholActivity(x - step)
                  * (x - step)
                  / (x + step));
      double second =
          Math.log(
              mixture.waterActivity(x + step)
                  / mixture.waterActivity(x - step)
                  * (1 - x + step)
                  / (1 - x - step));
      assertThat(x * first + (1 - x) * second).isCloseTo(0, within(1e-10));
    }
  }

  /** A mixture that does not part: more of one is always more active. */
  @ParameterizedTest
  @EnumSource
  void moreAlcoholIsMoreActiveAndWaterLessSo(Alcohol alcohol) {
    AlcoholWater mixture = AlcoholWater.at(alcohol, 25);
    for (double x = 0; x < 0.995; x += 0.005) {
      assertThat(mixture.alcoholActivity(x + 0.005)).isGreaterThan(mixture.alcoholActivity(x));
      assertThat(mixture.waterActivity(x + 0.005)).isLessThan(mixture.waterActivity(x));
    }
  }
}
