package plyworth.plugins.barrier.course;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.Map;
import org.junit.jupiter.api.Test;
import plyworth.plugins.barrier.Bench;
import plyworth.plugins.barrier.pack.BarrierModel;
import plyworth.plugins.barrier.pack.FormedPack;
import plyworth.plugins.barrier.pack.PackBarrier;
import plyworth.plugins.barrier.pack.PackTerms;
import plyworth.plugins.barrier.permeation.PackConductance;
import plyworth.plugins.barrier.permeation.Permeant;
import plyworth.shared.brief.Brief;
import plyworth.shared.brief.OxygenLimit;
import plyworth.shared.brief.VolatileContent;
import plyworth.shared.material.Material;
import plyworth.shared.scoring.Outcome;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.structure.LayerNotation;

class PackTest {

  private static final VolatileContent PAD = new VolatileContent("isopropanol", 0.70, 1.0, 5);

  private static final Material SEALANT =
      Bench.material(
          "sealant",
          "ipa-permeability",
          0.30,
          "o2-permeability",
          190_000,
          "o2-activation",
          0,
          "wv-permeability",
          550,
          "wv-activation",
          33.5);

  private static final Material MET =
      Bench.material("met", "ipa-rate", 0.05, "o2-rate", 1.5, "wv-rate", 0.8, "wv-activation", 2.9);

  private static final Material WALL =
      Bench.material("wall", "ipa-rate", 0, "o2-rate", 0, "wv-rate", 0, "wv-activation", 0);

  /** Activity of isopropanol over 70 % w/w at 25 °C, from the Wilson equation (from memory). */
  private static final double SEVENTY_PERCENT = 0.673364;

  private static BarrierModel padModel() {
    Brief brief =
        Bench.brief(Bench.product(1, null, null, PAD), Bench.sachet(60, 80, 8), 25, 60, 365);
    return BarrierModel.of(Bench.context(brief, SEALANT, MET, WALL));
  }

  private static PackBarrier.Path pad(String structure) {
    return PackBarrier.of(padModel(), LayerNotation.readStructure(structure)).paths().get(0);
  }

  private static double milligrams(double conductance) {
    return 1000 * conductance * SEVENTY_PERCENT;
  }

  /** Days until 5 % of 0.70 g has left. */
  private static double atTheRateAsFilled(double conductance) {
    return 0.05 * 700 / milligrams(conductance);
  }

  /** Analytic: two panels 0.10 × 0.15 m at OTR 0.02, edge 0.50 m × 120 µm / 10 mm of LDPE. */
  @Test
  void oxygenEntersASachetThroughFaceAndEdge() {
    Material tight = Bench.material("tight", "o2-rate", 0.02, "o2-activation", 0);
    Brief brief =
        Bench.brief(
            Bench.product(100, null, new OxygenLimit(100, 0), null),
            Bench.sachet(100, 150, 10),
            23,
            50,
            365);
    ScoringContext context = Bench.context(brief, tight, SEALANT);
    PackBarrier.Path face = Bench.barrier(context, "tight 12 um").paths().get(0);
    PackBarrier.Path edge = Bench.barrier(context, "tight 12 um / sealant 60 um").paths().get(0);
    assertThat(face.terms().face() * OxygenBalance.AIR_BAR)
        .isCloseTo(1.27366e-4, withPercentage(0.05));
    assertThat(edge.terms().edge() * OxygenBalance.AIR_BAR)
        .isCloseTo(2.41995e-4, withPercentage(0.05));
  }

  /** Analytic: 1 g of 70 % w/w isopropanol in 60 × 80 mm; permeability from memory. */
  @Test
  void withoutFoilPolyethyleneLosesTheAlcoholWithinDays() {
    PackBarrier.Path path = pad("sealant 40 um");
    assertThat(milligrams(path.terms().face())).isCloseTo(48.482, withPercentage(0.2));
    assertThat(atTheRateAsFilled(path.terms().face())).isCloseTo(0.7219, withPercentage(0.2));
    assertThat(path.days()).isCloseTo(0.7219, withPercentage(3));
  }

  /** Analytic; the metallised rate is an assumption. */
  @Test
  void metallisedFilmKeepsFivePercentForMonths() {
    PackBarrier.Path path = pad("met 12 um / sealant 40 um");
    assertThat(milligrams(path.terms().face())).isCloseTo(0.32107, withPercentage(0.2));
    assertThat(milligrams(path.terms().edge())).isCloseTo(5.6563e-4, withPercentage(0.2));
    assertThat(atTheRateAsFilled(path.total())).isCloseTo(108.82, withPercentage(0.2));
  }

