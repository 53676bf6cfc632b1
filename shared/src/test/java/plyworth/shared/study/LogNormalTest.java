package plyworth.shared.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import plyworth.shared.quantity.Range;

/** Normal prior and normal reading of known deviation, on the logarithm (analytic). */
class LogNormalTest {

  @Test
  void twoEquallySureFiguresMeetAtTheirGeometricMean() {
    LogNormal both = LogNormal.of(new Range(1, 2, 4)).after(LogNormal.reading(8, 2));
    assertThat(both.range().typical()).isCloseTo(4, within(1e-12));
    assertThat(both.deviation())
        .isCloseTo(LogNormal.reading(8, 2).deviation() / Math.sqrt(2), within(1e-12));
  }

  /** Prior N(0, 4), reading 3 of N(·, 1): posterior N(2.4, 0.8), by hand. */
  @Test
  void precisionsAddUp() {
    LogNormal both = new LogNormal(0, 2).after(new LogNormal(3, 1));
    assertThat(both.mean()).isCloseTo(2.4, within(1e-12));
    assertThat(both.deviation() * both.deviation()).isCloseTo(0.8, within(1e-12));
  }

  @Test
  void rangeOfAReadingIsItsSpreadEitherWay() {
    Range range = LogNormal.reading(10, 1.5).range();
    assertThat(range.low()).isCloseTo(10 / 1.5, within(1e-12));
    assertThat(range.typical()).isCloseTo(10, within(1e-12));
    assertThat(range.high()).isCloseTo(15, within(1e-12));
  }

  @Test
  void certainReadingHolds() {
    assertThat(new LogNormal(0, 2).after(new LogNormal(3, 0))).isEqualTo(new LogNormal(3, 0));
    assertThat(new LogNormal(0, 0).after(new LogNormal(3, 0))).isEqualTo(new LogNormal(3, 0));
  }

  @Test
  void certainFigureIsNotMovedByAnUncertainReading() {
    assertThat(new LogNormal(1, 0).after(new LogNormal(3, 1))).isEqualTo(new LogNormal(1, 0));
  }

  @RepeatedTest(50)
  void orderOfReadingsDoesNotMatterAndEachNarrows(RepetitionInfo info) {
    Random random = new Random(info.getCurrentRepetition());
    LogNormal before = new LogNormal(random.nextGaussian(), random.nextDouble(0.1, 2));
    LogNormal one = new LogNormal(random.nextGaussian(), random.nextDouble(0.1, 2));
    LogNormal other = new LogNormal(random.nextGaussian(), random.nextDouble(0.1, 2));
    LogNormal there = before.after(one).after(other);
    LogNormal back = before.after(other).after(one);
    assertThat(there.mean()).isCloseTo(back.mean(), within(1e-12));
    assertThat(there.deviation()).isCloseTo(back.deviation(), within(1e-12));
    assertThat(there.deviation()).isLessThan(Math.min(before.deviation(), one.deviation()));
  }

  @Test
  void figuresThatCanBeNothingHaveNoLogarithm() {
    assertThatThrownBy(() -> LogNormal.of(new Range(0, 1, 2)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("no logarithm");
  }
}
