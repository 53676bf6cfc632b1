package plyworth.workbench.robustness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import plyworth.shared.quantity.Range;
import plyworth.workbench.engine.table.Progress;

class SensitivityTest {

  private static final Sensitivity.Plan MANY = new Sensitivity.Plan(32_768, 1);
  private static final Sensitivity.Plan FEW = new Sensitivity.Plan(1024, 1);

  private static Sensitivity of(int n, ToDoubleFunction<double[]> figure, Sensitivity.Plan plan) {
    return Sensitivity.of(inputs(n), figure, plan, Progress.NONE);
  }

  private static List<UncertainInput> inputs(int n) {
    return IntStream.range(0, n)
        .mapToObj(i -> new UncertainInput("m/x" + i, new Range(0, 0.5, 1), false))
        .toList();
  }

  private static List<Influence> inOrder(Sensitivity sensitivity) {
    return sensitivity.influences().stream()
        .sorted(Comparator.comparing(influence -> influence.input().id()))
        .toList();
  }

  private static void agree(
      Sensitivity sensitivity, double[] first, double[] total, Offset<Double> error) {
    List<Influence> influences = inOrder(sensitivity);
    for (int i = 0; i < first.length; i++) {
      assertThat(influences.get(i).first().estimate()).isCloseTo(first[i], error);
      assertThat(influences.get(i).total().estimate()).isCloseTo(total[i], error);
      assertThat(first[i])
          .isBetween(influences.get(i).first().low(), influences.get(i).first().high());
      assertThat(total[i])
          .isBetween(influences.get(i).total().low(), influences.get(i).total().high());
    }
  }

  /** sin x₁ + 7 sin² x₂ + 0.1 x₃⁴ sin x₁, each x uniform from −π to π. */
  private static double ishigami(double[] u) {
    double[] x = IntStream.range(0, 3).mapToDouble(i -> Math.PI * (2 * u[i] - 1)).toArray();
    double second = Math.sin(x[1]);
    return Math.sin(x[0]) + 7 * second * second + 0.1 * Math.pow(x[2], 4) * Math.sin(x[0]);
  }

  /**
   * Closed form: D₁ = (1 + b π⁴/5)²/2, D₂ = a²/8, D₁₃ = b² π⁸ (1/18 − 1/50), D = 13.84458794;
   * 0.3139, 0.4424 and 0 also stand in the documentation of two open sensitivity libraries.
   */
  @Test
  void ishigamisFunctionHasItsAnalyticIndices() {
    Sensitivity sensitivity = of(3, SensitivityTest::ishigami, MANY);
    agree(
        sensitivity,
        new double[] {0.31390519, 0.44241114, 0},
        new double[] {0.55758886, 0.44241114, 0.24368366},
        within(0.002));
    assertThat(sensitivity.mean()).isCloseTo(3.5, within(0.001));
    assertThat(sensitivity.deviation()).isCloseTo(Math.sqrt(13.84458794), within(0.001));
    assertThat(sensitivity.worlds()).isEqualTo(32_768 * 5);
  }

  /** Closed form (Sobol 1993; Saltelli and others 2010; from memory). */
  @Test
  void theGFunctionHasItsAnalyticIndices() {
    double[] a = {0, 1, 4.5, 9};
    ToDoubleFunction<double[]> product =
        x ->
            IntStream.range(0, 4)
                .mapToDouble(i -> (Math.abs(4 * x[i] - 2) + a[i]) / (1 + a[i]))
                .reduce(1, (p, q) -> p * q);
    Sensitivity sensitivity = of(4, product, MANY);
    agree(
        sensitivity,
        new double[] {0.71649293, 0.17912323, 0.02368572, 0.00716493},
        new double[] {0.7873697, 0.2422676, 0.03432674, 0.01046338},
        within(0.002));
    assertThat(sensitivity.deviation()).isCloseTo(Math.sqrt(0.46522906), within(0.001));
  }

  @Test
  void anInputThatIsAloneExplainsEverything() {
    agree(of(1, x -> Math.exp(x[0]), FEW), new double[] {1}, new double[] {1}, within(0.01));
  }

