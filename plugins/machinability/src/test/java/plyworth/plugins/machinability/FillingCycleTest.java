package plyworth.plugins.machinability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The cycle of an intermittent machine: repeat 200 mm, 1 m/s, 10 m/s², jaw travel 0.1 s, dwell
 * factor 1.25. Expected figures: arithmetic.
 */
class FillingCycleTest {

  private static FillingCycle cycle(double dwell, double fillLimit) {
    return new FillingCycle(FillingCycle.feed(0.2, 1, 10), 1.25 * dwell, 0.1, fillLimit);
  }

  @Test
  void aLongRepeatRunsAtSpeedAndAShortOneNeverReachesIt() {
    assertThat(FillingCycle.feed(0.2, 1, 10)).isCloseTo(0.300, within(1e-12));
    assertThat(FillingCycle.feed(0.08, 1, 10)).isCloseTo(0.17889, withPercentage(0.1));
  }

  @ParameterizedTest
  @CsvSource({"0.1401, 104.3", "0.2251, 88.06", "0.3164, 75.42", "0.4098, 65.77"})
  void dwellCostsPacks(double dwell, double packs) {
    assertThat(cycle(dwell, 1000).packsPerMinute()).isCloseTo(packs, withPercentage(0.1));
  }

  @Test
  void fillingLimitsWhatSealingWouldAllow() {
    FillingCycle cycle = cycle(0.1401, 60);
    assertThat(cycle.packsPerMinute()).isEqualTo(60);
    assertThat(cycle.limit()).isEqualTo("filling");
    assertThat(cycle(0.4098, 1000).limit()).isEqualTo("dwell");
    assertThat(cycle(0.05, 1000).limit()).isEqualTo("feed");
  }
}
