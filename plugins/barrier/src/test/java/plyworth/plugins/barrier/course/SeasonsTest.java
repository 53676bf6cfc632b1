package plyworth.plugins.barrier.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import plyworth.plugins.barrier.climate.SeasonFactors;
import plyworth.plugins.barrier.climate.Seasons;
import plyworth.plugins.barrier.permeation.SaturatedVapour;
import plyworth.shared.brief.Climate;
import plyworth.shared.brief.Climate.Season;
import plyworth.shared.brief.Isotherm;
import plyworth.shared.brief.MoistureLimit;

class SeasonsTest {

  private static final Seasons YEAR =
      new Seasons(
          new Climate(
              "year",
              List.of(new Season(100, 30, 75), new Season(200, 20, 60), new Season(65, 10, 70))),
          2000);

  @Test
  void whatBuildsUpIsReachedWhereItHasBuiltUp() {
    double[] rates = {2, 0, 1};
    assertThat(YEAR.until(0, rates, 100)).isEqualTo(50);
    assertThat(YEAR.until(0, rates, 210)).isCloseTo(310, within(1e-9));
    assertThat(YEAR.until(50, rates, 100)).isEqualTo(100);
    assertThat(YEAR.until(150, rates, 10)).isCloseTo(310, within(1e-9));
    assertThat(YEAR.until(0, rates, 265 * 4 + 20)).isCloseTo(365 * 4 + 10, within(1e-9));
    assertThat(YEAR.until(0, new double[3], 1)).isInfinite();
    assertThat(YEAR.until(7, rates, 0)).isEqualTo(7);
  }

  @Test
  void everyDayFallsIntoItsSeason() {
    assertThat(YEAR.on(0)).isZero();
    assertThat(YEAR.on(101)).isEqualTo(1);
    assertThat(YEAR.on(364)).isEqualTo(2);
    assertThat(YEAR.on(365 * 3 + 20)).isZero();
  }

  /** Packs whose conductance changes from season to season within the factors, at random. */
  @Test
  void earliestAndLatestDayEncloseEveryPackAndFallWithConductance() {
    Random random = new Random(1);
    SeasonFactors factors =
        new SeasonFactors(new double[] {0.9, 0.4, 0.2}, new double[] {1, 0.8, 0.5});
    MoistureLimit food = new MoistureLimit(new Isotherm.Gab(0.06, 10, 0.9), 10, 0.2, 0.5);
    Balance balance = MoistureBalance.of(food, 50, YEAR, factors);
    double before = Double.POSITIVE_INFINITY;
    for (double conductance = 1e-8; conductance < 1e-4; conductance *= 1.3) {
      double reference = conductance;
      double[] factor = {
        drawn(random, factors, 0), drawn(random, factors, 1), drawn(random, factors, 2)
      };
      Life life = balance.life((p, season, a) -> reference * factor[YEAR.round().indexOf(season)]);
      assertThat(Math.min(2000, balance.atLeast(conductance)))
          .isLessThanOrEqualTo(life.days() * (1 + 1e-9))
          .isLessThanOrEqualTo(before);
      assertThat(Math.min(2000, balance.atMost(conductance)))
          .isGreaterThanOrEqualTo(life.days() * (1 - 1e-9));
      before = balance.atLeast(conductance);
    }
  }

  private static double drawn(Random random, SeasonFactors factors, int season) {
    double low = factors.lowest()[season];
    return low + random.nextDouble() * (factors.highest()[season] - low);
  }

  @Test
  void whereSomeSeasonDriesTheProductNoLastDayIsPromised() {
    Seasons swinging = Courses.seasons(new Season(100, 30, 75), new Season(100, 20, 30));
    Balance balance = Courses.moisture(Courses.DRY_FOOD, 0, swinging);
    assertThat(balance.atMost(1e-6)).isInfinite();
    assertThat(balance.atLeast(1e-6)).isLessThanOrEqualTo(Courses.days(balance, 1e-6));
  }

  /** Analytic: crystals take up in wet seasons alone. */
  @Test
  void crystalsDissolveInTheSeasonsAboveTheirPoint() {
    MoistureLimit salt = new MoistureLimit(new Isotherm.Deliquescent(0.7, 0.01), 1, 0.4, 0.7);
    Seasons halves = Courses.seasons(new Season(10, 30, 80), new Season(10, 30, 50));
    double perDay = 1e-5 * SaturatedVapour.pascal(30) * 0.1;
    double wetDays = 0.01 / perDay;
    double rounds = Math.ceil(wetDays / 10) - 1;
    assertThat(Courses.days(Courses.moisture(salt, 0, halves), 1e-5))
        .isCloseTo(wetDays + 10 * rounds, withPercentage(1e-8));
  }
}
