package plyworth.shared.scoring;

import plyworth.shared.quantity.Range;

/** The arithmetic of random draws. */
final class RandomDraw {

  private RandomDraw() {}

  /** A number from 0 to below 1 that depends on seed and name alone (SplitMix64 finaliser). */
  static double uniform(long seed, String name) {
    long mixed = seed * 0x9E3779B97F4A7C15L + name.hashCode() * 0xD1B54A32D192ED03L;
    mixed = (mixed ^ (mixed >>> 30)) * 0xBF58476D1CE4E5B9L;
    mixed = (mixed ^ (mixed >>> 27)) * 0x94D049BB133111EBL;
    return ((mixed ^ (mixed >>> 31)) >>> 11) * 0x1.0p-53;
  }

  /** The quantile {@code u} of the triangular distribution of a range. */
  static double triangular(double u, Range range) {
    if (!range.known() || range.low() == range.high()) {
      return range.typical();
    }
    if (range.low() > 0) {
      return Math.exp(
          quantile(u, Math.log(range.low()), Math.log(range.typical()), Math.log(range.high())));
    }
    return quantile(u, range.low(), range.typical(), range.high());
  }

  private static double quantile(double u, double a, double m, double b) {
    double atMode = (m - a) / (b - a);
    return u < atMode
        ? a + Math.sqrt(u * (b - a) * (m - a))
        : b - Math.sqrt((1 - u) * (b - a) * (b - m));
  }
}
