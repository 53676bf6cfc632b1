package plyworth.plugins.cost;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plyworth.shared.quantity.Unit;
import plyworth.shared.scoring.Assessment;

/** Grammage and yield, from gauge and density. */
class GrammageTest {

  private static final double IN2_PER_LB_AT_1_GSM = 0.45359237 / 0.0254 / 0.0254 * 1000;

  /** Analytic: sums of gauge · density; 1 lb/3000 ft² = 1.627476 g/m². */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "paper 50 g/m2 / ldpe 15 um @lamination / foil 7 um / ldpe 25 um @coating"
            + " | 105.7 | 9.46074 | 64.9472 | 6651.56",
        "paper 50 g/m2 / ldpe 15 um @lamination / pet-met 12 um / ldpe 25 um @coating"
            + " | 103.6 | 9.65251 | 63.6569 | 6786.39",
        "pet 12 um / adhesive 3 g/m2 @glue / foil 7 um / adhesive 3 g/m2 @glue / ldpe 70 um"
            + " | 106.1 | 9.42507 | 65.1930 | 6626.48",
        "bopp 20 um / adhesive 2 g/m2 @glue / bopp 18 um | 36.39 | 27.4801 | 22.3598 | 19320.4"
      })
  void laminatesWeighTheSumOfTheirLayers(
      String structure, double gsm, double yield, double lbPerReam, double in2PerLb) {
    Assessment assessment = Orders.score(structure);
    double grammage = assessment.figure("grammage");
    assertThat(grammage).isCloseTo(gsm, withinPercentage(0.01));
    assertThat(assessment.figure("yield")).isCloseTo(yield, withinPercentage(0.01));
    assertThat(Unit.LB_PER_3000FT2.fromInside(grammage))
        .isCloseTo(lbPerReam, withinPercentage(0.01));
    assertThat(IN2_PER_LB_AT_1_GSM / grammage).isCloseTo(in2PerLb, withinPercentage(0.01));
  }

  /**
   * A film distributor's published yield chart for films of 1 mil, printed to three figures; name
   * withheld.
   */
  @ParameterizedTest
  @CsvSource({"opp-chart, 30600", "lldpe, 30100", "hdpe, 29200", "pa, 23900"})
  void oneMilFilmsYieldWhatThePrintedChartSays(String film, double in2PerLb) {
    double grammage = Orders.score(film + " 1 mil").figure("grammage");
    assertThat(IN2_PER_LB_AT_1_GSM / grammage).isCloseTo(in2PerLb, withinPercentage(0.5));
  }

  /** The same chart: 43.5 m²/kg and 14.1 lb per ream. */
  @Test
  void polypropyleneOfOneMilYieldsWhatThePrintedChartSays() {
    Assessment film = Orders.score("opp-chart 1 mil");
    assertThat(film.figure("yield")).isCloseTo(43.5, withinPercentage(0.5));
    assertThat(Unit.LB_PER_3000FT2.fromInside(film.figure("grammage")))
        .isCloseTo(14.1, withinPercentage(0.5));
  }

  /** DiMenna 2008, Life Cycle Inventories for Flexible Packaging Lamination, slides. */
  @ParameterizedTest
  @CsvSource({"15, 8.5", "20, 11", "30, 17"})
  void polyethyleneCoatingsWeighWhatTheInventorySays(double um, double lbPerReam) {
    double grammage = Orders.score("ldpe " + um + " um").figure("grammage");
    assertThat(Unit.LB_PER_3000FT2.fromInside(grammage)).isCloseTo(lbPerReam, withinPercentage(3));
  }

  @Test
  void gaugeIsTheSumOfTheLayersCoatingsIncluded() {
    assertThat(Orders.score("pet 12 um / adhesive 2.2 g/m2 @glue / ldpe 50 um").figure("gauge"))
        .isCloseTo(64, withinPercentage(1e-9));
  }
}
