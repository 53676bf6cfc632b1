package plyworth.shared.scoring;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;

/** The joins that carry physics, against what must hold for any laminate. */
class JoinPhysicsTest {

  private static final int POWERS = JoinKernels.HEAT_ORDER;
  private static final int A = -1;
  private static final int B = POWERS;
  private static final int C = 2 * POWERS;
  private static final int D = 3 * POWERS;

  private static double[] joined(Join join, double[]... pieces) {
    double[] state = new double[join.size()];
    join.neutral(state, 0);
    for (double[] piece : pieces) {
      double[] next = new double[join.size()];
      join.join(state, piece, next, 0);
      state = next;
    }
    return state;
  }

  /** One homogeneous layer: E·t, t/2, E·t³/12, t. */
  private static double[] plate(double modulus, double thickness) {
    return new double[] {
      modulus * thickness, thickness / 2, modulus * Math.pow(thickness, 3) / 12, thickness
    };
  }

  @Test
  void plateCutInTwoIsAsStiff() {
    double[] halves = joined(Join.BENDING, plate(3000, 20), plate(3000, 30));
    assertThat(halves).containsExactly(plate(3000, 50), within(1e-6));
  }

  @Test
  void plateTurnedOverIsAsStiff() {
    double[] one = joined(Join.BENDING, plate(200, 50), plate(70_000, 7), plate(4000, 12));
    double[] other = joined(Join.BENDING, plate(4000, 12), plate(70_000, 7), plate(200, 50));
    assertThat(other[0]).isCloseTo(one[0], withinPercentage(1e-9));
    assertThat(other[1]).isCloseTo(one[3] - one[1], withinPercentage(1e-9));
    assertThat(other[2]).isCloseTo(one[2], withinPercentage(1e-9));
  }

  /** A symmetric sandwich by the parallel-axis theorem, worked by hand: faces 10, core 100. */
  @Test
  void stiffnessOfASandwichIsThatOfTheParallelAxisTheorem() {
    double[] sandwich = joined(Join.BENDING, plate(1000, 10), plate(10, 100), plate(1000, 10));
    double faces = 2 * (1000 * 1e3 / 12 + 1000 * 10 * 55 * 55);
    double core = 10 * 1e6 / 12;
    assertThat(sandwich[1]).isCloseTo(60, withinPercentage(1e-9));
    assertThat(sandwich[2]).isCloseTo(faces + core, withinPercentage(1e-9));
  }

  /** Series of cosh q, R·sinh(q)/q and q·sinh(q)/R in s, with q² = s·R·K. */
  private static double[] wall(double r, double k) {
    double[] state = new double[Join.HEAT.size()];
    double rk = 1;
    double factorial = 1;
    state[B] = r;
    for (int n = 1; n <= POWERS; n++) {
      state[C + n] = k * rk / (factorial * (2 * n - 1));
      rk *= r * k;
      factorial *= (2 * n - 1) * (2 * n);
      state[A + n] = rk / factorial;
      state[D + n] = rk / factorial;
      state[B + n] = r * rk / (factorial * (2 * n + 1));
    }
    return state;
  }

  @Test
  void wallCutInThreeIsTheSameWall() {
    double[] whole = wall(2, 3);
    double third = 1 / 3.0;
    double[] parts = wall(2 * third, 3 * third);
    double[] joined = joined(Join.HEAT, parts, parts, parts);
    for (int i = 0; i < whole.length; i++) {
      assertThat(joined[i]).isCloseTo(whole[i], withinPercentage(1e-9));
    }
  }

  @Test
  void resistancesAndCapacitiesOfWallsAddUp() {
    double[] joined = joined(Join.HEAT, wall(2, 3), wall(0.5, 7), wall(0, 0));
    assertThat(joined[B]).isCloseTo(2.5, within(1e-12));
    assertThat(joined[C + 1]).isCloseTo(10, within(1e-12));
  }

  /** The transfer matrix of any wall has the determinant 1 (reciprocity), power by power. */
  @Test
  void transferMatrixHasDeterminantOne() {
    double[] wall = joined(Join.HEAT, wall(2, 3), wall(0.5, 7), wall(1, 0.1));
    for (int n = 1; n <= POWERS; n++) {
      double sum = 0;
      double largest = 0;
      for (int k = 0; k <= n; k++) {
        double ad = power(wall, A, k, 1) * power(wall, D, n - k, 1);
        sum += ad - wall[B + k] * power(wall, C, n - k, 0);
        largest = Math.max(largest, Math.abs(ad));
      }
      assertThat(sum).isCloseTo(0, within(1e-9 * largest));
    }
  }

  private static double power(double[] wall, int base, int power, double constant) {
    return power == 0 ? constant : wall[base + power];
  }

  /** Two passes: 5 % running waste after 100 m² of set-up, then 2 % after 50 m²; by hand. */
  @Test
  void areasOfPassesRunBackFromTheInside() {
    double[] first = {1.05, 100, 0.01, 40};
    double[] second = {1.02, 50, 0.02, 60};
    double[] both = joined(Join.AFFINE, first, second);
    double between = 1.02 * 1000 + 50;
    assertThat(both[0] * 1000 + both[1]).isCloseTo(1.05 * between + 100, within(1e-9));
    double cost = 0.02 * 1000 + 60 + 0.01 * between + 40;
    assertThat(both[2] * 1000 + both[3]).isCloseTo(cost, within(1e-9));
  }
}
