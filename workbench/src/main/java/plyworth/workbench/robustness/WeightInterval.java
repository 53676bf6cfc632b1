package plyworth.workbench.robustness;

import java.util.OptionalLong;

/**
 * How far one weight may move, all others keeping their proportions, with the leader staying first,
 * alone or level with others.
 *
 * @param criterion place of the criterion in the value model
 * @param weight its share of all weight now, 0 to 1
 * @param lower how far it may fall
 * @param upper how far it may rise
 */
public record WeightInterval(int criterion, double weight, End lower, End upper) {

  /**
   * An end of the interval.
   *
   * @param weight the share of all weight; NaN where nothing says how the other weights would grow,
   *     because all of them are 0
   * @param overtaker path number of the candidate that leads beyond; empty when none does up to a
   *     weight of 0 or 1
   */
  public record End(double weight, OptionalLong overtaker) {

    /** Where the other weights have no proportions to keep. */
    static final End UNDEFINED = new End(Double.NaN, OptionalLong.empty());

    /** Whether the others have proportions to keep. */
    public boolean defined() {
      return !Double.isNaN(weight);
    }
  }

  /** Whether the slightest move in some direction changes the leader: it is level with another. */
  public boolean tied() {
    return tied(lower) || tied(upper);
  }

  private boolean tied(End end) {
    return end.overtaker().isPresent() && Math.abs(end.weight() - weight) < 1e-9;
  }
}