  @Test
  void anInputThatDoesNothingHasNoShareAtAll() {
    Influence idle = inOrder(of(2, x -> x[0], FEW)).get(1);
    assertThat(idle.first()).isEqualTo(new Influence.Index(0, 0, 0));
    assertThat(idle.total()).isEqualTo(new Influence.Index(0, 0, 0));
  }

  /** Variances of the terms of a sum of uniforms are as the squares of their factors. */
  @Test
  void inASumEveryInputWorksAloneAndTheSharesAddUp() {
    Sensitivity sensitivity = of(3, x -> 3 * x[0] + 2 * x[1] - x[2], FEW);
    double[] shares = {9 / 14.0, 4 / 14.0, 1 / 14.0};
    agree(sensitivity, shares, shares, within(0.005));
    assertThat(sensitivity.alone()).isCloseTo(1, within(0.005));
  }

  @Test
  void inAPureProductNoInputWorksAlone() {
    Sensitivity sensitivity = of(2, x -> (x[0] - 0.5) * (x[1] - 0.5), FEW);
    agree(sensitivity, new double[] {0, 0}, new double[] {1, 1}, within(0.02));
  }

  @Test
  void anEstimateBelowZeroIsShownAsZero() {
    assertThat(new Influence.Index(-0.01, -0.03, 0.02).share()).isZero();
    assertThat(new Influence.Index(1.01, 0.97, 1.02).share()).isEqualTo(1);
  }

  @Test
  void whereNothingVariesThereAreNoShares() {
    Sensitivity flat = of(2, x -> 5, FEW);
    assertThat(flat.varies()).isFalse();
    assertThat(flat.mean()).isEqualTo(5);
    assertThat(flat.influences()).allMatch(i -> Double.isNaN(i.total().estimate()));
    assertThat(of(0, x -> 5, FEW).influences()).isEmpty();
  }

  @Test
  void basePointsWithAnUnknownFigureAreLeftOutAndCounted() {
    Sensitivity sensitivity = of(1, x -> x[0] < 0.25 ? Double.NaN : x[0], FEW);
    assertThat(sensitivity.unknown()).isBetween(400, 500);
    assertThat(sensitivity.mean()).isCloseTo(0.625, within(0.01));
    Sensitivity nothing = of(1, x -> Double.NaN, FEW);
    assertThat(nothing.unknown()).isEqualTo(1024);
    assertThat(nothing.varies()).isFalse();
  }

  @Test
  void theSameSeedGivesTheSameAndAnotherAnother() {
    Sensitivity once = of(3, SensitivityTest::ishigami, FEW);
    assertThat(of(3, SensitivityTest::ishigami, FEW)).isEqualTo(once);
    assertThat(of(3, SensitivityTest::ishigami, new Sensitivity.Plan(1024, 2)).influences())
        .isNotEqualTo(once.influences());
  }

  @Test
  void progressReachesTheEndAndCancellingStops() {
    AtomicLong most = new AtomicLong();
    Progress counting =
        new Progress() {
          @Override
          public void scored(long worlds, long of) {
            most.accumulateAndGet(worlds, Math::max);
            assertThat(of).isEqualTo(64 * 4);
          }

          @Override
          public boolean cancelled() {
            return false;
          }
        };
    Sensitivity.Plan plan = new Sensitivity.Plan(64, 1);
    Sensitivity.of(inputs(2), x -> x[0], plan, counting);
    assertThat(most).hasValue(64 * 4);
    Progress cancelling =
        new Progress() {
          @Override
          public void scored(long worlds, long of) {}

          @Override
          public boolean cancelled() {
            return true;
          }
        };
    assertThatThrownBy(() -> Sensitivity.of(inputs(2), x -> x[0], plan, cancelling))
        .isInstanceOf(CancellationException.class);
  }

  @Test
  void aNumberOfPointsThatIsNoPowerOfTwoIsRefused() {
    assertThatThrownBy(() -> new Sensitivity.Plan(1000, 1))
        .hasMessageContaining("1000 base points are not a power of two");
  }
}
