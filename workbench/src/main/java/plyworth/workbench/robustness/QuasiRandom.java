package plyworth.workbench.robustness;

import java.util.SplittableRandom;
import org.hipparchus.random.SobolSequenceGenerator;

/**
 * Points that fill a cube more evenly than random ones: the Sobol sequence, every coordinate
 * shifted digit by digit by a random number, so that the seed matters and evenness stays (L'Ecuyer
 * and Lemieux, Recent advances in randomized quasi-Monte Carlo methods, 2002; from memory).
 */
final class QuasiRandom {

  /** Digits of a coordinate of the sequence. */
  private static final double SCALE = 0x1.0p52;

  private QuasiRandom() {}

  /**
   * The first points.
   *
   * @param count most even where it is a power of two
   * @return point by coordinate, 0 to below 1
   */
  static double[][] points(int count, int dimensions, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    long[] shifts = random.longs(dimensions, 0, (long) SCALE).toArray();
    SobolSequenceGenerator sequence = new SobolSequenceGenerator(Math.max(1, dimensions));
    double[][] points = new double[count][];
    for (int i = 0; i < count; i++) {
      points[i] = sequence.nextVector();
      for (int d = 0; d < dimensions; d++) {
        points[i][d] = ((long) (points[i][d] * SCALE) ^ shifts[d]) / SCALE;
      }
    }
    return points;
  }
}
