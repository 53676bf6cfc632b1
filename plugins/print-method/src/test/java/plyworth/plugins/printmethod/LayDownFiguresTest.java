package plyworth.plugins.printmethod;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Cells, curing, residual solvent and moisture, each against a case worked by hand. */
class LayDownFiguresTest {

  private static final double TIGHT = 1e-5;

  @Test
  void aniloxOfFiveBcmPutsDownFourFifthsOfAGram() {
    MakeUp ink = new MakeUp(0.38, 0.57, 0.05);
    CellVolume cells = new CellVolume(5.2 * CellVolume.BCM, 0.25, 1.05);
    assertThat(cells.volume()).isCloseTo(8.06002, within(TIGHT));
    assertThat(cells.wetSolid()).isCloseTo(2.11575, within(TIGHT));
    assertThat(cells.wetSolid() * ink.solids()).isCloseTo(0.80399, within(TIGHT));
    double wet = cells.wet(0.35);
    assertThat(wet).isCloseTo(0.740514, within(TIGHT));
    assertThat(wet * ink.solids()).isCloseTo(0.281395, within(TIGHT));
    assertThat(wet * ink.water()).isCloseTo(0.422093, within(TIGHT));
    assertThat(wet * ink.solvent()).isCloseTo(0.0370257, within(TIGHT));
  }

  @Test
  void twiceTheDryInkTakesTwiceTheInkings() {
    CellVolume cells = new CellVolume(8, 0.25, 1);
    assertThat(cells.inkings(0.8, 0.4, 1)).isCloseTo(1, within(1e-12));
    assertThat(cells.inkings(1.6, 0.4, 1)).isCloseTo(2, within(1e-12));
    assertThat(cells.inkings(1.6, 0.4, 0.5)).isCloseTo(4, within(1e-12));
  }

  @Test
  void eightMercuryLampsTakeElevenKilowattHoursAndHalfAtTwiceTheSpeed() {
    assertThat(Curing.lamps(8, 160, 200)).isCloseTo(10.6666667, within(TIGHT));
    assertThat(Curing.lamps(8, 80, 200)).isCloseTo(5.3333333, within(TIGHT));
    assertThat(Curing.lamps(8, 160, 400)).isCloseTo(5.3333333, within(TIGHT));
  }

  /** Limit of 5 mg/m² in GB/T 10004; 6 dm²/kg is the EU model, 41 dm²/kg a stick of 20 g. */
  @Test
  void residualLimitAsksForAThousandthAndWeighsMoreOnSmallPacks() {
    assertThat(100 * ResidualSolvent.retainedShare(5, 5.31818182))
        .isCloseTo(0.094017, within(TIGHT));
    assertThat(ResidualSolvent.inFood(5, 0.06, 1)).isCloseTo(0.3, within(TIGHT));
    assertThat(ResidualSolvent.inFood(5, 0.00825, 0.02)).isCloseTo(2.0625, within(TIGHT));
  }

  /** Not detectable at 0.01 mg/kg: Swiss ordinance 817.023.21, annex 10. */
  @Test
  void tracesAllowedInInkShrinkWithThePack() {
    assertThat(ResidualSolvent.allowedInInk(0.01, 0.06, 1, 1.5)).isCloseTo(111.111, within(1e-3));
    assertThat(ResidualSolvent.allowedInInk(0.01, 0.00825, 0.02, 1.5))
        .isCloseTo(16.1616, within(1e-3));
  }

  @Test
  void lightPaperUnderWaterBasedInkIsConditional() {
    assertThat(Moisture.points(0.4, 2.5, 50)).isCloseTo(2, within(1e-12));
    assertThat(Moisture.judge(1.9, 50)).isEqualTo(Verdict.NORMAL);
    assertThat(Moisture.judge(2.7, 50)).isEqualTo(Verdict.CONDITIONAL);
    assertThat(Moisture.judge(1.0, 40)).isEqualTo(Verdict.CONDITIONAL);
  }
}
