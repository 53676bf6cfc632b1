package plyworth.shared.scoring;

import java.util.Random;

/** Random states of each join, on the domain where it is meant to be used. */
final class RandomStates {

  private RandomStates() {}

  static double[] state(Join join, Random random) {
    double[] state = new double[join.size()];
    if (random.nextInt(6) == 0) {
      join.neutral(state, 0);
      return state;
    }
    switch (join) {
      case BITS -> state[0] = random.nextInt(1 << 8);
      case AFFINE -> affine(state, random);
      case BENDING -> bending(state, random);
      default -> {
        for (int k = 0; k < state.length; k++) {
          state[k] = 10 * random.nextDouble();
        }
      }
    }
    return state;
  }

  private static void affine(double[] state, Random random) {
    state[0] = 1 + random.nextDouble();
    state[1] = 100 * random.nextDouble();
    state[2] = random.nextDouble();
    state[3] = 50 * random.nextDouble();
  }

  /** The centroid lies within the thickness. */
  private static void bending(double[] state, Random random) {
    double thickness = 1 + 99 * random.nextDouble();
    state[0] = Math.exp(8 * random.nextDouble());
    state[1] = thickness * random.nextDouble();
    state[2] = Math.exp(10 * random.nextDouble());
    state[3] = thickness;
  }
}
