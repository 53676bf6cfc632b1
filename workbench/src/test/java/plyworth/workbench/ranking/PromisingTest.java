package plyworth.workbench.ranking;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class PromisingTest {

  static LongStream seeds() {
    return LongStream.rangeClosed(1, 20);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void allThatReachTheFloorComeOnceAndTheHigherFirstButForSmallDifferences(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    double[] bounds = random.doubles(1 + random.nextInt(2000)).toArray();
    double floor = random.nextDouble();
    int[] places = Promising.first(bounds, floor);
    assertThat(places)
        .containsExactlyInAnyOrder(
            IntStream.range(0, bounds.length).filter(i -> bounds[i] >= floor).toArray());
    for (int i = 1; i < places.length; i++) {
      assertThat(bounds[places[i]]).isLessThan(bounds[places[i - 1]] + 0.01);
    }
  }

  @Test
  void whereAllAreLevelTheFirstPlaceComesFirst() {
    assertThat(Promising.first(new double[] {0.5, 0.5, 0.5}, Double.NEGATIVE_INFINITY))
        .containsExactly(0, 1, 2);
    assertThat(Promising.first(new double[] {}, 0)).isEmpty();
  }
}
