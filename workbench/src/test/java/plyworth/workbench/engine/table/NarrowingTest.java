package plyworth.workbench.engine.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;

class NarrowingTest {

  @Test
  void whatAFloatHoldsIsKept() {
    for (double figure : new double[] {0, 1, -3, 0.5, 12.25, 1e6, Float.MIN_VALUE}) {
      assertThat((double) Narrowing.toOdd(figure)).isEqualTo(figure);
    }
    assertThat(Narrowing.toOdd(Double.NaN)).isNaN();
  }

  @Test
  void aFigureThatIsNotEqualToAWholeNumberIsNeverNarrowedToIt() {
    for (double whole : new double[] {0, 1, 2, 100, -7}) {
      double next = Math.nextUp(whole);
      double previous = Math.nextDown(whole);
      assertThat((double) Narrowing.toOdd(next)).isGreaterThan(whole);
      assertThat((double) Narrowing.toOdd(previous)).isLessThan(whole);
    }
  }

  @Test
  void whatNoFloatHoldsBecomesTheNeighbourWhoseLastBitIsOne() {
    Random random = new Random(9);
    for (int i = 0; i < 100_000; i++) {
      double figure = (random.nextDouble() - 0.5) * Math.pow(2, random.nextInt(290) - 150);
      float narrowed = Narrowing.toOdd(figure);
      assertThat(Float.floatToRawIntBits(narrowed) & 1).isEqualTo(1);
      assertThat(narrowed).isBetween(Narrowing.down(figure), Narrowing.up(figure));
    }
  }

  @Test
  void narrowingKeepsTheOrderAndStaysWithinOneStep() {
    Random random = new Random(5);
    for (int i = 0; i < 20_000; i++) {
      double a = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(60) - 30);
      double b = a * (1 + random.nextDouble() * 1e-7);
      assertThat(Narrowing.toOdd(Math.min(a, b)))
          .isLessThanOrEqualTo(Narrowing.toOdd(Math.max(a, b)));
      assertThat((double) Narrowing.down(a)).isLessThanOrEqualTo(a);
      assertThat((double) Narrowing.up(a)).isGreaterThanOrEqualTo(a);
      assertThat(Narrowing.toOdd(a)).isBetween(Narrowing.down(a), Narrowing.up(a));
    }
  }

  @Test
  void figuresBeyondAFloatStayFinite() {
    assertThat(Narrowing.toOdd(-1e300)).isEqualTo(-Float.MAX_VALUE);
    assertThat(Narrowing.toOdd(1e300)).isEqualTo(Float.MAX_VALUE);
  }
}
