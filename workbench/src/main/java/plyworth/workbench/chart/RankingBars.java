package plyworth.workbench.chart;

import java.util.List;

/**
 * What the ranking chart shows: the value of each candidate as a bar built from the contributions
 * of its criteria.
 *
 * @param title heading
 * @param criteria name of each part of a bar, in the order they are stacked
 * @param bars bars from the top down
 */
public record RankingBars(String title, List<String> criteria, List<Bar> bars) {

  /** Copies the lists. */
  public RankingBars {
    criteria = List.copyOf(criteria);
    bars = List.copyOf(bars);
  }

  /**
   * One candidate.
   *
   * @param label its rank and structure, short
   * @param tooltip its structure in full
   * @param contributions weight times value per criterion, as many as there are criteria
   * @param upTo value when every unknown turns out for the best; equal to the sum of the
   *     contributions when nothing is unknown
   * @param standing where it stands
   */
  public record Bar(
      String label, String tooltip, List<Double> contributions, double upTo, Standing standing) {

    /**
     * Copies the contributions.
     *
     * @throws IllegalArgumentException when one is negative or not finite
     */
    public Bar {
      contributions = List.copyOf(contributions);
      for (double contribution : contributions) {
        if (!(contribution >= 0)) {
          throw new IllegalArgumentException("the contribution " + contribution + " is no length");
        }
      }
    }

    /** The value: the sum of the contributions. */
    public double value() {
      return contributions.stream().mapToDouble(Double::doubleValue).sum();
    }
  }

  /** Where a candidate stands. */
  public enum Standing {
    /** In the ranking. */
    RANKED,
    /** Today's structure, ranked like the others. */
    BASELINE,
    /** Today's structure, which a rule blocks or a limit excludes. */
    BASELINE_OUT
  }
}
