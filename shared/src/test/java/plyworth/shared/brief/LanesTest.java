package plyworth.shared.brief;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lanes cut from a mother web of 1000 mm with 10 mm trim on each side: arithmetic. */
class LanesTest {

  private static Brief sachetOf(double laneWidthMm) {
    return new Brief(
        new Product(
            "salt",
            Product.Form.CRYSTALS,
            4,
            Set.of(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty()),
        new Climate("room", 23, 50),
        365,
        new Pack(Pack.Format.SACHET_FOUR_SIDE, laneWidthMm / 2, 110, 8, 0, 2),
        new Machine(
            "line",
            8,
            150,
            5,
            500,
            0.3,
            Machine.SealZone.ONE_ON_ONE,
            0.5,
            5,
            0.2,
            1.5,
            0.1,
            60,
            60,
            0.8,
            0.02),
        new Market("eu", 2026, 2030),
        new Order(1e6, 4, 6, 1000, 10));
  }

  @ParameterizedTest
  @CsvSource({"75, 13, 0.975", "75.5, 12, 0.906", "70, 14, 0.98"})
  void lanesAreWholeSoHalfAMillimetreCanCostOne(double lane, int lanes, double efficiency) {
    assertThat(sachetOf(lane).lanesAcrossWeb()).isEqualTo(lanes);
    assertThat(sachetOf(lane).layoutEfficiency()).isCloseTo(efficiency, within(1e-12));
  }

  @ParameterizedTest
  @CsvSource({"39.2, 25", "19.6, 50", "9.8, 100"})
  void lanesThatFillTheWebExactlyAllCount(double lane, int lanes) {
    assertThat(sachetOf(lane).lanesAcrossWeb()).isEqualTo(lanes);
  }

  @Test
  void aPackWiderThanTheWebIsRefused() {
    assertThatThrownBy(() -> sachetOf(990))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("990.0 mm")
        .hasMessageContaining("980.0 mm");
  }
}
