package plyworth.plugins.barrier.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;
import static plyworth.plugins.barrier.course.Courses.DRY_FOOD;
import static plyworth.plugins.barrier.course.Courses.constant;
import static plyworth.plugins.barrier.course.Courses.days;
import static plyworth.plugins.barrier.course.Courses.moisture;
import static plyworth.plugins.barrier.course.Courses.pack;
import static plyworth.plugins.barrier.course.Courses.seasons;

import java.util.List;
import org.junit.jupiter.api.Test;
import plyworth.plugins.barrier.climate.Seasons;
import plyworth.plugins.barrier.permeation.Arrhenius;
import plyworth.plugins.barrier.permeation.PackConductance;
import plyworth.plugins.barrier.permeation.SaturatedVapour;
import plyworth.shared.brief.Climate.Season;
import plyworth.shared.brief.MoistureLimit;

class MoistureCourseTest {

  private static final Season WET = new Season(120, 30, 75);
  private static final Season MILD = new Season(245, 25, 60);
  private static final Season DRY = new Season(120, 15, 10);

  private static MoistureCourse course(Balance balance, PackConductance pack) {
    return MoistureCourse.of((MoistureBalance) balance, pack, 20_000);
  }

  /** Analytic: t = W·b/(G·p0) · ln[(m_e − m_i)/(m_e − m_c)]. */
  @Test
  void differentialEquationAgreesWithTheClosedForm() {
    double conductance = 9.44142e-5 * 0.0144;
    Balance balance = moisture(DRY_FOOD, 0, constant(30, 75));
    double closed =
        20 * 0.10 / (conductance * SaturatedVapour.pascal(30)) * Math.log(0.055 / 0.025);
    assertThat(course(balance, pack(conductance)).life().days())
        .isCloseTo(closed, withPercentage(1e-7));
    assertThat(days(balance, conductance)).isCloseTo(closed, withPercentage(1e-7));
  }

  @Test
  void differentialEquationAgreesWithTheIntegralOverAnIsotherm() {
    MoistureLimit milk = new MoistureLimit(Courses.SKIM_MILK, 25, 0.20, 0.74);
    Balance balance = moisture(milk, 400, constant(30, 75));
    assertThat(course(balance, pack(1e-6)).life().days())
        .isCloseTo(days(balance, 1e-6), withPercentage(1e-7));
  }

  /**
   * Analytic, 90 days at 30 °C 75 % RH and the rest at 25 °C 60 % RH, by a film of 0.80 g/(m²·day)
   * at 38 °C 90 % RH and 33.5 kJ/mol; interval method: Kliment, thesis 1979, abstract.
   */
  @Test
  void twoSeasonsFollowEachOther() {
    Seasons twoSeasons = seasons(new Season(90, 30, 75), new Season(10_000, 25, 60));
    PackConductance film =
        (permeant, season, inside) ->
            0.0144
                * 0.80
                / (0.9 * SaturatedVapour.pascal(38))
                * Arrhenius.factor(33.5, 38, season.temperatureC());
    MoistureCourse course = course(moisture(DRY_FOOD, 0, twoSeasons), film);
    assertThat(course.life().days()).isCloseTo(668.63, withPercentage(0.05));
    assertThat(course.activity().after(90)).isCloseTo(0.326709, withPercentage(0.05));
    assertThat(moisture(DRY_FOOD, 0, constant(30, 75)).life(film).days())
        .isCloseTo(270.99, withPercentage(0.05));
    assertThat(moisture(DRY_FOOD, 0, constant(25, 60)).life(film).days())
        .isCloseTo(797.86, withPercentage(0.05));
  }

  @Test
  void whatCrossesThePackIsWhatProductAndHeadspaceHold() {
    for (Season second : List.of(MILD, DRY)) {
      MoistureLimit milk = new MoistureLimit(Courses.SKIM_MILK, 25, 0.20, 0.58);
      MoistureBalance balance = (MoistureBalance) moisture(milk, 400, seasons(WET, second));
      MoistureCourse course = MoistureCourse.of(balance, pack(3e-6), 2000);
      double start = balance.sorption().water(0.20);
      for (MoistureCourse.Point point : course.points()) {
        assertThat(balance.sorption().water(point.activity()) - start)
            .isCloseTo(point.enteredG(), within(1e-9));
      }
    }
  }

  @Test
  void aRoundOfEqualSeasonsIsAConstantClimate() {
    Balance balance = moisture(DRY_FOOD, 0, seasons(WET, new Season(30, 30, 75.0001)));
    assertThat(days(balance, 1e-6))
        .isCloseTo(days(moisture(DRY_FOOD, 0, constant(30, 75)), 1e-6), withPercentage(0.001));
  }

  @Test
  void aDrySeasonGivesBackWhatTheWetOneBrought() {
    double conductance = 2e-6;
    assertThat(days(moisture(DRY_FOOD, 0, seasons(WET, DRY)), conductance))
        .isGreaterThan(days(moisture(DRY_FOOD, 0, seasons(WET, MILD)), conductance));
    Course course = moisture(DRY_FOOD, 0, seasons(WET, DRY)).course(pack(conductance), 240);
    assertThat(course.after(240)).isLessThan(course.after(120));
  }

  @Test
  void aWideOpenPackIsAtTheLimitAlmostAtOnceInTheFirstSeasonBeyondIt() {
    assertThat(days(moisture(DRY_FOOD, 0, seasons(WET, DRY)), Double.POSITIVE_INFINITY))
        .isBetween(0.0, 0.01);
    assertThat(days(moisture(DRY_FOOD, 0, seasons(DRY, WET)), 1)).isBetween(120.0, 120.01);
  }

  @Test
  void aTightPackIsFollowedNoFurtherThanAskedFor() {
    Life life = moisture(DRY_FOOD, 0, seasons(WET, MILD)).life(pack(1e-12));
    assertThat(life.reached()).isFalse();
    assertThat(life.days()).isEqualTo(3650);
  }
}
