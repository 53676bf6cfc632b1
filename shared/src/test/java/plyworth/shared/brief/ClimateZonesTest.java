package plyworth.shared.brief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Climatic zones against the vapour pressures published with them. */
class ClimateZonesTest {

  /**
   * Vapour pressures in mbar as published with the zones (ICH guidelines, after Grimm 1985); those
   * of IVa, IVb and the accelerated test computed from the Magnus form. Saturation by the Magnus
   * form with the constants of Alduchov and Eskridge, from memory.
   */
  @ParameterizedTest
  @CsvSource({
    "I, 11.2, 2",
    "II, 19.0, 2",
    "III, 15.0, 2",
    "IVa, 27.538, 0.01",
    "IVb, 31.775, 0.01",
    "accelerated, 55.310, 0.01"
  })
  void vapourPressureOfAZone(String zone, double mbar, double tolerancePercent) {
    Climate climate = ClimateZones.require(zone);
    double t = climate.temperatureC();
    double saturatedMbar = 6.1094 * Math.exp(17.625 * t / (t + 243.04));
    assertThat(climate.humidityPercent() / 100 * saturatedMbar)
        .isCloseTo(mbar, withinPercentage(tolerancePercent));
  }

  @Test
  void aZoneIsRecognisedByItsWholeClimate() {
    assertThat(ClimateZones.of(ClimateZones.require("IVa"))).contains("IVa");
    assertThat(ClimateZones.of(new Climate("shop", 25, 60))).isEmpty();
  }

  @Test
  void anUnknownZoneIsAnsweredWithTheNearest() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> ClimateZones.require("IVB"))
        .withMessageContaining("\"IVb\"");
  }
}
