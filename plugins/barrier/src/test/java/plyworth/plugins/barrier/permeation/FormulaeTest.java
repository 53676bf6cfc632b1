package plyworth.plugins.barrier.permeation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;

class FormulaeTest {

  /** Published: vapour pressures of the stability zones in mbar, in ICH texts. */
  @Test
  void vapourPressureMeetsThePublishedClimateZones() {
    assertThat(zone(21, 0.45)).isCloseTo(11.2, withPercentage(2)).isCloseTo(11.168, within(0.001));
    assertThat(zone(25, 0.60)).isCloseTo(19.0, withPercentage(2)).isCloseTo(18.970, within(0.001));
    assertThat(zone(30, 0.35)).isCloseTo(15.0, withPercentage(2)).isCloseTo(14.828, within(0.001));
    assertThat(zone(30, 0.70)).isCloseTo(30.0, withPercentage(2)).isCloseTo(29.657, within(0.001));
  }

  /** ICH conditions of long-term zones IVa and IVb and of accelerated storage; analytic. */
  @Test
  void vapourPressureOfTheHotZonesAndOfTheChamber() {
    assertThat(zone(30, 0.65)).isCloseTo(27.538, within(0.001));
    assertThat(zone(30, 0.75)).isCloseTo(31.775, within(0.001));
    assertThat(zone(40, 0.75)).isCloseTo(55.310, within(0.001));
  }

  private static double zone(double celsius, double humidity) {
    return SaturatedVapour.pascal(celsius) * humidity / 100;
  }

  /** Analytic, with 42.7 kJ/mol from memory and 31.3 from Polymer International 30 (1993) 109. */
  @Test
  void oxygenPermeabilityOfLdpeRisesWithTemperatureAsArrhenius() {
    assertThat(Arrhenius.factor(42.7, 23, 38)).isCloseTo(2.30711, withPercentage(0.01));
    assertThat(Arrhenius.factor(31.3, 23, 38)).isCloseTo(1.84559, withPercentage(0.01));
  }

  /** Analytic, from PLA at 0.26 Barrer and 30 °C, J. Membr. Sci. (2006), abstract. */
  @Test
  void oxygenPermeabilityOfPlaMovesTo23Degrees() {
    assertThat(16849 * Arrhenius.factor(24, 30, 23)).isCloseTo(13454, withPercentage(0.1));
  }

  /**
   * Published: a materials consultancy’s worked answer on water through polypropylene, name
   * withheld: 5e-10 g/(m·s) at 25 °C gives 3e-9 at 40 °C and 5e-7 at 95 °C, with 48 kJ/mol.
   */
  @Test
  void waterThroughPolypropyleneNeedsActivationAndVapourPressure() {
    assertThat(water(40)).isCloseTo(2.9485e-9, withPercentage(0.1));
    assertThat(water(95)).isCloseTo(5.434e-7, withPercentage(0.1));
    assertThat(Math.round(water(40) * 1e9)).isEqualTo(3);
    assertThat(Math.round(water(95) * 1e7)).isEqualTo(5);
  }

  private static double water(double celsius) {
    return 5e-10
        * Arrhenius.factor(48, 25, celsius)
        * SaturatedVapour.pascal(celsius)
        / SaturatedVapour.pascal(25);
  }

  /** Analytic limits of a disc in a plane and of a plane sheet over it. */
  @Test
  void coveredPinholeMeetsItsLimits() {
    double disc = 4 * 0.01 * 190_000 * 1e-12;
    assertThat(CoveredPinhole.conductance(0.01, 12, 190_000)).isCloseTo(disc, withPercentage(0.1));
    double sheet = Math.PI * 100 * 100 * 190_000 / 12 * 1e-12;
    assertThat(CoveredPinhole.conductance(100, 12, 190_000)).isCloseTo(sheet, withPercentage(0.01));
  }

  @Test
  void widerPinholesAndThinnerCoversAlwaysPassMore() {
    double last = 0;
    for (double radius = 0.5; radius < 120; radius *= 1.03) {
      double now = CoveredPinhole.conductance(radius, 12, 190_000);
      assertThat(now).isGreaterThan(last);
      assertThat(CoveredPinhole.conductance(radius, 11, 190_000)).isGreaterThanOrEqualTo(now);
      last = now;
    }
  }
}
