package plyworth.workbench.robustness;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalLong;
import java.util.stream.IntStream;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.engine.table.CandidateTable;
import plyworth.workbench.ranking.RankedCandidate;

/**
 * Weight-stability intervals of the leader, over all candidates.
 *
 * <p>With the weight of one criterion at t and the others at (1 − t)/(1 − w) times what they are,
 * every value is a line in t, and the highest value of all candidates is convex. So when the leader
 * is level with the best at two weights, nobody beats it between them. The search starts at the far
 * end, asks the ranking who leads there, goes back to where that candidate crosses the leader, and
 * asks again, until the leader itself is first: each crossing is in closed form, and each question
 * is answered over all candidates.
 */
public final class LeaderStability {

  /** Leads that differ by less come from rounding. */
  private static final double LEVEL = 1e-12;

  /** Columns tell values apart to seven digits; among these few the exact figures decide. */
  private static final int CLOSE = 5;

  private final Contest contest;
  private final double[] weights;
  private final double[] leader;

  private LeaderStability(Contest contest, long leader) {
    this.contest = contest;
    this.weights = contest.weights();
    this.leader = contest.values(leader);
  }

  /** The interval of every criterion that the table has figures of; none without a leader. */
  public static List<WeightInterval> of(Ranked ranked) {
    CandidateTable table = ranked.scored().table();
    int[] criteria =
        IntStream.range(0, table.criteria().size())
            .filter(c -> table.criteria().get(c).applies() && table.chunk(0).has(c))
            .toArray();
    return of(Contest.of(ranked), criteria);
  }

  /**
   * The intervals of some criteria; none when no candidate is ranked or nothing has weight.
   *
   * @param criteria their places in the value model
   */
  static List<WeightInterval> of(Contest contest, int[] criteria) {
    List<RankedCandidate> best = contest.best(1);
    if (best.isEmpty() || !contest.model().weighted()) {
      return List.of();
    }
    LeaderStability stability = new LeaderStability(contest, best.get(0).path());
    return IntStream.of(criteria).mapToObj(stability::interval).toList();
  }

  private WeightInterval interval(int criterion) {
    double weight = weights[criterion];
    boolean alone = weight >= 1;
    return new WeightInterval(
        criterion,
        weight,
        alone ? WeightInterval.End.UNDEFINED : end(criterion, 0),
        alone ? new WeightInterval.End(1, OptionalLong.empty()) : end(criterion, 1));
  }

  private WeightInterval.End end(int criterion, double extreme) {
    double from = weights[criterion];
    double at = extreme;
    OptionalLong overtaker = OptionalLong.empty();
    while (at != from) {
      double[] moved = moved(criterion, at);
      long challenger = challenger(moved);
      double behind = -lead(challenger, moved);
      if (behind <= LEVEL) {
        break;
      }
      double ahead = Math.max(0, lead(challenger, weights));
      at = from + (at - from) * ahead / (ahead + behind);
      overtaker = OptionalLong.of(challenger);
    }
    return new WeightInterval.End(at, overtaker);
  }

  /** The candidate of highest value. */
  private long challenger(double[] moved) {
    return contest.weighing(moved).best(CLOSE).stream()
        .map(RankedCandidate::path)
        .min(Comparator.comparingDouble(path -> lead(path, moved)))
        .orElseThrow();
  }

  /** By how much the leader is worth more than another. */
  private double lead(long other, double[] moved) {
    double[] values = contest.values(other);
    double lead = 0;
    for (int c = 0; c < moved.length; c++) {
      lead += moved[c] * (leader[c] - values[c]);
    }
    return lead;
  }

  /** All weights with that of one criterion at {@code share}. */
  private double[] moved(int criterion, double share) {
    double rest = (1 - share) / (1 - weights[criterion]);
    double[] moved = new double[weights.length];
    for (int c = 0; c < moved.length; c++) {
      moved[c] = c == criterion ? share : weights[c] * rest;
    }
    return moved;
  }
}
