package plyworth.shared.scoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.LongToDoubleFunction;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plyworth.shared.quantity.Range;

class DrawTest {

  private static final int WORLDS = 20_000;

  private static double mean(LongToDoubleFunction figure) {
    return LongStream.range(0, WORLDS).mapToDouble(figure).average().orElseThrow();
  }

  /** Variance of the triangular distribution: (a² + m² + b² − am − ab − mb) / 18; textbook. */
  private static double standardError(double a, double m, double b) {
    return Math.sqrt((a * a + m * m + b * b - a * m - a * b - m * b) / 18 / WORLDS);
  }

  @Test
  void meanIsThatOfATriangle() {
    Range range = new Range(-1, 2, 7);
    double mean = mean(seed -> Draw.random(seed).figure("ldpe/x", range));
    assertThat(mean).isCloseTo((-1 + 2 + 7) / 3.0, within(4 * standardError(-1, 2, 7)));
  }

  @Test
  void meanLogarithmIsThatOfATriangleWhereNothingIsBelowZero() {
    Range range = new Range(1, 10, 1000);
    double mean = mean(seed -> Math.log10(Draw.random(seed).figure("ldpe/x", range)));
    assertThat(mean).isCloseTo((0 + 1 + 3) / 3.0, within(4 * standardError(0, 1, 3)));
  }

  /** Tenth, fiftieth and ninetieth percentile of the triangle (0.8, 1.0, 1.6), by inversion. */
  @ParameterizedTest
  @CsvSource({"0.1, 0.92649111", "0.5, 1.11010205", "0.9, 1.38091098"})
  void aQuantileIsThatOfATriangle(double quantile, double figure) {
    Range belowZero = new Range(0.8 - 2, 1.0 - 2, 1.6 - 2);
    assertThat(Draw.at(input -> quantile).figure("ldpe/x", belowZero))
        .isCloseTo(figure - 2, within(1e-8));
    Range logarithmic = new Range(Math.exp(0.8), Math.exp(1.0), Math.exp(1.6));
    assertThat(Math.log(Draw.at(input -> quantile).figure("ldpe/x", logarithmic)))
        .isCloseTo(figure, within(1e-8));
  }

  @Test
  void everyFigureLiesInItsRange() {
    Range range = new Range(0.2, 0.3, 9);
    for (long seed = 0; seed < 2000; seed++) {
      assertThat(Draw.random(seed).figure("a", range))
          .isBetween(range.low() * (1 - 1e-12), range.high() * (1 + 1e-12));
    }
  }

  @Test
  void sameInputOfOneWorldIsTheSameFigure() {
    Range range = new Range(1, 2, 3);
    Draw draw = Draw.random(42);
    assertThat(draw.figure("ldpe/x", range)).isEqualTo(draw.figure("ldpe/x", range));
    assertThat(Draw.random(42).figure("ldpe/x", range)).isEqualTo(draw.figure("ldpe/x", range));
    assertThat(Draw.random(43).figure("ldpe/x", range)).isNotEqualTo(draw.figure("ldpe/x", range));
  }

  /** Correlation of independent samples has the standard error 1/√n. */
  @Test
  void twoInputsOfOneWorldDoNotGoTogether() {
    Range range = new Range(-1, 0, 1);
    double covariance =
        mean(
            seed ->
                Draw.random(seed).figure("ldpe/o2-permeability", range)
                    * Draw.random(seed).figure("ldpe/wv-permeability", range));
    double variance = 1 / 6.0;
    assertThat(covariance / variance).isCloseTo(0, within(4 / Math.sqrt(WORLDS)));
  }

  @Test
  void certainAndUnknownAreLeftAlone() {
    assertThat(Draw.random(1).figure("a", Range.exactly(5))).isEqualTo(5);
    assertThat(Draw.random(1).figure("a", Range.UNKNOWN)).isNaN();
    assertThat(Draw.TYPICAL.figure("a", new Range(1, 2, 3))).isEqualTo(2);
  }
}
