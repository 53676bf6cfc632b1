package plyworth.workbench.robustness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class RankCorrelationTest {

  /** Own data with a tie; the same by a statistics library and by counting pairs. */
  @Test
  void tauAllowsForTies() {
    double[] a = {1, 2, 3, 4, 5, 6, 7, 8};
    double[] b = {2, 1, 3.5, 3.5, 7, 5, 6, 8};
    assertThat(RankCorrelation.tauB(a, b)).isCloseTo(0.76376262, within(1e-6));
  }

  @Test
  void theSameOrderIsOneAndTheOppositeMinusOne() {
    double[] up = {1, 2, 3};
    assertThat(RankCorrelation.tauB(up, new double[] {10, 20, 21})).isEqualTo(1);
    assertThat(RankCorrelation.tauB(up, new double[] {3, 2, 1})).isEqualTo(-1);
  }

  @Test
  void anOrderOfEqualsIsLikeNoOther() {
    assertThat(RankCorrelation.tauB(new double[] {1, 2}, new double[] {5, 5})).isNaN();
  }
}
