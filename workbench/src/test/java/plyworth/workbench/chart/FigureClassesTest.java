package plyworth.workbench.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Figures in classes with round bounds. */
class FigureClassesTest {

  @Test
  void boundsAreRoundAndAFigureOnOneBelongsToTheClassAbove() {
    FigureClasses classes = FigureClasses.of(new double[] {11.3, 14, 19.9, 27.1});
    assertThat(classes.bounds()).containsExactly(15, 20, 25);
    assertThat(classes.of(14.99)).isZero();
    assertThat(classes.of(15)).isEqualTo(1);
    assertThat(classes.of(27.1)).isEqualTo(3);
  }

  @Test
  void figuresOverDecadesAreClassedByDecades() {
    FigureClasses classes = FigureClasses.of(new double[] {0.03, 0.4, 7, 52});
    assertThat(classes.bounds()).containsExactly(0.1, 1, 10);
  }

  @Test
  void theUnknownHasNoClassAndWhatIsAllAlikeHasOne() {
    FigureClasses classes = FigureClasses.of(new double[] {3, Double.NaN, 3});
    assertThat(classes.size()).isEqualTo(1);
    assertThat(classes.of(3)).isZero();
    assertThat(classes.of(Double.NaN)).isEqualTo(FigureClasses.UNKNOWN);
    assertThat(FigureClasses.of(new double[0]).size()).isEqualTo(1);
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void thereAreNeverMoreThanFiveClassesAndTheFirstAndLastAreUsed(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < 200; i++) {
      double scale = Math.pow(10, random.nextDouble(-6, 6));
      double spread = Math.pow(10, random.nextDouble(0, 7));
      double offset = random.nextBoolean() ? -scale * spread / 2 : scale;
      double[] figures =
          IntStream.range(0, 20)
              .mapToDouble(k -> offset + scale * spread * random.nextDouble())
              .toArray();
      FigureClasses classes = FigureClasses.of(figures);
      int[] used = IntStream.range(0, figures.length).map(k -> classes.of(figures[k])).toArray();
      assertThat(classes.size()).as(classes + " seed " + seed).isLessThanOrEqualTo(5);
      assertThat(IntStream.of(used).min()).as(classes + " seed " + seed).hasValue(0);
      assertThat(IntStream.of(used).max())
          .as(classes + " seed " + seed)
          .hasValue(classes.size() - 1);
    }
  }
}
