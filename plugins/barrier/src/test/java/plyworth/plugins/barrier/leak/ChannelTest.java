package plyworth.plugins.barrier.leak;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;

/** Analytic, with diffusion coefficients from memory. */
class ChannelTest {

  private static final double OXYGEN_IN_AIR_BAR = 0.2095 * 1.01325;

  /** A hole of 30 µm through 80 µm: 2.33600 cm³ of oxygen a day from air at 23 °C. */
  @Test
  void aHoleOfThirtyMicrometresLetsTwoCubicCentimetresOfOxygenInADay() {
    double perBar = Gas.OXYGEN.cm3PerDayAndBar(new Channel(30, 80), 23);
    assertThat(perBar * OXYGEN_IN_AIR_BAR).isCloseTo(2.33600, withPercentage(0.05));
  }

  /** A wrinkle of 50 µm across a seal of 8 mm, 4054.2 Pa of isopropanol at 25 °C. */
  @Test
  void aWrinkleAcrossASealLetsTwentyMicrogramsOfAlcoholOutADay() {
    double perPascal = Gas.ISOPROPANOL.gramsPerDayAndPascal(new Channel(50, 8000), 25);
    assertThat(1000 * perPascal * 4054.2).isCloseTo(0.020740, withPercentage(0.2));
  }

  /** Limit cases: half the resistance is the ends where L = πr/2; long channels go as 1/L. */
  @Test
  void theEndsOfAShortHoleHoldBackAsMuchAsItsLength() {
    double radius = 20;
    double none = new Channel(2 * radius, 0).crossSectionOverLengthM();
    double equal = new Channel(2 * radius, Math.PI / 2 * radius).crossSectionOverLengthM();
    assertThat(none / equal).isCloseTo(2, withPercentage(1e-9));
    assertThat(none).isCloseTo(2 * radius * 1e-6, withPercentage(1e-9));
    double longer = new Channel(10, 1e6).crossSectionOverLengthM();
    assertThat(longer / new Channel(10, 2e6).crossSectionOverLengthM())
        .isCloseTo(2, withPercentage(0.01));
  }

  /** Ideal gas: per pascal diffusion rises with T^1.75 and density falls with T. */
  @Test
  void warmthOpensAChannelByThePowerThreeQuartersOfTemperature() {
    Channel channel = new Channel(50, 5000);
    double ratio =
        Gas.WATER.gramsPerDayAndPascal(channel, 40) / Gas.WATER.gramsPerDayAndPascal(channel, 10);
    assertThat(ratio).isCloseTo(Math.pow(313.15 / 283.15, 0.75), withPercentage(1e-9));
  }
}
