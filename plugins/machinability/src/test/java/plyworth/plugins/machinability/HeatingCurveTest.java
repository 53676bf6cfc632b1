package plyworth.plugins.machinability;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plyworth.shared.brief.Machine.SealZone;

/**
 * Warming of a seal interface from 23 °C against worked cases. Expected figures: analytic, by
 * eigenvalue series, finite volumes and numerical Laplace inversion, which agree to 0.01 %, unless
 * a textbook is named.
 */
class HeatingCurveTest {

  private static final double PERFECT = 0;
  private static final double USUAL = 1.0 / 3000;
  private static final List<LayerFigures> FILM = List.of(Laminates.ldpe(50));

  private static HeatingCurve curve(List<LayerFigures> layers, double contact, SealZone zone) {
    return HeatingCurve.of(Laminates.wall(layers), contact, zone, false);
  }

  /** Dwell in ms for jaws and target in °C. */
  private static double dwell(
      List<LayerFigures> layers, double contact, SealZone zone, double jaw, double target) {
    return 1000 * curve(layers, contact, zone).time((jaw - target) / (jaw - 23));
  }

  private static double plain(List<LayerFigures> layers, double contact, double target) {
    return dwell(layers, contact, SealZone.ONE_ON_ONE, 160, target);
  }

  /** Carslaw and Jaeger's series for a slab, from memory: Fo = 0.566129 at θ = 0.314961. */
  @Test
  void twoFilmsInPerfectContactFollowTheSlabSeries() {
    assertThat(dwell(FILM, PERFECT, SealZone.ONE_ON_ONE, 150, 110))
        .isCloseTo(11.936, withPercentage(0.2));
  }

  @ParameterizedTest
  @CsvSource({"1000, 128.59", "2000, 70.16", "3000, 50.69", "5000, 35.14", "10000, 23.51"})
  void contactResistanceStretchesTheDwell(double conductance, double milliseconds) {
    assertThat(dwell(FILM, 1 / conductance, SealZone.ONE_ON_ONE, 150, 110))
        .isCloseTo(milliseconds, withPercentage(0.2));
  }

  @ParameterizedTest
  @CsvSource({"1500, 193.74", "3000, 140.10", "6000, 113.19"})
  void aPaperFoilLaminateSealsInWellUnderAFifthOfASecond(double conductance, double ms) {
    assertThat(plain(Laminates.paperFoil(), 1 / conductance, 105))
        .isCloseTo(ms, withPercentage(0.3));
  }

  @Test
  void laminatesOfTheTradeSealInTheirWorkedTimes() {
    assertThat(plain(Laminates.paperFoil(), PERFECT, 105)).isCloseTo(86.13, withPercentage(0.3));
    assertThat(plain(Laminates.paperPolyester(), USUAL, 105))
        .isCloseTo(147.19, withPercentage(0.3));
    assertThat(plain(Laminates.polyesterFoil(), USUAL, 115)).isCloseTo(80.02, withPercentage(0.3));
    assertThat(dwell(Laminates.boppCast(), USUAL, SealZone.ONE_ON_ONE, 140, 120))
        .isCloseTo(74.20, withPercentage(0.3));
  }

  @Test
  void crossingsTakeLongerThanThePlainSeal() {
    List<LayerFigures> web = Laminates.paperFoil();
    assertThat(dwell(web, USUAL, SealZone.ONE_ON_ONE, 160, 105))
        .isCloseTo(140.1, withPercentage(0.3));
    assertThat(dwell(web, USUAL, SealZone.ONE_ON_TWO, 160, 105))
        .isCloseTo(225.1, withPercentage(0.3));
    assertThat(dwell(web, USUAL, SealZone.ONE_ON_THREE, 160, 105))
        .isCloseTo(316.4, withPercentage(0.3));
    assertThat(dwell(Laminates.boppCast(), USUAL, SealZone.ONE_ON_THREE, 140, 120))
        .isCloseTo(174.16, withPercentage(0.3));
  }

  /** A lap puts paper, the worst conductor, twice between one jaw and the interface. */
  @Test
  void aLapTakesLongerThanWebsFaceToFaceWhenTheOutsideResistsHeat() {
    Wall web = Laminates.wall(Laminates.paperFoil());
    HeatingCurve lap = HeatingCurve.of(web, USUAL, SealZone.ONE_ON_TWO, true);
    assertThat(1000 * lap.time(55.0 / 137)).isCloseTo(239.78, withPercentage(0.3));
  }

  /**
   * Incropera, Fundamentals of Heat and Mass Transfer, example 5.4: a wall of 40 mm, insulated
   * behind, from −20 °C in a fluid at 60 °C with 500 W/(m²·K); 43 °C after 480 s (42.92 there with
   * rounded table constants, 43.016 with exact ones).
   */
  @Test
  void aTextbookWallWithConvectionComesOut() {
    List<LayerFigures> wall = List.of(Laminates.layer(40_000, 1, 63.9, 7832, 434));
    double missing = curve(wall, 1.0 / 500, SealZone.ONE_ON_ONE).remaining(480);
    assertThat(60 - missing * 80).isCloseTo(43.016, within(0.05));
  }

  @Test
  void timeAndRemainingAreInverse() {
    HeatingCurve curve = curve(Laminates.polyesterFoil(), USUAL, SealZone.ONE_ON_THREE);
    for (double share : new double[] {0.999, 0.98, 0.9, 0.5, 0.1, 0.001}) {
      assertThat(curve.remaining(curve.time(share))).isCloseTo(share, within(1e-9));
    }
    assertThat(curve.time(1)).isZero();
    assertThat(curve.remaining(0)).isLessThanOrEqualTo(1);
  }

  @Test
  void splittingALayerDoesNotChangeTheDwell() {
    assertThat(plain(Laminates.halved(Laminates.paperFoil()), USUAL, 105))
        .isCloseTo(plain(Laminates.paperFoil(), USUAL, 105), withPercentage(1e-9));
  }

  /** Same Biot number: contact resistance grows with the gauge. */
  @Test
  void dwellGrowsWithTheSquareOfTheGauge() {
    double once = dwell(FILM, USUAL, SealZone.ONE_ON_ONE, 150, 110);
    double thrice = dwell(List.of(Laminates.ldpe(150)), 3 * USUAL, SealZone.ONE_ON_ONE, 150, 110);
    assertThat(thrice / once).isCloseTo(9, within(1e-9));
  }

  @Test
  void betterContactAndHotterJawsNeverLengthenTheDwell() {
    for (SealZone zone : SealZone.values()) {
      double last = Double.POSITIVE_INFINITY;
      for (double factor = 1; factor < 40; factor *= 1.5) {
        double hotter = 110 + 20 * factor;
        double now = dwell(Laminates.paperFoil(), USUAL / factor, zone, hotter, 105);
        assertThat(now).isLessThan(last);
        last = now;
      }
    }
  }
}
