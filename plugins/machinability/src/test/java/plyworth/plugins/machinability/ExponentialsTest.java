package plyworth.plugins.machinability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** Arithmetic of columns against {@link Math}. */
class ExponentialsTest {

  private static double decay(double exponent) {
    double[] p = new double[SeriesColumns.ROWS];
    double[] t = new double[SeriesColumns.ROWS];
    Arrays.fill(p, exponent / 3);
    Arrays.fill(t, 3);
    Exponentials.decay(p, t, t);
    return t[0];
  }

  private static double log(double x) {
    double[] column = new double[SeriesColumns.ROWS];
    Arrays.fill(column, x);
    Exponentials.log(column, column);
    return column[0];
  }

  @Test
  void decayIsTheExponential() {
    for (double x = 0; x < 8; x += 0.01) {
      assertThat(decay(x) / Math.exp(-x)).isCloseTo(1, within(5e-14));
    }
    for (double x = 8; x < 1000; x *= 1.1) {
      assertThat(decay(x)).isCloseTo(Math.exp(-x), within(1e-16));
    }
    assertThat(decay(0)).isEqualTo(1);
    assertThat(decay(Double.POSITIVE_INFINITY)).isCloseTo(0, within(1e-16));
    assertThat(decay(Double.NaN)).isNaN();
  }

  @Test
  void logarithmIsExactWhereCurvesNeedItAndRoughFarOff() {
    for (double x = 1.0 / 30; x < 30; x *= 1.01) {
      assertThat(log(x)).isCloseTo(Math.log(x), within(1e-12));
    }
    assertThat(log(1e4)).isCloseTo(Math.log(1e4), withPercentage(0.001));
    assertThat(log(-1)).isNaN();
    assertThat(log(Double.NaN)).isNaN();
  }
}
