package plyworth.workbench.engine.search;

import java.util.Comparator;

/**
 * The outer layers of some candidates.
 *
 * @param node where it ends
 * @param path lowest path number of the candidates that begin so
 * @param sum what its layers add to the criteria that add up
 * @param atMost the most that one of them can be worth
 */
record Prefix(int node, long path, double sum, double atMost) {

  /** Memory that one takes while it waits, roughly: itself and its place in the queue. */
  static final long BYTES = 60;

  /** The most promising first, on equal promise the lower path number. */
  static final Comparator<Prefix> ORDER =
      Comparator.comparingDouble(Prefix::atMost).reversed().thenComparingLong(Prefix::path);

  /** The prefix of all candidates. */
  static Prefix outside() {
    return new Prefix(0, 0, 0, Double.POSITIVE_INFINITY);
  }
}
