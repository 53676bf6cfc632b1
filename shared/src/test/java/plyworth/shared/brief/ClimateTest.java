package plyworth.shared.brief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.Test;
import plyworth.shared.brief.Climate.Season;

/** Mean kinetic temperature: definition in USP chapter 1160; figures follow from it. */
class ClimateTest {

  private static Climate round(double days, double... celsius) {
    return new Climate(
        "round", DoubleStream.of(celsius).mapToObj(t -> new Season(days, t, 60)).toList());
  }

  @Test
  void aConstantClimateIsItsOwnMeanKineticTemperature() {
    assertThat(new Climate("room", 25, 60).meanKineticC()).isCloseTo(25, within(1e-9));
    assertThat(new Climate("room", 25, 60).constant()).isTrue();
  }

  @Test
  void warmMonthsWeighMoreThanCoolOnesInTheMeanKineticTemperature() {
    assertThat(round(182.5, 20, 30).meanKineticC()).isCloseTo(26.2599, within(1e-3));
    assertThat(round(30, 18, 19, 20, 22, 25, 28, 30, 30, 27, 24, 21, 19).meanKineticC())
        .isCloseTo(24.5276, within(1e-3));
  }

  @Test
  void oneHotWeekInAYearLiftsTheMeanKineticTemperatureByNearlyADegree() {
    Climate year = new Climate("year", List.of(new Season(357, 22, 60), new Season(7, 40, 60)));
    assertThat(year.meanKineticC()).isCloseTo(22.9560, within(1e-3));
    assertThat(year.constant()).isFalse();
    assertThat(year.temperatureC()).isEqualTo(40);
  }

  @Test
  void aClimateWithoutSeasonsOrWithAnEmptySeasonIsRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Climate("none", List.of()));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Season(0, 20, 50))
        .withMessageContaining("days");
  }
}
