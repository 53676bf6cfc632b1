package plyworth.workbench.speed;

import java.util.List;
import org.jgrapht.GraphPath;
import plyworth.workbench.ranking.RankedCandidate;
import plyworth.workbench.ranking.Ranking;

/** Makes sure that what is compared in speed gives the same answers. */
final class Agreement {

  /** Tables keep seven digits. */
  private static final double CLOSE = 1e-6;

  private Agreement() {}

  /**
   * Compares the best with the shortest paths.
   *
   * @throws IllegalStateException when they differ
   */
  static void check(Ranking ranking, List<? extends GraphPath<?, ?>> shortest) {
    check(ranking, shortest.stream().mapToDouble(path -> 1 - path.getWeight()).toArray());
  }

  /**
   * Compares the best with values found otherwise, highest first.
   *
   * @throws IllegalStateException when they differ
   */
  static void check(Ranking ranking, double[] values) {
    List<RankedCandidate> best = ranking.best();
    if (best.size() != values.length) {
      throw new IllegalStateException(best.size() + " are best here, " + values.length + " there");
    }
    for (int i = 0; i < values.length; i++) {
      if (Math.abs(best.get(i).value() - values[i]) > CLOSE) {
        throw new IllegalStateException(
            "rank "
                + (i + 1)
                + " is worth "
                + best.get(i).value()
                + " here, "
                + values[i]
                + " there");
      }
    }
  }
}
