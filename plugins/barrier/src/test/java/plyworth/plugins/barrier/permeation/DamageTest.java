package plyworth.plugins.barrier.permeation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import plyworth.plugins.barrier.Bench;
import plyworth.plugins.barrier.pack.PackBarrier;
import plyworth.shared.brief.Brief;
import plyworth.shared.brief.Handling;
import plyworth.shared.scoring.SampleBriefs;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.structure.Layer;

class DamageTest {

  private static final Layer FOIL = Layer.web("aluminium-foil", 7);
  private static final Layer PET = Layer.web("bopet", 12);

  private static double multiplier(Layer layer, Handling handling) {
    Brief brief = SampleBriefs.sugarStick().handled(handling);
    return new Damage(Bench.context(brief), 1).multiplier(layer, null);
  }

  /** Common practice; multipliers after 20 full strokes of ASTM F392 from memory. */
  @Test
  void theHarderAPackIsTreatedTheMoreItsFoilLetsThrough() {
    assertThat(multiplier(FOIL, Handling.FLAT)).isEqualTo(1);
    assertThat(multiplier(FOIL, Handling.FORMED)).isBetween(1.5, 10.0);
    assertThat(multiplier(FOIL, Handling.SHIPPED)).isBetween(3.0, 100.0);
    assertThat(multiplier(FOIL, Handling.ROUGH)).isGreaterThan(multiplier(FOIL, Handling.SHIPPED));
  }

  /** Common practice: foil that is flexed on its way keeps less well than foil left in peace. */
  @Test
  void aFoilPackKeepsForFewerDaysTheHarderItIsTreatedWhileItsFlatFiguresStay() {
    double before = Double.POSITIVE_INFINITY;
    double flat = barrier(Handling.FLAT).wvtr();
    for (Handling handling : List.of(Handling.FORMED, Handling.SHIPPED, Handling.ROUGH)) {
      PackBarrier barrier = barrier(handling);
      assertThat(barrier.days()).isLessThan(before);
      assertThat(barrier.wvtr()).isEqualTo(flat);
      before = barrier.days();
    }
  }

  private static PackBarrier barrier(Handling handling) {
    ScoringContext context = Bench.context(SampleBriefs.seasoningStick().handled(handling));
    return Bench.barrier(context, "kraft-paper 50 g/m2 / aluminium-foil 7 um / ldpe 20 um");
  }

  @Test
  void plainFilmBendsWithoutHarm() {
    for (Handling handling : Handling.values()) {
      assertThat(multiplier(PET, handling)).isEqualTo(1);
    }
  }

  /**
   * ASTM F392 at 45 cycles a minute, test-laboratory pages: condition C is 6 minutes, hence 270
   * full strokes; D is 20 full strokes, E 20 partial ones.
   */
  @Test
  void handlingStandsForTheStrokesOfTheFlexTest() {
    assertThat((double) Handling.ROUGH.strokes()).isCloseTo(45 * 6, withPercentage(1e-9));
    assertThat(Handling.SHIPPED.strokes()).isEqualTo(20);
    assertThat(Handling.FORMED.strokes()).isEqualTo(20);
  }
}
