package plyworth.plugins.barrier;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import plyworth.shared.brief.Brief;
import plyworth.shared.brief.Handling;
import plyworth.shared.scoring.SampleBriefs;
import plyworth.shared.structure.Layer;

class DamageTest {

  private static final Layer FOIL = Layer.web("aluminium-foil", 7);
  private static final Layer PET = Layer.web("bopet", 12);

  private static double multiplier(Layer layer, Handling handling) {
    Brief sample = SampleBriefs.sugarStick();
    Brief brief =
        new Brief(
            sample.product(),
            sample.climate(),
            sample.shelfLifeDays(),
            sample.pack(),
            sample.machine(),
            sample.market(),
            sample.order(),
            handling);
    return new Damage(Bench.context(brief)).multiplier(layer, null);
  }

  /** Common practice; multipliers after 20 full strokes of ASTM F392 from memory. */
  @Test
  void theHarderAPackIsTreatedTheMoreItsFoilLetsThrough() {
    assertThat(multiplier(FOIL, Handling.FLAT)).isEqualTo(1);
    assertThat(multiplier(FOIL, Handling.FORMED)).isBetween(1.5, 10.0);
    assertThat(multiplier(FOIL, Handling.SHIPPED)).isBetween(3.0, 100.0);
    assertThat(multiplier(FOIL, Handling.ROUGH)).isGreaterThan(multiplier(FOIL, Handling.SHIPPED));
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
