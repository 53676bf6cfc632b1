package plyworth.plugins.printmethod;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Flammable limits of IEC 60079-20-1:2010 in other units, and Le Chatelier's rule by hand. */
class BlendTest {

  private static final double RELATIVE = 5e-4;

  private static void close(double actual, double expected) {
    assertThat(actual).isCloseTo(expected, within(RELATIVE * expected));
  }

  @Test
  void flammableLimitsInGramsPerCubicMetre() {
    close(Blend.pure("ethyl-acetate").lflGrams(), 72.0243);
    close(0.25 * Blend.pure("ethyl-acetate").lflGrams(), 18.0061);
    close(Blend.pure("ethanol").lflGrams(), 58.3731);
  }

  @Test
  void leChatelierCountsInMolesNotInMass() {
    Blend blend = Blend.ofEthanol(0.7);
    close(blend.moleFraction("ethanol"), 0.816932);
    close(blend.lflPercent(), 2.81642);
    close(blend.lflGrams(), 61.8923);
    double byMass = 1 / (0.7 / 3.1 + 0.3 / 2.0);
    close(byMass, 2.6609);
    assertThat(blend.lflPercent()).isGreaterThan(byMass);
  }

  @Test
  void emissionLimitsInCarbonAreNearlyTwiceAsMuchSolvent() {
    close(100 / Blend.pure("ethyl-acetate").carbon(), 183.384);
    close(100 / Blend.pure("ethanol").carbon(), 191.776);
    close(20 / Blend.pure("ethyl-acetate").carbon(), 36.6768);
  }

  /** CRC Handbook: 2441.3 kJ/kg for water, 404.1 for ethyl acetate. */
  @Test
  void waterTakesSixTimesTheHeatOfEthylAcetate() {
    double ratio = Fluid.named("water").latentHeat() / Blend.pure("ethyl-acetate").latentHeat();
    assertThat(ratio).isCloseTo(6.04, within(0.01));
  }
}