  /** Analytic: a perfect barrier leaves the seal edge, 169.4 years to 5 %. */
  @Test
  void behindFoilOnlyTheSealEdgeLeaks() {
    PackBarrier.Path path = pad("wall 12 um / sealant 40 um");
    assertThat(path.terms().face()).isZero();
    assertThat(atTheRateAsFilled(path.total()) / 365.25).isCloseTo(169.4, withPercentage(0.2));
  }

  /**
   * Analytic: water P 550 g·µm/(m²·day) at 38 °C 90 % RH and 33.5 kJ/mol, moved to 25 °C; 847.5 Pa
   * between 70 % w/w isopropanol and 60 % RH.
   */
  @Test
  void alcoholLeavesFasterThanItsWaterSoThatAPassOnWeightIsNoPassOnAssay() {
    PackBarrier.Path path = pad("sealant 40 um");
    PackTerms water =
        new FormedPack(padModel(), LayerNotation.readStructure("sealant 40 um"))
            .atStorage(Permeant.WATER);
    VolatileBalance balance = (VolatileBalance) path.mechanism().balance();
    double drive = 0.86840 * 3157.93 - 0.60 * 3157.93;
    assertThat(1000 * water.face() * drive).isCloseTo(10.67, withPercentage(0.2));
    PackConductance pack = (permeant, s, a) -> permeant.alcohol() ? path.total() : water.total();
    VolatileCourse.Point end = new VolatileWalk(balance, pack).after(path.days());
    double weightLost = (0.05 + balance.courses().get(0).waterG() - end.waterG()) * 0.7;
    assertThat(end.loss()).isCloseTo(0.05, withPercentage(0.01));
    assertThat(end.strength()).isLessThan(0.70);
    assertThat(weightLost).isLessThan(0.05);
  }

  /** Analytic: an open channel of 50 µm, 8 mm long; D 1.0e-5 m²/s of the vapour from memory. */
  @Test
  void oneOpenChannelLosesThirtySevenTimesWhatTheSealEdgeDoes() {
    ScoringContext context = padModel().context().with("leaks-per-pack", 1);
    PackTerms terms = Bench.barrier(context, "wall 12 um / sealant 40 um").paths().get(0).terms();
    double channel = milligrams(terms.leak());
    assertThat(channel).isCloseTo(0.020740, withPercentage(0.2));
    double edge = milligrams(terms.edge());
    assertThat(channel / edge).isCloseTo(37, withPercentage(2));
  }

  @Test
  void ethanolIsUnderstoodButNoLayerIsKnownToHoldIt() {
    VolatileContent ethanol = new VolatileContent("ethanol", 0.7, 1, 5);
    Brief brief =
        Bench.brief(Bench.product(1, null, null, ethanol), Bench.sachet(60, 80, 8), 25, 60, 365);
    var outcome =
        Bench.PLUGIN
            .bind(Bench.context(brief))
            .score(LayerNotation.readStructure("ldpe 40 um"), Map.of())
            .outcomes();
    assertThat(outcome.get("volatile-loss"))
        .isEqualTo(new Outcome.DataMissing("ldpe", "ethanol-permeability"));
  }

  @Test
  void aLayerThatIsGivenAsAWholeLacksARateAndNoPermeability() {
    Brief brief =
        Bench.brief(Bench.product(1, null, null, null), Bench.sachet(60, 80, 8), 25, 60, 9);
    var foil = Bench.material("bare-foil", "o2-rate", 0.01, "o2-activation", 43);
    var outcome =
        Bench.PLUGIN
            .bind(Bench.context(brief, foil))
            .score(LayerNotation.readStructure("bare-foil 9 um"), Map.of())
            .outcomes();
    assertThat(outcome.get("wvtr")).isEqualTo(new Outcome.DataMissing("bare-foil", "wv-rate"));
  }

  @Test
  void anUnknownSubstanceIsMissingAndNotHarmless() {
    VolatileContent other = new VolatileContent("menthol", 0.1, 1, 5);
    Brief brief =
        Bench.brief(Bench.product(1, null, null, other), Bench.sachet(60, 80, 8), 25, 60, 365);
    var outcome =
        Bench.PLUGIN
            .bind(Bench.context(brief))
            .score(LayerNotation.readStructure("ldpe 40 um"), Map.of())
            .outcomes();
    var missing = new Outcome.DataMissing("menthol", "vapour-pressure");
    assertThat(outcome.get("volatile-loss")).isEqualTo(missing);
    assertThat(outcome.get("margin")).isEqualTo(missing);
  }
}
