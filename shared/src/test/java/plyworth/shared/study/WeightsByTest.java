package plyworth.shared.study;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class WeightsByTest {

  private static String criterion(int i) {
    return "plugin/c" + i;
  }

  private static WeightsBy swings(double... points) {
    Map<String, Double> given = new TreeMap<>();
    IntStream.range(0, points.length).forEach(i -> given.put(criterion(i), points[i]));
    return new WeightsBy.SwingPoints(given);
  }

  private static WeightsBy order(int n) {
    return new WeightsBy.RankOrder(
        IntStream.range(0, n).mapToObj(WeightsByTest::criterion).toList());
  }

  private static double[] weights(WeightsBy by) {
    return IntStream.range(0, by.weights().size())
        .mapToDouble(i -> by.weights().get(criterion(i)))
        .toArray();
  }

  private static double[] numbers(String text) {
    return Arrays.stream(text.split(" ")).mapToDouble(Double::parseDouble).toArray();
  }

  /** Exact fractions: 3/4; 11/18, 5/18; 25/48, 13/48, 7/48; and so on. */
  @ParameterizedTest
  @CsvSource({
    "2, 0.75 0.25",
    "3, 0.61111111 0.27777778 0.11111111",
    "4, 0.52083333 0.27083333 0.14583333 0.0625",
    "5, 0.45666667 0.25666667 0.15666667 0.09 0.04",
    "6, 0.40833333 0.24166667 0.15833333 0.10277778 0.06111111 0.02777778"
  })
  void anOrderWeighsAsTheCentroidOfAllWeightsInThatOrder(int n, String expected) {
    assertThat(weights(order(n))).containsExactly(numbers(expected), within(1e-8));
  }

  /** The weights in an order are the simplex with the corners (1, 0 …), (1/2, 1/2, 0 …) … */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 7, 20})
  void theCentroidIsTheMeanOfTheCorners(int n) {
    double[] mean = new double[n];
    for (int corner = 1; corner <= n; corner++) {
      for (int k = 0; k < corner; k++) {
        mean[k] += 1.0 / corner / n;
      }
    }
    assertThat(weights(order(n))).containsExactly(mean, within(1e-12));
  }

  @Test
  void swingPointsWeighInProportion() {
    assertThat(weights(swings(100, 80, 60, 30, 30)))
        .containsExactly(numbers("0.33333333 0.26666667 0.2 0.1 0.1"), within(1e-8));
    assertThat(weights(swings(0, 0))).containsExactly(0, 0);
  }

  /**
   * Half the range of a value function is half the swing: half the points for the same trade-off.
   */
  @Test
  void halfTheSwingOfOneCriterionLeavesTheOthersInProportion() {
    assertThat(weights(swings(50, 80, 60, 30, 30)))
        .containsExactly(numbers("0.2 0.32 0.24 0.12 0.12"), within(1e-8));
  }

  @Test
  void whatIsNotStatedWeighsNothing() {
    assertThat(new Weighting("w", order(2)).weight("plugin/other")).isZero();
    assertThat(order(0).weights()).isEmpty();
  }

  @Test
  void changedPointsStayPoints() {
    Weighting changed = new Weighting("w", swings(100, 80)).with(criterion(1), 50);
    assertThat(changed.by()).isEqualTo(swings(100, 50));
    assertThat(changed.by().given(criterion(1))).isEqualTo(50);
    assertThat(changed.by().given("plugin/other")).isZero();
  }

  @Test
  void aCriterionMovesToItsNewPlaceAndTheOthersMoveOn() {
    WeightsBy order = new WeightsBy.RankOrder(List.of("a/a", "a/b", "a/c"));
    assertThat(order.with("a/c", 1))
        .isEqualTo(new WeightsBy.RankOrder(List.of("a/c", "a/a", "a/b")));
    assertThat(order.with("a/a", 2))
        .isEqualTo(new WeightsBy.RankOrder(List.of("a/b", "a/a", "a/c")));
    assertThat(order.with("a/d", 9).given("a/d")).isEqualTo(4);
    assertThat(order.with("a/b", 0)).isEqualTo(new WeightsBy.RankOrder(List.of("a/a", "a/c")));
    assertThat(order.given("a/d")).isZero();
  }

  @Test
  void pointsOutOfBoundsAndACriterionThatStandsTwiceAreRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> swings(100, 101))
        .withMessageContaining("plugin/c1 has 101.0 points; it must be 0 to 100");
    assertThatIllegalArgumentException().isThrownBy(() -> swings(Double.NaN));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new WeightsBy.RankOrder(List.of("a/b", "a/c", "a/b")))
        .withMessageContaining("a criterion stands twice in the order");
  }
}
