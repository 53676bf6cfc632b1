package plyworth.plugins.barrier.course;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plyworth.plugins.barrier.Bench;
import plyworth.plugins.barrier.pack.BarrierModel;
import plyworth.plugins.barrier.permeation.PackConductance;
import plyworth.shared.brief.Brief;
import plyworth.shared.brief.VolatileContent;

class LossBoundsTest {

  private static final int PACKS = 600;

  private static Demand demand(String substance, double strength, double allowed, double humidity) {
    VolatileContent content = new VolatileContent(substance, strength, 1.2, allowed);
    Brief brief =
        Bench.brief(
            Bench.product(1, null, null, content), Bench.sachet(60, 80, 8), 25, humidity, 700);
    return BarrierModel.of(Bench.context(brief)).demand();
  }

  @ParameterizedTest
  @CsvSource({
    "isopropanol, 0.7, 5, 50",
    "isopropanol, 0.9, 20, 80",
    "isopropanol, 1, 5, 0",
    "isopropanol, 0.1, 5, 95",
    "ethanol, 0.6, 10, 65"
  })
  void tablesEncloseTheDifferentialEquation(
      String substance, double strength, double allowed, double humidity) {
    Demand demand = demand(substance, strength, allowed, humidity);
    VolatileBalance balance = demand.alcohol().orElseThrow();
    LossBounds bounds = LossBounds.of(demand).orElseThrow();
    Random random = new Random(11);
    for (int i = 0; i < PACKS; i++) {
      double alcohol = Math.exp(random.nextDouble(-22, 0));
      double water = Math.exp(random.nextDouble(-22, 0)) / 100;
      PackConductance conductance = (permeant, season, a) -> permeant.alcohol() ? alcohol : water;
      double loss = balance.lossPercent(conductance, 700);
      double[] low = new double[1];
      double[] high = new double[1];
      double[] waters = {water};
      bounds.enclose(new double[] {alcohol}, waters, waters, 1, low, high);
      String pack = alcohol + ", " + water + ": " + low[0] + " to " + high[0];
      assertThat(loss).as(pack).isBetween(low[0], high[0] + 1e-9);
      if (loss < 10 && strength > 0.5) {
        assertThat(high[0] - low[0]).as(pack).isLessThan(0.02 * loss);
      }
    }
  }

  @ParameterizedTest
  @CsvSource({
    "isopropanol, 0.7, 5, 50",
    "isopropanol, 0.7, 0.1, 30",
    "isopropanol, 0.9, 60, 80",
    "isopropanol, 0.1, 5, 95",
    "ethanol, 0.6, 10, 65"
  })
  void meanActivityFollowsTheDifferentialEquation(
      String substance, double strength, double allowed, double humidity) {
    Demand demand = demand(substance, strength, allowed, humidity);
    VolatileBalance balance = demand.alcohol().orElseThrow();
    VolatileCourse course = balance.courses().get(0);
    Random random = new Random(12);
    for (int i = 0; i < 300; i++) {
      double ratio = Math.exp(random.nextDouble(-10, 14));
      double water = ratio / course.saturatedPa();
      double days = balance.atMost(1, water, water);
      double exact = course.until(allowed / 100, ratio).exposure() * balance.chargeG();
      assertThat(Math.abs(days / exact - 1)).as("ratio " + ratio).isLessThan(1e-5);
    }
  }
}
