package plyworth.workbench.robustness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class TopsisTest {

  /**
   * Published: Tzeng and Huang, Multiple Attribute Decision Making, 2011, closeness 0.5037, 0.6581,
   * 0.7482, 0.3340, seen in the tests of an open library; the further digits by two programs of our
   * own.
   */
  @Test
  void closenessIsThatOfThePublishedCase() {
    double[][] table = {{5, 8, 4}, {7, 6, 8}, {8, 8, 6}, {7, 4, 6}};
    double[] closeness = Topsis.closeness(table, new double[] {0.3, 0.4, 0.3});
    assertThat(closeness)
        .containsExactly(
            new double[] {0.50371966, 0.65808477, 0.74824866, 0.33399744}, within(1e-6));
  }

  /** Own data: that the method may do so is known (rank reversal, from memory). */
  @Test
  void aHopelessCandidateCanTurnTheLeadersRound() {
    double[] weights = {0.5, 0.5};
    double[] without = Topsis.closeness(new double[][] {{4, 1}, {3, 7}, {9, 3}}, weights);
    double[] with = Topsis.closeness(new double[][] {{4, 1}, {3, 7}, {9, 3}, {0, 0}}, weights);
    assertThat(without[1]).isGreaterThan(without[2]);
    assertThat(with[1]).isLessThan(with[2]);
  }

  @Test
  void candidatesThatAreAlikeAreAllInTheMiddle() {
    double[][] table = {{0, 1}, {0, 1}};
    assertThat(Topsis.closeness(table, new double[] {0.5, 0.5})).containsExactly(0.5, 0.5);
  }
}
