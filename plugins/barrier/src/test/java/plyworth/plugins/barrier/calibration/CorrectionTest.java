package plyworth.plugins.barrier.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Analytic. */
class CorrectionTest {

  @Test
  void noEvidenceIsNoCorrection() {
    assertThat(Correction.of(List.of())).isEqualTo(Correction.NONE);
  }

  @Test
  void oneMeasurementIsTakenAsItStands() {
    Correction one = Correction.of(List.of(new Evidence(2.5, 1.4, 3)));
    assertThat(one.times()).isCloseTo(2.5, within(1e-12));
    assertThat(one.spread()).isCloseTo(1.4, within(1e-12));
  }

  @Test
  void measurementsMeetAtTheirGeometricMeanByTheirSamples() {
    Correction both = Correction.of(List.of(new Evidence(1, 1, 1), new Evidence(16, 1, 3)));
    assertThat(both.times()).isCloseTo(8, within(1e-12));
  }

  @Test
  void disagreementWidensWhatTheirOwnSpreadsDoNot() {
    Correction apart = Correction.of(List.of(new Evidence(0.5, 1, 4), new Evidence(2, 1, 4)));
    assertThat(apart.times()).isCloseTo(1, within(1e-12));
    assertThat(apart.spread()).isCloseTo(2, within(1e-12));
  }

  @Test
  void independentSpreadsShrinkWithTheNumberOfMeasurements() {
    Evidence one = new Evidence(3, Math.E, 5);
    Correction four = Correction.of(List.of(one, one, one, one));
    assertThat(Math.log(four.spread())).isCloseTo(0.5, within(1e-12));
  }

  @Test
  void theFactorIsSolvedForWhereTheSharedTermsAreAPartOfTheWhole() {
    Evidence edge = Evidence.of(times -> 3 + 2 * times, 9, 1, 1).orElseThrow();
    assertThat(edge.times()).isCloseTo(3, within(1e-10));
    Evidence life = Evidence.of(times -> 100 / (1 + times), 20, 1.25, 1).orElseThrow();
    assertThat(life.times()).isCloseTo(4, within(1e-10));
    assertThat(life.spread()).isCloseTo(4.0 / 3, within(1e-10));
  }

  @Test
  void whatTheSharedTermsCannotExplainIsNoEvidence() {
    assertThat(Evidence.of(times -> 3 + times, 2, 1.1, 1)).isEmpty();
    assertThat(Evidence.of(times -> Double.POSITIVE_INFINITY, 2, 1, 1)).isEmpty();
    assertThat(Evidence.of(times -> Double.NaN, 2, 1, 1)).isEmpty();
  }
}
