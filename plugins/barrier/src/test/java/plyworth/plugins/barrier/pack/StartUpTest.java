package plyworth.plugins.barrier.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import plyworth.plugins.barrier.Bench;
import plyworth.plugins.barrier.course.VolatileBalance;
import plyworth.plugins.barrier.diffusion.LayerStack.Moment;
import plyworth.shared.brief.Brief;
import plyworth.shared.brief.VolatileContent;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.structure.LayerNotation;
import plyworth.shared.structure.Structure;

class StartUpTest {

  private static final VolatileContent PAD = new VolatileContent("isopropanol", 0.70, 1.0, 5);
  private static final Brief BRIEF =
      Bench.brief(Bench.product(1, null, null, PAD), Bench.sachet(60, 80, 8), 25, 60, 1095);

  private static final BarrierModel MODEL = BarrierModel.of(context());

  private static ScoringContext context() {
    return Bench.context(
        BRIEF,
        Bench.material("sheet", "ipa-permeability", 0.3, "ipa-diffusivity", 1, "o2-rate", 1));
  }

  private static StartUp start(String notation) {
    Structure structure = LayerNotation.readStructure(notation);
    return StartUp.of(MODEL, structure, MODEL.demand().alcohol().orElseThrow()).orElseThrow();
  }

  /** Analytic: L²/6D with L = 100 µm and D = 1 µm²/s is 1666.67 s. */
  @Test
  void oneSheetLagsByItsThicknessSquaredOverSixDiffusivities() {
    assertThat(start("sheet 100 um").lagDays() * 86_400).isCloseTo(1666.67, withPercentage(0.001));
  }

  /** Crank's series: at three lags the flow is 98.56 % of the steady one (analytic). */
  @Test
  void flowOfOneSheetIsSteadyAfterThreeLags() {
    StartUp start = start("sheet 100 um");
    assertThat(start.steadyDay(start.course()) / start.lagDays()).isBetween(2.5, 3.0);
  }

  @Test
  void lagIsHoursAgainstYearsBehindFoil() {
    StartUp start =
        start(
            "kraft-paper 50 g/m2 / ldpe 12 um @extrusion-lamination / aluminium-foil 7 um"
                + " / eaa 25 um @extrusion-coating");
    assertThat(start.lagDays()).isBetween(1e-5, 2.0);
    List<Moment> course = start.course();
    Moment last = course.get(course.size() - 1);
    assertThat(last.entered()).isGreaterThan(last.left());
    assertThat(start.heldG()).isBetween(1e-4, 0.01);
  }

  @Test
  void layerWithoutADiffusionCoefficientIsNamed() {
    Structure structure = LayerNotation.readStructure("bopet-met 12 um / ldpe 40 um");
    VolatileBalance balance = MODEL.demand().alcohol().orElseThrow();
    assertThat(StartUp.of(MODEL, structure, balance)).isEmpty();
    assertThat(StartUp.unknown(MODEL, structure, balance.permeant()).orElseThrow().material())
        .isEqualTo("bopet-met");
  }
}
