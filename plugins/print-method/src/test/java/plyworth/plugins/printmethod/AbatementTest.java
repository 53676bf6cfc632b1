package plyworth.plugins.printmethod;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Mass balance of solvent, worked by hand for 1.5 g/m² gravure and 1.2 g/m² flexo dry. */
class AbatementTest {

  private static final double TIGHT = 1e-6;
  private static final MakeUp GRAVURE = new MakeUp(0.22, 0, 0.78);
  private static final MakeUp FLEXO_SOLVENT = new MakeUp(0.3, 0, 0.7);
  private static final MakeUp FLEXO_WATER = new MakeUp(0.38, 0.57, 0.05);

  private static double input(MakeUp ink, double dry) {
    return ink.wet(dry) * ink.solvent();
  }

  @Test
  void solventPutDownFollowsFromMakeUpAndDryLayDown() {
    assertThat(input(GRAVURE, 1.5)).isCloseTo(5.31818182, within(TIGHT));
    assertThat(input(FLEXO_SOLVENT, 1.2)).isCloseTo(2.8, within(TIGHT));
    assertThat(input(FLEXO_WATER, 1.2)).isCloseTo(0.157894737, within(TIGHT));
    assertThat(input(new MakeUp(0.3, 0.62, 0.08), 1.5)).isCloseTo(0.4, within(TIGHT));
    assertThat(input(new MakeUp(0.98, 0, 0.02), 1.2)).isCloseTo(0.0244897959, within(TIGHT));
  }

  @Test
  void captureAndDestructionMultiply() {
    double gravure = input(GRAVURE, 1.5);
    double flexo = input(FLEXO_SOLVENT, 1.2);
    assertThat(new Abatement(0.98, 0.99).emitted(gravure, 0)).isCloseTo(0.158481818, within(TIGHT));
    assertThat(new Abatement(0.985, 0.99).emitted(gravure, 0))
        .isCloseTo(0.132156818, within(TIGHT));
    assertThat(new Abatement(0.95, 0.98).emitted(flexo, 0)).isCloseTo(0.1932, within(TIGHT));
    assertThat(new Abatement(0.7, 0.98).emitted(flexo, 0)).isCloseTo(0.8792, within(TIGHT));
  }

  @Test
  void controlThatTiesWithUncontrolledWaterBasedFlexo() {
    double water = input(FLEXO_WATER, 1.2);
    double gravure = Abatement.tie(input(GRAVURE, 1.5), water);
    double flexo = Abatement.tie(input(FLEXO_SOLVENT, 1.2), water);
    assertThat(gravure).isCloseTo(0.970310391, within(TIGHT));
    assertThat(gravure / 0.99).isCloseTo(0.980112, within(TIGHT));
    assertThat(flexo).isCloseTo(0.943609023, within(TIGHT));
    assertThat(flexo / 0.98).isCloseTo(0.962866, within(TIGHT));
  }

  /**
   * E = I·S·(100 − P)/10⁴ of US EPA AP-42 section 4.9.1 (from memory) with 2250 lb of ink a week,
   * 75 % solvent, 7 % left in the product: a plant study, EPA/600/SR-93/149, reports 1570 lb.
   */
  @Test
  void reportedEmissionOfAFlexoPlantIsMet() {
    double emitted = Abatement.ABSENT.emitted(2250 * 0.75, 0.07);
    assertThat(emitted).isCloseTo(1569.375, within(TIGHT));
    assertThat(emitted).isCloseTo(1570, within(0.005 * 1570));
  }

  @Test
  void retentionComesOffBeforeControl() {
    assertThat(Abatement.ABSENT.emitted(75, 0.05)).isCloseTo(71.25, within(TIGHT));
    assertThat(new Abatement(0.95, 0.98).emitted(75, 0.05)).isCloseTo(4.91625, within(TIGHT));
  }
}
