package plyworth.workbench.engine.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import plyworth.shared.scoring.Join;

class ColumnJoinTest {

  private static final int ROWS = 37;
  private static final double ROUNDING = 1e-13;

  @ParameterizedTest
  @EnumSource
  void columnsAreJoinedAsSingleStatesAre(Join join) {
    for (int seed = 0; seed < 100; seed++) {
      Random random = new Random(seed);
      int at = random.nextInt(3);
      double[] outer = state(join, at, random);
      double[][] inner = new double[at + join.size()][ROWS];
      double[][] rows = new double[ROWS][];
      for (int row = 0; row < ROWS; row++) {
        rows[row] = state(join, at, random);
        for (int c = 0; c < inner.length; c++) {
          inner[c][row] = rows[row][c];
        }
      }
      double[][] joined = new double[at + join.size()][ROWS];
      ColumnJoin.join(join, at, outer, inner, joined, ROWS);
      for (int row = 0; row < ROWS; row++) {
        double[] expected = new double[at + join.size()];
        join.join(outer, rows[row], expected, at);
        for (int c = at; c < expected.length; c++) {
          double difference = Math.abs(joined[c][row] - expected[c]);
          boolean bothUnknown = Double.isNaN(joined[c][row]) && Double.isNaN(expected[c]);
          boolean equal =
              joined[c][row] == expected[c]
                  || bothUnknown
                  || difference <= ROUNDING * Math.abs(expected[c]);
          assertThat(equal)
              .describedAs("%s component %d, seed %d: off by %s", join, c - at, seed, difference)
              .isTrue();
        }
      }
    }
  }

  @ParameterizedTest
  @EnumSource(
      names = {"AFFINE", "BENDING", "HEAT"},
      mode = EnumSource.Mode.EXCLUDE)
  void aColumnThatIsJoinedInPlaceIsJoinedAsSingleStatesAre(Join join) {
    int from = 5;
    for (int seed = 0; seed < 100; seed++) {
      Random random = new Random(seed);
      double[] outer = state(join, 0, random);
      double[] inner = new double[ROWS];
      Arrays.setAll(inner, row -> state(join, 0, random)[0]);
      double[] column = inner.clone();
      ColumnJoin.within(join, outer[0], column, from, ROWS);
      for (int row = 0; row < ROWS; row++) {
        double[] expected = {inner[row]};
        if (row >= from) {
          join.join(outer, new double[] {inner[row]}, expected, 0);
        }
        assertThat(Double.valueOf(column[row]))
            .as("%s row %d, seed %d", join, row, seed)
            .isEqualTo(Double.valueOf(expected[0]));
      }
    }
  }

  /** A contribution, a neutral state, or either with something unknown or zero in it. */
  private static double[] state(Join join, int at, Random random) {
    double[] state = new double[at + join.size()];
    join.neutral(state, at);
    if (random.nextInt(4) > 0) {
      for (int c = at; c < state.length; c++) {
        state[c] = join == Join.BITS ? random.nextInt(1 << 20) : random.nextDouble() * 10;
        state[c] = random.nextInt(12) == 0 ? 0 : state[c];
      }
    }
    if (random.nextInt(8) == 0) {
      state[at + random.nextInt(join.size())] = Double.NaN;
    }
    return state;
  }
}
