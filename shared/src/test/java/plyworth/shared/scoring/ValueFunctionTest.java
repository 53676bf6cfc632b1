package plyworth.shared.scoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

class ValueFunctionTest {

  private static final ValueFunction BAND = ValueFunction.linear(0, 0, 2, 1, 3, 1, 6, 0);

  @Test
  void linesRunBetweenThePointsAndStayLevelOutside() {
    assertThat(BAND.value(1)).isEqualTo(0.5);
    assertThat(BAND.value(2.5)).isEqualTo(1);
    assertThat(BAND.value(4.5)).isEqualTo(0.5);
    assertThat(BAND.value(-9)).isZero();
    assertThat(BAND.value(99)).isZero();
    assertThat(BAND.value(Double.NaN)).isNaN();
  }

  @Test
  void logarithmMakesEveryDecadeWorthTheSame() {
    ValueFunction decades = ValueFunction.logarithmic(0.01, 1, 100, 0);
    assertThat(decades.value(0.1)).isCloseTo(0.75, within(1e-12));
    assertThat(decades.value(1)).isCloseTo(0.5, within(1e-12));
    assertThat(decades.value(10)).isCloseTo(0.25, within(1e-12));
    assertThat(decades.value(0)).isEqualTo(1);
    assertThat(decades.value(-3)).isEqualTo(1);
  }

  @Test
  void spanEnclosesTheValueOfEveryFigureBetween() {
    Random random = new Random(5);
    for (int i = 0; i < 2000; i++) {
      double low = random.nextDouble() * 8 - 1;
      double high = low + random.nextDouble() * 4;
      double[] span = BAND.valueBetween(low, high);
      double value = BAND.value(low + random.nextDouble() * (high - low));
      assertThat(value).isBetween(span[0], span[1]);
    }
    assertThat(BAND.valueBetween(1, 5)).containsExactly(BAND.value(5), 1);
  }

  @Test
  void unknownMayBeWorthAnything() {
    assertThat(BAND.valueBetween(Double.NaN, 2)).containsExactly(0, 1);
    assertThat(BAND.valueBetween(2, Double.NaN)).containsExactly(0, 1);
  }

  @Test
  void pointsThatMakeNoFunctionAreRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> ValueFunction.linear(1, 0))
        .withMessageContaining("two or more points");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> ValueFunction.linear(2, 0, 1, 1))
        .withMessageContaining("1.0 follows 2.0");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> ValueFunction.linear(1, 0, 2, 1.2))
        .withMessageContaining("the value at 2.0 is 1.2");
    assertThatIllegalArgumentException()
        .isThrownBy(() -> ValueFunction.logarithmic(0, 0, 2, 1))
        .withMessageContaining("above 0");
  }
}
