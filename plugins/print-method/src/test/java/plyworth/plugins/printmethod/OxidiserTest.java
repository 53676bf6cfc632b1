package plyworth.plugins.printmethod;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Energy balance of an oxidiser, worked by hand with heating values from formation enthalpies. */
class OxidiserTest {

  private static final double RELATIVE = 5e-4;
  private static final Oxidiser REGENERATIVE = new Oxidiser(820, 60, 0.95);
  private static final double CAPTURED = 1.5 / 0.22 * 0.78 * 0.98;
  private static final double LHV = Blend.pure("ethyl-acetate").lhv();

  private static void close(double actual, double expected) {
    assertThat(actual).isCloseTo(expected, within(RELATIVE * expected));
  }

  @Test
  void concentrationFromWhichNoFuelIsNeeded() {
    close(REGENERATIVE.selfSustaining(LHV), 2.19231);
    close(REGENERATIVE.selfSustaining(Blend.pure("ethanol").lhv()), 1.91275);
    close(new Oxidiser(750, 60, 0.65).selfSustaining(LHV), 13.9327);
  }

  @Test
  void thinExhaustBurnsGas() {
    double volume = CAPTURED * 1000 / 1;
    double fuel = REGENERATIVE.fuel(volume, CAPTURED * 0.99, LHV);
    close(volume, 5211.82);
    close(fuel, 40.7304);
    close(fuel * Oxidiser.GAS_CARBON, 7.4256);
    assertThat(REGENERATIVE.surplus(volume, CAPTURED * 0.99, LHV)).isZero();
  }

  @Test
  void richExhaustNeedsNoneAndNeverANegativeAmount() {
    double volume = CAPTURED * 1000 / 4;
    assertThat(REGENERATIVE.fuel(volume, CAPTURED * 0.99, LHV)).isZero();
    close(REGENERATIVE.surplus(volume, CAPTURED * 0.99, LHV), 14.9709);
  }

  @Test
  void burntSolventIsCarbonDioxideToo() {
    close(CAPTURED * 0.99 * Blend.pure("ethyl-acetate").carbonDioxide(), 10.3093);
  }
}
