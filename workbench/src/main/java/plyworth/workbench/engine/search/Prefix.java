package plyworth.workbench.engine.search;

import java.util.Comparator;
import plyworth.workbench.engine.table.Contributions;
import plyworth.workbench.engine.table.StateLayout;

/**
 * The outer layers of some candidates, as a chain of edges.
 *
 * @param outer the same without the last edge; null for the outside of the pack
 * @param edge the last edge; −1 for the outside
 * @param node where it ends
 * @param path lowest path number of the candidates that begin so
 * @param sum what its layers add to the criteria that add up
 * @param atMost the most that one of them can be worth
 */
record Prefix(Prefix outer, int edge, int node, long path, double sum, double atMost) {

  /** Memory that one takes while it waits, roughly: itself, its place in the queue, its chain. */
  static final long BYTES = 100;

  /** The most promising first, on equal promise the lower path number. */
  static final Comparator<Prefix> ORDER =
      Comparator.comparingDouble(Prefix::atMost).reversed().thenComparingLong(Prefix::path);

  /** The prefix of all candidates. */
  static Prefix outside() {
    return new Prefix(null, -1, 0, 0, 0, Double.POSITIVE_INFINITY);
  }

  /** The joined state of its layers. */
  double[] state(Contributions contributions, StateLayout layout) {
    if (outer == null) {
      return layout.neutral();
    }
    double[] joined = layout.neutral();
    layout.join(outer.state(contributions, layout), contributions.of(edge), joined);
    return joined;
  }
}
