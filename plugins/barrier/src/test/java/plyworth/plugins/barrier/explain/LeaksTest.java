package plyworth.plugins.barrier.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.api.Test;
import plyworth.plugins.barrier.Bench;
import plyworth.plugins.barrier.course.OxygenBalance;
import plyworth.plugins.barrier.pack.BarrierModel;
import plyworth.plugins.barrier.pack.FormedPack;
import plyworth.plugins.barrier.pack.LeakRisk;
import plyworth.plugins.barrier.pack.PackBarrier;
import plyworth.plugins.barrier.pack.PackTerms;
import plyworth.plugins.barrier.permeation.Leaks;
import plyworth.shared.brief.Brief;
import plyworth.shared.brief.OxygenLimit;
import plyworth.shared.brief.Pack;
import plyworth.shared.material.Material;
import plyworth.shared.scoring.Explanation.Table;
import plyworth.shared.scoring.SampleBriefs;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.structure.LayerNotation;

class LeaksTest {

  private static final String LAMINATE = "tight 20 um / sealant 60 um";

  private static final Material TIGHT =
      Bench.material("tight", "o2-rate", 0.02, "o2-activation", 0, "wv-rate", 0);

  private static final Material SEALANT =
      Bench.material("sealant", "o2-permeability", 190_000, "o2-activation", 0);

  /** Two panels 0.10 × 0.15 m; two holes of 30 µm through 80 µm. */
  private static ScoringContext pouch(double holes) {
    Brief brief =
        Bench.brief(
            Bench.product(100, null, new OxygenLimit(100, 0), null),
            Bench.sachet(100, 150, 10),
            23,
            50,
            365);
    return Bench.context(brief, TIGHT, SEALANT)
        .with("leaks-per-pack", holes)
        .with("leak-diameter", 30)
        .with("leak-length", 0.080);
  }

  /** Analytic: face 1.27366e-4, edge 2.41995e-4, two holes 4.672 cm³/day in air. */
  @Test
  void afterTwoHolesTheLaminateNoLongerMatters() {
    PackBarrier leaking = Bench.barrier(pouch(2), LAMINATE);
    PackTerms terms = leaking.paths().get(0).terms();
    assertThat(terms.face() * OxygenBalance.AIR_BAR).isCloseTo(1.27366e-4, withPercentage(0.05));
    assertThat(terms.edge() * OxygenBalance.AIR_BAR).isCloseTo(2.41995e-4, withPercentage(0.05));
    assertThat(terms.total() * OxygenBalance.AIR_BAR).isCloseTo(4.67237, withPercentage(0.05));
    assertThat(leaking.packOtr()).isCloseTo(4.67237, withPercentage(0.05));
  }

  /** Analytic: 366.88 cm³/(m²·day·bar) stand for the pack with one hole. */
  @Test
  void oneHoleMakesABarrierPackLookLikeAPlainFilm() {
    double perDay = Bench.barrier(pouch(1), LAMINATE).packOtr();
    double area = 2 * 0.10 * 0.15;
    assertThat(perDay / OxygenBalance.AIR_BAR / area).isCloseTo(366.88, withPercentage(0.05));
  }

  @Test
  void aTightPackHasNoLeakTermAndAChannelRunsAcrossTheSealUnlessALengthIsGiven() {
    assertThat(Bench.barrier(pouch(0), LAMINATE).paths().get(0).terms().leak()).isZero();
    ScoringContext across = pouch(1).with("leak-length", 0);
    assertThat(Leaks.of(across).channel().lengthUm()).isEqualTo(10_000);
  }

  @Test
  void everyLeakShortensTheShelfLifeOfASeasoningStick() {
    ScoringContext tight = Bench.context(SampleBriefs.seasoningStick());
    String foil = "kraft-paper 50 g/m2 / aluminium-foil 7 um / ldpe 40 um";
    double before = Double.POSITIVE_INFINITY;
    for (double count : new double[] {0, 0.1, 1, 3}) {
      double days = Bench.barrier(tight.with("leaks-per-pack", count), foil).days();
      assertThat(days).isLessThan(before);
      before = days;
    }
  }

  /** What the breakdown shows adds up to the whole, and one more leak to what it says. */
  @Test
  void theBreakdownGivesTheWaysOneByOne() {
    BarrierModel model = BarrierModel.of(pouch(1));
    FormedPack pack = new FormedPack(model, LayerNotation.readStructure(LAMINATE));
    PackBarrier barrier = PackBarrier.of(model, pack.structure());
    Table terms = (Table) PackSections.of(model, barrier, pack).get(1);
    double sum = 0;
    for (Object cell : terms.rows().get(0).subList(2, 6)) {
      sum += (double) cell;
    }
    assertThat(sum).isCloseTo((double) terms.rows().get(0).get(6), within(1e-12));
    Table leak = (Table) LeakSection.of(barrier, pack);
    assertThat(leak.rows().get(0).get(4)).isEqualTo(Bench.barrier(pouch(2), LAMINATE).days());
  }

  /** From what the record promises; thresholds are judgement. */
  @Test
  void aThinSealantDoesNotFillTheStepOfAThickLaminate() {
    assertThat(LeakRisk.of(Pack.Format.STICK, 100, 12).level()).isEqualTo(LeakRisk.LIKELY);
    assertThat(LeakRisk.of(Pack.Format.STICK, 100, 20).level()).isEqualTo(LeakRisk.POSSIBLE);
    assertThat(LeakRisk.of(Pack.Format.STICK, 100, 25).level()).isEqualTo(LeakRisk.UNLIKELY);
    assertThat(LeakRisk.of(Pack.Format.PILLOW, 100, 25).level()).isEqualTo(LeakRisk.POSSIBLE);
    assertThat(LeakRisk.of(Pack.Format.SACHET_FOUR_SIDE, 100, 12).level())
        .isEqualTo(LeakRisk.UNLIKELY);
    assertThat(LeakRisk.of(Pack.Format.STICK, Double.NaN, 25).level()).isNaN();
  }
}
