package plyworth.shared.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

class RangeTest {

  @Test
  void unknownIsNeverZero() {
    assertThat(Range.UNKNOWN.known()).isFalse();
    assertThat(Range.UNKNOWN.typical()).isNaN();
    assertThat(Range.exactly(Double.NaN)).isEqualTo(Range.UNKNOWN);
    assertThat(Range.exactly(0).known()).isTrue();
  }

  @Test
  void figuresMustBeInOrder() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Range(2, 1, 3))
        .withMessageContaining("2.0 / 1.0 / 3.0");
    assertThatIllegalArgumentException().isThrownBy(() -> new Range(1, 4, 3));
  }

  @Test
  void halfKnownOrInfiniteIsRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> new Range(Double.NaN, 1, 2));
    assertThatIllegalArgumentException().isThrownBy(() -> new Range(1, Double.NaN, 2));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Range(1, 2, Double.POSITIVE_INFINITY));
  }

  @Test
  void scalingKeepsTheOrder() {
    assertThat(new Range(1, 2, 4).times(0.5)).isEqualTo(new Range(0.5, 1, 2));
    assertThat(Range.UNKNOWN.times(3).known()).isFalse();
  }
}
