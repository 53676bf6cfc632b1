package plyworth.plugins.barrier.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import plyworth.plugins.barrier.Bench;
import plyworth.plugins.barrier.pack.BarrierModel;
import plyworth.plugins.barrier.permeation.Arrhenius;
import plyworth.plugins.barrier.permeation.PackConductance;
import plyworth.shared.brief.Brief;
import plyworth.shared.brief.Climate;
import plyworth.shared.brief.Climate.Season;
import plyworth.shared.brief.VolatileContent;
import plyworth.shared.scoring.SampleBriefs;

class VolatileSeasonsTest {

  private static final Season WARM = new Season(120, 30, 70);
  private static final Season COOL = new Season(245, 18, 50);

  /** From 30 °C, the warmest, to each season: 60 kJ/mol, the standard of the parameter. */
  private static final double[] FACTORS = {1, Arrhenius.factor(60, 30, 18)};

  private static VolatileBalance balance(double allowed, Season... seasons) {
    Brief wipe = SampleBriefs.alcoholWipe();
    Brief brief =
        new Brief(
            Bench.product(1, null, null, new VolatileContent("isopropanol", 0.7, 1.2, allowed)),
            new Climate("seasons", List.of(seasons)),
            730,
            wipe.pack(),
            wipe.machine(),
            wipe.market(),
            wipe.order());
    return BarrierModel.of(Bench.context(brief)).demand().alcohol().orElseThrow();
  }

  private static PackConductance pack(double alcohol, double water) {
    return (permeant, season, inside) -> permeant.alcohol() ? alcohol : water;
  }

  @Test
  void seasonsThatAreAlikeCountAsAConstantClimate() {
    VolatileBalance constant = balance(5, WARM);
    VolatileBalance twice = balance(5, new Season(7, 30, 70), new Season(31, 30, 70.000001));
    PackConductance pack = pack(2e-4, 1e-7);
    assertThat(twice.seasons().constant()).isFalse();
    assertThat(twice.life(pack).days())
        .isCloseTo(constant.life(pack).days(), withPercentage(0.001));
    assertThat(twice.lossPercent(pack, 400))
        .isCloseTo(constant.lossPercent(pack, 400), withPercentage(0.001));
  }

  @Test
  void lifeThroughSeasonsIsWhenTheAllowedLossIsReached() {
    VolatileBalance balance = balance(5, WARM, COOL);
    PackConductance pack = pack(1e-4, 1e-7);
    double days = balance.life(pack).days();
    assertThat(days).isBetween(120.0, 730.0);
    assertThat(balance.lossPercent(pack, days)).isCloseTo(5, withPercentage(1e-5));
    assertThat(balance.life(pack(1e-9, 1e-9)).reached()).isFalse();
  }

  @Test
  void extremesEncloseTheDaysThroughSeasonsWhateverPassesOfWater() {
    Brief wipe = SampleBriefs.alcoholWipe();
    VolatileBalance balance = balance(5, WARM, COOL);
    double[] least = balance.extremes().least();
    double[] most = balance.extremes().most();
    Random random = new Random(3);
    for (int i = 0; i < 200; i++) {
      double water = Math.exp(random.nextDouble(-22, -12));
      double alcohol = Math.exp(random.nextDouble(-10, -6));
      VolatileWalk walk = new VolatileWalk(balance, pack(alcohol, water));
      double[] last = {0, 0};
      walk.through(
          Math.min(wipe.shelfLifeDays(), balance.life(pack(alcohol, water)).days()),
          5,
          (day, point) -> {
            double gone = (point.loss() - last[1]) * balance.chargeG() / alcohol;
            int season = balance.seasons().on((day + last[0]) / 2);
            double factor = FACTORS[season];
            assertThat(gone)
                .isLessThanOrEqualTo(most[season] / factor * (day - last[0]) * (1 + 1e-9));
            assertThat(gone)
                .isGreaterThanOrEqualTo(least[season] / factor * (day - last[0]) * (1 - 1e-9));
            last[0] = day;
            last[1] = point.loss();
          });
    }
  }
}
