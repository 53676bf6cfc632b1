package plyworth.plugins.barrier.explain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plyworth.plugins.barrier.Bench;
import plyworth.plugins.barrier.pack.BarrierCriteria;
import plyworth.plugins.barrier.pack.BarrierModel;
import plyworth.plugins.barrier.pack.Calibration;
import plyworth.plugins.barrier.pack.FormedPack;
import plyworth.plugins.barrier.pack.PackBarrier;
import plyworth.plugins.barrier.pack.PackTerms;
import plyworth.plugins.barrier.permeation.Permeant;
import plyworth.shared.brief.Brief;
import plyworth.shared.brief.Handling;
import plyworth.shared.quantity.Range;
import plyworth.shared.scoring.Draw;
import plyworth.shared.scoring.Explanation.Table;
import plyworth.shared.scoring.Finding;
import plyworth.shared.scoring.Measurement;
import plyworth.shared.scoring.SampleBriefs;
import plyworth.shared.scoring.ScoringContext;
import plyworth.shared.structure.LayerNotation;

/** Analytic, and from what the records promise; all measurements are invented. */
class CalibrationTest {

  private static final Brief BRIEF = SampleBriefs.seasoningStick();
  private static final String FOIL = "kraft-paper 50 g/m2 / aluminium-foil 7 um / ldpe 40 um";
  private static final String PLAIN = "bopet 12 um / ldpe 40 um";

  private static ScoringContext calibrated(Measurement... measured) {
    return Bench.with(Bench.context(BRIEF), FOIL, measured);
  }

  private static double standardDays(String structure) {
    return Bench.barrier(Bench.context(BRIEF), structure).days();
  }

  @Test
  void aKnownFieldLifeIsPredictedForTheBaseline() {
    for (double times : new double[] {0.7, 1, 1.6}) {
      double known = times * standardDays(FOIL);
      ScoringContext context = calibrated(Bench.measured("shelf-life", known, 1, ""));
      assertThat(Bench.barrier(context, FOIL).days() / known).isCloseTo(1, within(1e-9));
    }
  }

  @Test
  void theTransmissionOfAWholePackIsPredictedAsMeasured() {
    for (String figure : List.of("pack-otr", "pack-wvtr")) {
      double standard = figureOf(figure, Bench.barrier(Bench.context(BRIEF), FOIL));
      ScoringContext context = calibrated(Bench.measured(figure, 1.4 * standard, 1, ""));
      double now = figureOf(figure, Bench.barrier(context, FOIL));
      assertThat(now / standard).isCloseTo(1.4, within(1e-9));
      assertThat(Bench.barrier(context, FOIL).days()).isLessThan(standardDays(FOIL));
    }
  }

  private static double figureOf(String figure, PackBarrier barrier) {
    return figure.equals("pack-otr") ? barrier.packOtr() : barrier.packWvtr();
  }

  @Test
  void theBaselineIsPredictedAsMeasuredWhateverTheMaterialsAre() {
    double known = 1.3 * standardDays(FOIL);
    ScoringContext context =
        calibrated(Bench.measured("margin", known / BRIEF.shelfLifeDays(), 1, ""));
    for (long seed = 1; seed < 6; seed++) {
      PackBarrier barrier = Bench.barrier(context.with(Draw.random(seed)), FOIL);
      assertThat(barrier.days() / known).isCloseTo(1, within(1e-9));
    }
  }

  @Test
  void aPackOfOtherLayersChangesThroughItsSealEdgeAlone() {
    ScoringContext context =
        calibrated(Bench.measured("shelf-life", 0.7 * standardDays(FOIL), 1, ""));
    double times = BarrierModel.of(context).calibration().times();
    for (Permeant permeant : List.of(Permeant.WATER, Permeant.OXYGEN)) {
      PackTerms before = terms(Bench.context(BRIEF), permeant);
      PackTerms after = terms(context, permeant);
      assertThat(after.face()).isEqualTo(before.face());
      assertThat(after.edge() / before.edge()).isCloseTo(times, within(1e-12));
    }
  }

  private static PackTerms terms(ScoringContext context, Permeant permeant) {
    BarrierModel model = BarrierModel.of(context);
    return new FormedPack(model, LayerNotation.readStructure(PLAIN)).atStorage(permeant);
  }

  @Test
  void aMeasurementAsPredictedChangesNothingAndASpreadTravelsWithTheDraw() {
    Measurement same = Bench.measured("shelf-life", standardDays(FOIL), 1.2, "");
    Calibration calibration = BarrierModel.of(calibrated(same)).calibration();
    assertThat(calibration.times()).isCloseTo(1, within(1e-9));
    assertThat(calibration.correction().spread()).isGreaterThan(1.2);
    double low =
        BarrierModel.of(calibrated(same).with((Draw) CalibrationTest::lowest))
            .calibration()
            .times();
    assertThat(low).isCloseTo(1 / calibration.correction().spread(), within(1e-9));
  }

  private static double lowest(String input, Range range) {
    return input.equals(Calibration.INPUT) ? range.low() : range.typical();
  }

  @Test
  void aFlatSheetCorrectsNothing() {
    ScoringContext context = calibrated(Bench.measured("otr", 40, 1, "curled"));
    assertThat(BarrierModel.of(context).calibration().times()).isEqualTo(1);
    assertThat(Bench.barrier(context, FOIL).days()).isEqualTo(standardDays(FOIL));
  }

  @Test
  void onFlatPacksOnlyTheSealEdgeIsLeftToExplainAMeasurement() {
    Brief flat = BRIEF.handled(Handling.FLAT);
    double known = 0.9 * Bench.barrier(Bench.context(flat), FOIL).days();
    ScoringContext context =
        Bench.with(Bench.context(flat), FOIL, Bench.measured("shelf-life", known, 1, ""));
    assertThat(Bench.barrier(context, FOIL).days() / known).isCloseTo(1, within(1e-9));
    assertThat(BarrierModel.of(context).calibration().times()).isGreaterThan(1);
  }

  @Test
  void aStrikingRatioAsksForANoteAndIsQuietOnceThereIsOne() {
    assertThat(rules(Bench.measured("otr", 40, 1, ""))).contains("measured-otherwise");
    assertThat(rules(Bench.measured("otr", 40, 1, "creased before"))).isEmpty();
  }

  @Test
  void whatNoDamageExplainsIsSaidAndNotUsed() {
    Measurement beyond = Bench.measured("shelf-life", 1e7, 1, "wishful");
    assertThat(rules(beyond)).containsExactly("measurement-unused");
    assertThat(Bench.barrier(calibrated(beyond), FOIL).days()).isEqualTo(standardDays(FOIL));
  }

  private static List<String> rules(Measurement measurement) {
    return CalibrationFindings.of(BarrierModel.of(calibrated(measurement))).stream()
        .map(Finding::rule)
        .toList();
  }

  @Test
  void everyCriterionSaysWhetherItIsCalibratedAndByWhat() {
    Measurement life = Bench.measured("shelf-life", 0.7 * standardDays(FOIL), 1, "");
    Table figures = (Table) CalibrationSections.of(BarrierModel.of(calibrated(life))).get(1);
    assertThat(figures.rows()).hasSize(BarrierCriteria.all().size());
    assertThat(figures.rows())
        .contains(List.of("barrier/otr", "word.not-calibrated", "–"))
        .contains(
            List.of(
                "barrier/margin",
                "word.calibrated",
                "barrier/shelf-life: store trial, 2026-03-12, × 0.7"));
  }
}
