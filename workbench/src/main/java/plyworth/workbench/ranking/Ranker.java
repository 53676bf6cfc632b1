package plyworth.workbench.ranking;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.LongFunction;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import plyworth.shared.study.Limit;
import plyworth.workbench.engine.table.CandidateTable;
import plyworth.workbench.engine.table.Progress;

/**
 * Ranks one table again and again. Groups are kept while the limits stay, the values of a criterion
 * while its value function stays, and the best of last time tell what the next best must reach, so
 * that a moved weight costs little.
 */
public final class Ranker implements ExactRanker {

  private final CandidateTable table;
  private final ExactScores exact;
  private List<Limit> limits;
  private Groups groups;
  private ValueBounds bounds;
  private long[] leaders = {};

  /**
   * A ranker for one table.
   *
   * @param exact asked for the few candidates whose figure lies within one float step of a limit
   */
  public Ranker(CandidateTable table, ExactScores exact) {
    this.table = table;
    this.exact = exact;
  }

  /**
   * Ranks by what the table holds. Bounded figures count at their worse end; candidates in {@link
   * Group#OPEN} are counted and left out.
   *
   * @param k how many of the best to list
   */
  public synchronized Ranking rank(ValueModel model, int k) {
    prepare(model);
    BestK best = new BestK(k);
    new TableScan(groups, bounds, model, floor(model, k))
        .run(
            false,
            new TableScan.Visitor() {
              @Override
              public boolean admits(double value, long path) {
                return best.admits(value, path);
              }

              @Override
              public double least() {
                return best.least();
              }

              @Override
              public void visit(long path, Group group, double worst, double highest) {
                if (group == Group.RANKED) {
                  best.offer(worst, path);
                }
              }
            });
    leaders = paths(best);
    return ranking(model, best, Map.of());
  }

  /**
   * Ranks exactly: candidates with bounded figures are scored in full as long as they could be
   * among the best. May take long; answers the same as {@link #rank} where nothing is bounded.
   */
  @Override
  public synchronized Ranking refine(ValueModel model, int k) {
    prepare(model);
    Refinement refinement = new Refinement(model, () -> new BestK(k), exact);
    Ranking ranking = refined(model, refinement, floor(model, k));
    leaders = paths(refinement.certain());
    return ranking;
  }

  @Override
  public synchronized Ranking bestOfEach(ValueModel model, int k, LongFunction<?> kind) {
    prepare(model);
    Refinement refinement = new Refinement(model, () -> new BestOfEach(k, kind), exact);
    return refined(model, refinement, Double.NEGATIVE_INFINITY);
  }

  private Ranking refined(ValueModel model, Refinement refinement, double floor) {
    new TableScan(groups, bounds, model, floor).run(groups.counts().open() > 0, refinement);
    return ranking(model, refinement.finish(), refinement.refined());
  }

  /**
   * The Pareto front over the criteria with weight.
   *
   * @param cap most candidates it may hold
   */
  public synchronized ParetoFront paretoFront(ValueModel model, int cap) {
    prepare(model);
    return ParetoSearch.of(table, groups, bounds, model, cap);
  }

  /**
   * The candidate whose greatest loss of value against the best one, under several value models, is
   * the smallest: the minimax-regret choice over all candidates. Bounded figures are refined where
   * they matter.
   *
   * @param models value models that differ in weights alone; at least one
   * @param best the highest value under each of them
   * @return empty when no candidate is ranked
   */
  public synchronized Optional<Regret> leastRegret(List<ValueModel> models, double[] best) {
    prepare(models.get(0));
    return new RegretSearch(table, groups, bounds, exact, models, best).run();
  }

  /**
   * How often each candidate comes first, and among the first few, under many weights: the rank
   * acceptability of all candidates while weights alone are uncertain. By what the table holds, as
   * in {@link #rank}: a bounded figure counts at its worse end.
   *
   * @param model value functions and limits; only criteria with weight in it may have any
   * @param weights at least one sample, with one weight for each criterion of the model; those of a
   *     sample add up to 1
   * @param k how many the first few are
   * @param progress told how many samples are counted; may cancel
   * @return those that are among the first few under some of the weights, the most often first
   *     before the others; none when no candidate is ranked
   * @throws java.util.concurrent.CancellationException when cancelled
   */
  public synchronized List<RankShare> rankShares(
      ValueModel model, double[][] weights, int k, Progress progress) {
    prepare(model);
    int[] counting = Weights.counting(model);
    double[][] samples =
        Arrays.stream(weights)
            .map(all -> IntStream.of(counting).mapToDouble(c -> all[c]).toArray())
            .toArray(double[][]::new);
    return new RankShareSearch(table, groups, bounds, counting, k, progress)
        .run(samples)
        .shares(samples.length, counting, model.criteria().size());
  }

  private void prepare(ValueModel model) {
    if (!model.limits().equals(limits)) {
      groups = Groups.of(table, model, exact);
      limits = model.limits();
    }
    bounds = bounds == null ? ValueBounds.of(table, model) : bounds.under(model);
  }

  /** A value that {@code k} candidates are known to reach: the best of last time, valued anew. */
  private double floor(ValueModel model, int k) {
    double[] values =
        LongStream.of(leaders)
            .filter(path -> groups.isRanked(path))
            .mapToDouble(path -> bounds.worst(model, path))
            .sorted()
            .toArray();
    return k > 0 && k <= values.length ? values[values.length - k] : Double.NEGATIVE_INFINITY;
  }

  private static long[] paths(Shortlist best) {
    return best.sorted().stream().mapToLong(Shortlist.Entry::path).toArray();
  }

  private Ranking ranking(ValueModel model, Shortlist best, Map<Long, Valuation> refined) {
    List<RankedCandidate> candidates =
        best.sorted().stream()
            .map(
                entry -> {
                  Valuation exactly = refined.get(entry.path());
                  return new RankedCandidate(
                      entry.path(),
                      exactly == null ? bounds.valuation(model, entry.path()) : exactly);
                })
            .toList();
    return Ranking.counted(model, candidates, new RankCounter(table, groups, bounds, model));
  }
}
