package plyworth.plugins.barrier.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;
import static plyworth.plugins.barrier.course.Courses.DRY_FOOD;
import static plyworth.plugins.barrier.course.Courses.constant;
import static plyworth.plugins.barrier.course.Courses.moisture;
import static plyworth.plugins.barrier.course.Courses.pack;

import java.util.List;
import org.junit.jupiter.api.Test;
import plyworth.plugins.barrier.Bench;
import plyworth.plugins.barrier.climate.Seasons;
import plyworth.plugins.barrier.course.Balance;
import plyworth.plugins.barrier.course.Courses;
import plyworth.plugins.barrier.course.Mechanism;
import plyworth.plugins.barrier.course.ProtectionNeeded;
import plyworth.plugins.barrier.pack.BarrierModel;
import plyworth.plugins.barrier.pack.FormedPack;
import plyworth.plugins.barrier.pack.PackBarrier;
import plyworth.plugins.barrier.permeation.Permeant;
import plyworth.shared.brief.Brief;
import plyworth.shared.brief.Climate.Season;
import plyworth.shared.brief.MoistureLimit;
import plyworth.shared.brief.OxygenLimit;
import plyworth.shared.brief.Pack;
import plyworth.shared.scoring.Explanation.Table;
import plyworth.shared.structure.LayerNotation;

class ProtectionNeededTest {

  private static double need(Balance balance, double conductance, double days) {
    return ProtectionNeeded.of(new Mechanism(Permeant.WATER, balance), pack(conductance), days)
        .times();
  }

  /** Analytic: 0.30 g/(m²·day) keep for 273.77 days at 30 °C 75 % RH; a year needs less. */
  @Test
  void theDrynessOfAYearSetsTheHighestWaterRate() {
    double times = need(moisture(DRY_FOOD, 0, constant(30, 75)), 9.44142e-5 * 0.0144, 365);
    assertThat(0.30 * times).isCloseTo(0.30 * 273.77 / 365, withPercentage(0.05));
  }

  /** Analytic: 250 g, 100 ppm, 150 cm³ at 2 % oxygen, 0.09 m²: at most 2.11451 for a year. */
  @Test
  void theExplanationNamesTheHighestOxygenRate() {
    Pack pillow = new Pack(Pack.Format.PILLOW, 200, 225, 10, 10, 150);
    Brief brief =
        Bench.brief(Bench.product(250, null, new OxygenLimit(100, 2), null), pillow, 23, 50, 365);
    var film = Bench.material("film", "o2-rate", 1.5, "wv-rate", 1, "o2-activation", 0);
    var model = BarrierModel.of(Bench.context(brief, film));
    var structure = LayerNotation.readStructure("film 20 um");
    Table table =
        (Table)
            ProtectionSection.of(
                    model, PackBarrier.of(model, structure), new FormedPack(model, structure))
                .orElseThrow();
    List<Object> row = table.rows().get(0);
    assertThat((double) row.get(7)).isCloseTo(2.11451, withPercentage(0.05));
    assertThat((double) row.get(4)).isCloseTo(2.11451 * 0.09, withPercentage(0.05));
    assertThat((double) row.get(8) * (double) row.get(9)).isEqualTo((double) row.get(7));
  }

  @Test
  void aPackThatConductsAsMuchAsItMayLastsAsLongAsAskedThroughSeasons() {
    Seasons year = Courses.seasons(new Season(150, 30, 75), new Season(215, 20, 55));
    Balance balance = moisture(DRY_FOOD, 50, year);
    double times = need(balance, 1e-6, 500);
    assertThat(Courses.days(balance, 1e-6 * times)).isCloseTo(500, withPercentage(1e-6));
  }

  @Test
  void anyPackWillDoWhereNothingDrivesAndNoneWhereTheProductIsSpoiltAlready() {
    assertThat(need(moisture(DRY_FOOD, 0, constant(30, 40)), 1e-6, 365)).isInfinite();
    MoistureLimit spoilt = new MoistureLimit(DRY_FOOD.sorption(), 20, 0.5, 0.5);
    assertThat(need(moisture(spoilt, 0, constant(30, 75)), 1e-6, 365)).isZero();
  }
}
