package plyworth.plugins.barrier.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import plyworth.plugins.barrier.Bench;
import plyworth.plugins.barrier.permeation.LayerTransmission;
import plyworth.plugins.barrier.permeation.Permeant;
import plyworth.plugins.barrier.permeation.SaturatedVapour;
import plyworth.shared.material.Material;
import plyworth.shared.scoring.SampleBriefs;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.structure.Layer;

class SeriesTest {

  private static final ScoringContext FILMS =
      Bench.context(SampleBriefs.sugarStick(), Bench.seriesFilms());

  private static double otr(String structure) {
    return Bench.barrier(FILMS, structure).otr();
  }

  /**
   * Permeabilities within Table 11.2 of Food Package Engineering, chapter 11 of Biosystems
   * Engineering, p. 345; rates analytic.
   */
  @Test
  void filmRatesFollowFromPermeabilityAndGauge() {
    assertThat(otr("film-pet 12 um")).isCloseTo(133.333, withPercentage(0.001));
    assertThat(otr("film-pe 50 um")).isCloseTo(3800, withPercentage(0.001));
    Material bopp = Bench.material("film-pp", "o2-permeability", 1, "wv-permeability", 130);
    ScoringContext context = Bench.context(SampleBriefs.sugarStick(), bopp);
    assertThat(Bench.barrier(context, "film-pp 20 um").wvtr())
        .isCloseTo(6.5, withPercentage(0.001));
  }

  /** Analytic; the series model as in Polymer Journal 36 (2004) 386. */
  @Test
  void fiveLayersResistInSeries() {
    assertThat(
            otr(
                "film-pet 12 um / film-glue 3 um / film-evoh 5 um / film-glue 3 um"
                    + " / film-pe 50 um"))
        .isCloseTo(1.57999, withPercentage(0.01));
  }

  /** Analytic. */
  @Test
  void withoutItsBarrierLayerTheLaminateIsBarelyBetterThanPolyester() {
    assertThat(otr("film-pet 12 um / film-glue 3 um / film-glue 3 um / film-pe 50 um"))
        .isCloseTo(126.372, withPercentage(0.01));
    assertThat(otr("film-pet 12 um / film-glue 3 um / film-pe 50 um"))
        .isCloseTo(127.581, withPercentage(0.01));
  }

  /**
   * Analytic: 10 g/(m²·day) at 38 °C 90 % RH moved to other climates, polyethylene- and
   * polyester-controlled.
   */
  @Test
  void waterRatesShiftWithTheClimate() {
    assertThat(shifted(33.5, 25, 0.75)).isCloseTo(2.2624, withPercentage(0.05));
    assertThat(shifted(33.5, 23, 0.85)).isCloseTo(2.0754, withPercentage(0.05));
    assertThat(shifted(33.5, 30, 0.75)).isCloseTo(3.7885, withPercentage(0.05));
    assertThat(shifted(33.5, 25, 0.60)).isCloseTo(1.8099, withPercentage(0.05));
    assertThat(shifted(2.9, 25, 0.75)).isCloseTo(3.7892, withPercentage(0.05));
    assertThat(shifted(2.9, 30, 0.75)).isCloseTo(5.1763, withPercentage(0.05));
  }

  private static double shifted(double activation, double celsius, double humidity) {
    Material film =
        Bench.material(
            "film", "o2-rate", 1, "o2-activation", 0, "wv-rate", 10, "wv-activation", activation);
    ScoringContext context =
        Bench.context(
            Bench.brief(
                Bench.product(1, null, null, null),
                Bench.sachet(60, 80, 8),
                celsius,
                100 * humidity,
                365),
            film);
    LayerTransmission layers = BarrierModel.of(context).layers();
    double permeance = layers.inPack(Layer.web("film", 20), null, Permeant.WATER);
    return permeance * humidity * SaturatedVapour.pascal(celsius);
  }

  /**
   * From memory: EVOH at 20 °C, cm³·µm/(m²·day·bar) by RH, straight in the logarithm between the
   * nodes; the ranking of the two grades turns between 95 and 100 % RH.
   */
  @Test
  void evohLosesItsBarrierWithHumidity() {
    assertThat(evoh("evoh-32", 60) * 5).isCloseTo(6.8399, withPercentage(0.01));
    assertThat(evoh("evoh-32", 80) * 5).isCloseTo(20.494, withPercentage(0.01));
    assertThat(evoh("evoh-32", 90) * 5).isCloseTo(60.000, withPercentage(0.01));
    assertThat(evoh("evoh-44", 60) * 22).isCloseTo(27.053, withPercentage(0.05));
    assertThat(evoh("evoh-44", 80) * 22).isCloseTo(56.125, withPercentage(0.05));
    assertThat(evoh("evoh-44", 90) * 22).isCloseTo(106.07, withPercentage(0.05));
    assertThat(evoh("evoh-32", 95) * 5).isLessThan(evoh("evoh-44", 95) * 22);
    assertThat(evoh("evoh-32", 100) * 5).isGreaterThan(evoh("evoh-44", 100) * 22);
  }

  private static double evoh(String material, double humidity) {
    LayerTransmission layers = BarrierModel.of(FILMS).layers();
    return layers.curve(Layer.web(material, 5), Permeant.OXYGEN).value(humidity / 100);
  }
}
