package plyworth.plugins.barrier.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import plyworth.plugins.barrier.Bench;
import plyworth.plugins.barrier.climate.SeasonFactors;
import plyworth.plugins.barrier.climate.Seasons;
import plyworth.shared.brief.Brief;
import plyworth.shared.brief.Climate.Season;
import plyworth.shared.brief.OxygenLimit;
import plyworth.shared.brief.Pack;

class OxygenTest {

  private static final Seasons ROOM = Courses.constant(23, 50);

  private static OxygenBalance balance(double headspaceCm3, double percent, double halfLife) {
    return balance(headspaceCm3, percent, halfLife, 100, ROOM);
  }

  private static OxygenBalance balance(
      double headspaceCm3, double percent, double halfLife, double ppm, Seasons seasons) {
    Pack pack = new Pack(Pack.Format.PILLOW, 200, 225, 10, 10, headspaceCm3);
    Brief brief =
        Bench.brief(
            Bench.product(250, null, new OxygenLimit(ppm, percent), null), pack, 23, 50, 365);
    SeasonFactors factors = new SeasonFactors(seasons.each(s -> 1), seasons.each(s -> 1));
    return OxygenBalance.of(brief, halfLife, 0.5, seasons, factors);
  }

  /** Analytic: 250 g with a limit of 100 ppm, OTR 1.5 over 0.09 m². */
  @Test
  void oxygenThatEntersIsAllConsumed() {
    assertThat(balance(0, 0, 0).allowedCm3()).isCloseTo(17.5120, withPercentage(0.01));
    assertThat(Courses.days(balance(0, 0, 0), 1.5 * 0.09)).isCloseTo(611.09, withPercentage(0.05));
  }

  /** Analytic: 150 cm³ of head-space at 2 % oxygen, 23 °C, 1 atm. */
  @Test
  void headspaceUsesUpPartOfTheLimit() {
    OxygenBalance flushed = balance(150, 2, 0);
    assertThat(flushed.headspace().startCm3()).isCloseTo(2.76701, withPercentage(0.01));
    assertThat(Courses.days(flushed, 1.5 * 0.09)).isCloseTo(514.53, withPercentage(0.05));
    double most = Courses.days(flushed, 1) / 365 / 0.09;
    assertThat(most).isCloseTo(2.11451, withPercentage(0.05));
  }

  /** Analytic: 500 cm³, OTR 2.0 over 0.06 m², 23 °C, 1 atm, from 1 % to 2 % oxygen. */
  @Test
  void headspaceOverAProductThatTakesUpNothingFills() {
    HeadspaceOxygen inert = balance(500, 1, 0).headspace().untouched();
    assertThat(inert.capacities()[0]).isCloseTo(455.138, withPercentage(0.01));
    Course percent = inert.percent(new double[] {2.0 * 0.06}, 1000);
    HeadspaceOxygen.State end =
        inert.after(new HeadspaceOxygen.State(inert.startCm3(), 0), 0, 0.12, 195.05);
    assertThat(end.gas() / inert.capacities()[0] / 1.01325).isCloseTo(0.02, withPercentage(0.01));
    assertThat(percent.dayOf(2)).isCloseTo(195.05, withPercentage(0.5));
    assertThat(percent.after(1e6)).isLessThan(20.95);
  }

  @Test
  void slowUptakeLiesBetweenTheTwoLimitCases() {
    double conductance = 1.5 * 0.09;
    double atOnce = Courses.days(balance(150, 2, 0), conductance);
    double quick = Courses.days(balance(150, 2, 0.01), conductance);
    double slow = Courses.days(balance(150, 2, 30), conductance);
    assertThat(quick).isCloseTo(atOnce, withPercentage(0.1));
    assertThat(slow).isGreaterThan(quick);
    assertThat(balance(150, 2, 1e5).life(Courses.pack(conductance)).reached()).isFalse();
  }

  @Test
  void oxygenIsInTheHeadspaceOrTakenUpOrHasNotEntered() {
    HeadspaceOxygen headspace = balance(150, 2, 20).headspace();
    double entered = 0;
    HeadspaceOxygen.State state = new HeadspaceOxygen.State(headspace.startCm3(), 0);
    double kappa = headspace.capacities()[0];
    int steps = 200_000;
    double step = 400.0 / steps;
    for (int i = 0; i < steps; i++) {
      double middle = headspace.after(state, 0, 0.1, step / 2).gas();
      entered += 0.1 * (OxygenBalance.AIR_BAR - middle / kappa) * step;
      state = headspace.after(state, 0, 0.1, step);
    }
    assertThat(state.gas() + state.uptake() - headspace.startCm3())
        .isCloseTo(entered, within(1e-9));
  }

  @Test
  void tooMuchHeadspaceLeavesNoTimeAtAll() {
    OxygenBalance full = balance(300, 21, 0);
    assertThat(full.atOnce()).isTrue();
    assertThat(Courses.days(full, Double.NaN)).isZero();
    assertThat(full.atMost(Double.NaN)).isZero();
  }

  @Test
  void behindAPerfectBarrierOnlyTheHeadspaceIsTakenUp() {
    assertThat(Courses.days(balance(150, 2, 0), 0)).isInfinite();
    assertThat(balance(150, 2, 5).life(Courses.pack(0)).reached()).isFalse();
    double half = Courses.days(balance(300, 20, 40, 200, ROOM), 0);
    double headspace = balance(300, 20, 40).headspace().startCm3();
    double allowed = balance(300, 20, 40, 200, ROOM).allowedCm3();
    assertThat(half).isCloseTo(-40 * Math.log(1 - allowed / headspace) / Math.log(2), within(1e-6));
  }

  @Test
  void moreConductanceNeverKeepsLongerAndMoreAllowedUptakeNeverShorter() {
    Seasons year = Courses.seasons(new Season(180, 30, 75), new Season(185, 15, 60));
    for (double halfLife : new double[] {0, 10, 200}) {
      for (double conductance = 1e-3; conductance < 10; conductance *= 1.5) {
        double days = Courses.days(balance(150, 2, halfLife, 100, year), conductance);
        assertThat(Courses.days(balance(150, 2, halfLife, 100, year), 1.2 * conductance))
            .isLessThanOrEqualTo(days);
        assertThat(Courses.days(balance(150, 2, halfLife, 120, year), conductance))
            .isGreaterThanOrEqualTo(days);
      }
    }
  }

  @Test
  void seasonsOfOneTemperatureCountForOxygenAsOne() {
    Seasons year = Courses.seasons(new Season(100, 23, 75), new Season(265, 23, 40));
    assertThat(Courses.days(balance(150, 2, 0, 100, year), 0.1))
        .isCloseTo(Courses.days(balance(150, 2, 0), 0.1), withPercentage(1e-9));
    assertThat(Courses.days(balance(150, 2, 12, 100, year), 0.1))
        .isCloseTo(Courses.days(balance(150, 2, 12), 0.1), withPercentage(1e-9));
  }
}
