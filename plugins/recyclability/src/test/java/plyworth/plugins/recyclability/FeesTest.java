package plyworth.plugins.recyclability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Fees per 1000 m², by hand from the published rates: UK base fees 2025/26 (gov.uk, 27 June 2025,
 * Table 1) and illustrative red 2026/27 (recycling press, name withheld), plastic packaging tax
 * £223.69/t, Italian paper bands from 1 October 2025 (Italian environment news, name withheld).
 */
class FeesTest {

  private static final double NONE = Double.NaN;

  static List<Arguments> fees() {
    return List.of(
        row(Laminates.PAPER_FOIL, 48.82, 66.72, NONE, 30.18),
        row(Laminates.DISPERSION_PAPER, 14.60, 18.62, NONE, 3.35),
        row(Laminates.PAPER_METALLISED_POLYESTER, 49.10, 67.10, 23.82, NONE),
        row(Laminates.MONO_PE_EVOH, 35.21, 45.36, 18.62, NONE),
        row(Laminates.BOPP_LIGHT_PRINT, 15.99, 20.60, 8.46, NONE),
        row(Laminates.BOPP_HEAVY_PRINT, 15.56, 20.05, 8.23, NONE),
        row(Laminates.POLYESTER_FOIL, 37.81, 48.38, 21.56, NONE),
        row(Laminates.POLYESTER_PE, 31.94, 41.15, 16.89, NONE),
        row(Laminates.BOPP_PE, 20.81, 26.81, 11.01, NONE),
        row(Laminates.PE_POLYAMIDE, 29.09, 37.47, 15.38, NONE),
        row(Laminates.PAPER_BIOPOLYESTER, 43.10, 58.91, NONE, 14.49),
        row(Laminates.PE_PAPER_PE, 49.33, 67.41, NONE, 16.59),
        row(Laminates.FOIL_FREE_PAPER, 38.31, 52.36, NONE, 5.82),
        row(Laminates.MONO_PE, 30.56, 39.38, 16.16, NONE));
  }

  private static Arguments row(Object... figures) {
    return Arguments.of(figures);
  }

  @ParameterizedTest
  @MethodSource("fees")
  void feeIsMassTimesTheRateOfItsCategory(
      String notation, double base, double red, double tax, double italy) {
    Trial uk = Trial.in("uk");
    assertThat(uk.fee("uk-base-2025", notation)).isEqualTo(base, within(0.006));
    assertThat(uk.fee("uk-red-2026", notation)).isEqualTo(red, within(0.006));
    same(uk.fee("uk-tax-2025", notation), tax);
    same(Trial.in("it").fee("it-paper-2025", notation), italy);
  }

  private static void same(double fee, double expected) {
    if (Double.isNaN(expected)) {
      assertThat(fee).isNaN();
    } else {
      assertThat(fee).isEqualTo(expected, within(0.006));
    }
  }

  @Test
  void recycledContentLiftsTheTax() {
    Trial recycled = Trial.in("uk", 2027, 2035, Map.of("recycled-content", 30.0));
    assertThat(recycled.fee("uk-tax-2025", Laminates.MONO_PE)).isZero();
  }
}
