package plyworth.workbench.robustness;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.DoubleStream;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;

class PrometheeTest {

  /** Criteria where less is better stand with their sign turned. */
  private static final double[][] TABLE = {
    {-80, 90, -6, -5.4, 8},
    {-65, 58, -2, -9.7, 1},
    {-83, 60, -4, -7.2, 4},
    {-40, 80, -10, -7.5, 7},
    {-52, 72, -6, -2, 3},
    {-94, 96, -7, -3.6, 5}
  };

  private static final Preference LEVEL = d -> d <= 1 ? 0 : d <= 4 ? 0.5 : 1;
  private static final Preference USUAL = d -> 1;
  private static final Preference GAUSS = d -> 1 - Math.exp(-d * d / 18);

  /**
   * Own data with all five shapes of preference; Brans and Vincke 1985, from memory. The same by a
   * program of another language; the weighted sum of the flows in each criterion is the net flow.
   */
  @Test
  void netFlowsAreThoseOfTheWorkedCase() {
    List<Preference> shapes =
        List.of(Preference.linear(10, 30), Preference.linear(0, 20), LEVEL, USUAL, GAUSS);
    double[] flows = Promethee.netFlows(TABLE, new double[] {0.25, 0.2, 0.2, 0.15, 0.2}, shapes);
    double[] expected = {0.14535267, -0.24622223, -0.23105551, 0.08618975, 0.18175696, 0.06397836};
    assertThat(flows).containsExactly(expected, within(1e-6));
  }

  @RepeatedTest(20)
  void flowsAddUpToNothing(RepetitionInfo repetition) {
    Random random = new Random(repetition.getCurrentRepetition());
    double[][] table = new double[2 + random.nextInt(8)][];
    for (int i = 0; i < table.length; i++) {
      table[i] = random.doubles(3).toArray();
    }
    Preference shape = Preference.linear(0.02, 0.2);
    double[] flows =
        Promethee.netFlows(table, new double[] {0.2, 0.3, 0.5}, List.of(shape, shape, shape));
    assertThat(DoubleStream.of(flows).sum()).isCloseTo(0, within(1e-12));
  }
}
