package plyworth.plugins.printmethod;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/**
 * Energy balance of a dryer for 5.318 g/m² ethyl acetate from gravure and 1.8 g/m² water from flexo
 * on 12 µm polyester: 20 MJ per 1000 m² at a quarter of the flammable limit, 82 MJ at the usual 4
 * g/m³, 8.7 MJ for water-based flexo, to their printed digits (derived from CRC Handbook and IEC
 * 60079-20-1 figures; air warmed by 50 K and web by 30 K, common practice).
 */
class DryingTest {

  private static final Blend ESTER = Blend.pure("ethyl-acetate");
  private static final double SOLVENT = 1.5 / 0.22 * 0.78;
  private static final double WEB_GRAMMAGE = 16.8;
  private static final double POLYESTER = 1170;

  private static double gravure(double concentration) {
    Drying drying = new Drying(concentration, 0.025, 50, 30);
    return drying.latent(0, SOLVENT, ESTER)
        + drying.airHeatForSolvent(SOLVENT)
        + drying.webHeat(WEB_GRAMMAGE, POLYESTER);
  }

  @Test
  void quarterOfTheFlammableLimitTakesTwentyMegajoules() {
    double concentration = 0.25 * ESTER.lflGrams();
    assertThat(1000 * new Drying(concentration, 0.025, 50, 30).airForSolvent(SOLVENT))
        .isCloseTo(295, within(0.5));
    assertThat(gravure(concentration)).isCloseTo(20, within(0.5));
  }

  @Test
  void usualConcentrationTakesEightyTwoMegajoules() {
    assertThat(1000 * new Drying(4, 0.025, 50, 30).airForSolvent(SOLVENT))
        .isCloseTo(1330, within(5.0));
    assertThat(gravure(4)).isCloseTo(82, within(0.5));
    assertThat(gravure(4) / Drying.MJ_PER_KWH).isCloseTo(23, within(0.5));
  }

  @Test
  void waterBasedFlexoTakesATenthOfThat() {
    Drying drying = new Drying(4, 0.025, 50, 30);
    MakeUp ink = new MakeUp(0.38, 0.57, 0.05);
    double water = ink.wet(1.2) * ink.water();
    double solvent = ink.wet(1.2) * ink.solvent();
    double heat =
        drying.latent(water, solvent, Blend.pure("isopropanol"))
            + drying.airHeatForWater(water)
            + drying.webHeat(WEB_GRAMMAGE, POLYESTER);
    assertThat(heat).isCloseTo(8.7, within(0.05));
  }
}
