package plyworth.plugins.barrier.diffusion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plyworth.plugins.barrier.diffusion.LayerStack.Moment;

class LayerStackTest {

  /** One layer with L = 1, D = 1, C1 = 1: days are D·t/L². */
  private static final DiffusionLayer SHEET = DiffusionLayer.of(1, 1);

  private static final List<DiffusionLayer> LAMINATE =
      List.of(DiffusionLayer.of(0.1, 0.02), DiffusionLayer.of(5, 0.4), DiffusionLayer.of(0.7, 0.1));

  private static Moment last(List<DiffusionLayer> layers, double days, int cells, int steps) {
    return new LayerStack(layers, cells).course(day -> 1, days, steps).get(steps);
  }

  /** Crank, Mathematics of Diffusion (from memory): what has left a plane sheet. */
  private static double left(double tau) {
    double sum = 0;
    for (int n = 1; n <= 60; n++) {
      sum += (n % 2 == 0 ? 1 : -1) / (double) (n * n) * Math.exp(-n * n * Math.PI * Math.PI * tau);
    }
    return tau - 1.0 / 6 - 2 / (Math.PI * Math.PI) * sum;
  }

  private static double flow(double tau) {
    double sum = 0;
    for (int n = 1; n <= 60; n++) {
      sum += (n % 2 == 0 ? 1 : -1) * Math.exp(-n * n * Math.PI * Math.PI * tau);
    }
    return 1 + 2 * sum;
  }

  /** Crank's series; figures analytic. */
  @ParameterizedTest
  @CsvSource({
    "0.10, 0.00788529",
    "0.16666666666666666, 0.0390448",
    "0.25, 0.100516",
    "0.5, 0.334791"
  })
  void whatHasLeftAPlaneSheetFollowsCranksSeries(double tau, double published) {
    assertThat(left(tau)).isCloseTo(published, withPercentage(0.001));
    assertThat(last(List.of(SHEET), tau, 600, 3000).left()).isCloseTo(left(tau), within(1e-6));
  }

  /** Crank's series; figures analytic. */
  @ParameterizedTest
  @CsvSource({
    "0.05, 0.034001",
    "0.10, 0.292900",
    "0.16666666666666666, 0.616725",
    "0.25, 0.830494",
    "0.5, 0.985616"
  })
  void flowOutOfAPlaneSheetFollowsCranksSeries(double tau, double published) {
    assertThat(flow(tau)).isCloseTo(published, within(1e-5));
    double end = tau + 1e-4;
    List<Moment> course = new LayerStack(List.of(SHEET), 600).course(day -> 1, end, 3000);
    double before = course.get(2999).left();
    double step = end / 3000;
    assertThat((course.get(3000).left() - before) / step)
        .isCloseTo(flow(end - step / 2), within(1e-5));
  }

  @Test
  void halvingStepAndCellQuartersTheError() {
    double exact = left(0.2);
    double coarse = last(List.of(SHEET), 0.2, 20, 40).left() - exact;
    double middle = last(List.of(SHEET), 0.2, 40, 80).left() - exact;
    double fine = last(List.of(SHEET), 0.2, 80, 160).left() - exact;
    assertThat(coarse / middle).isBetween(3.4, 4.6);
    assertThat(middle / fine).isBetween(3.4, 4.6);
  }

  @Test
  void whatEntersIsHeldOrLeaves() {
    for (Moment moment : new LayerStack(LAMINATE, 30).course(Math::exp, 2, 500)) {
      assertThat(moment.entered() - moment.left()).isCloseTo(moment.held(), within(1e-9));
    }
  }

  /** Analytic: L²/6D with L = 100 µm and D = 1e-12 m²/s is 1666.67 s. */
  @Test
  void oneLayerHasTheLagOfItsThicknessSquaredOverSixDiffusivities() {
    double seconds = 100 * 100 / 1.0;
    assertThat(TimeLag.days(List.of(DiffusionLayer.of(3, seconds))))
        .isCloseTo(1666.67, within(0.01));
    Moment late = last(List.of(SHEET), 3, 400, 3000);
    assertThat(late.day() - late.left()).isCloseTo(1.0 / 6, within(1e-6));
    assertThat(late.entered() - late.day()).isCloseTo(1.0 / 3, within(1e-6));
  }

  @Test
  void lagOfALaminateIsThatOfTheSolutionInTimeFromEitherSide() {
    List<DiffusionLayer> turned = List.of(LAMINATE.get(2), LAMINATE.get(1), LAMINATE.get(0));
    double lag = TimeLag.days(LAMINATE);
    assertThat(TimeLag.days(turned)).isCloseTo(lag, withPercentage(1e-9));
    LayerStack stack = new LayerStack(LAMINATE, 100);
    Moment late = stack.course(day -> 1, 3, 3000).get(3000);
    assertThat(late.day() - late.left() / stack.steady()).isCloseTo(lag, withPercentage(0.005));
    assertThat(late.held()).isCloseTo(TimeLag.held(LAMINATE), withPercentage(0.001));
  }

  @Test
  void equalLayersAreOneLayer() {
    DiffusionLayer third = DiffusionLayer.of(1.0 / 3, 1.0 / 9);
    List<DiffusionLayer> thirds = List.of(third, third, third);
    assertThat(TimeLag.days(thirds)).isCloseTo(1.0 / 6, within(1e-12));
    assertThat(last(thirds, 0.2, 20, 100).left())
        .isCloseTo(last(List.of(SHEET), 0.2, 60, 100).left(), within(1e-12));
  }

  @Test
  void withoutADrivingForceNothingMoves() {
    Moment end = new LayerStack(LAMINATE, 20).course(day -> 0, 5, 50).get(50);
    assertThat(List.of(end.entered(), end.left(), end.held())).containsOnly(0.0);
  }

  @Test
  void aPerfectBarrierLetsTheLayerBeforeItFillAndNothingPass() {
    List<DiffusionLayer> layers = List.of(SHEET, new DiffusionLayer(1e12, 0));
    Moment end = last(layers, 5, 50, 500);
    assertThat(end.left()).isLessThan(1e-11);
    assertThat(end.entered()).isCloseTo(1, within(1e-4));
  }

  @Test
  void aLayerThatNothingIsKnownOfIsRefused() {
    assertThatThrownBy(() -> new DiffusionLayer(Double.NaN, 1))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("resistance");
  }
}
