package plyworth.workbench.ranking;

import java.util.List;
import java.util.function.IntToLongFunction;
import java.util.function.Supplier;
import plyworth.shared.study.Limit;
import plyworth.workbench.engine.search.Goal;
import plyworth.workbench.engine.search.Line;
import plyworth.workbench.engine.table.Chunk;
import plyworth.workbench.engine.table.Narrowing;

/** The best candidates under a value model, judged as in a table. */
final class SearchGoal implements Goal {

  /** Share by which a figure may differ from its bounds by rounding. */
  private static final double ROUNDING = 1e-9;

  /** What the last place of a float is to the whole, at most. */
  private static final double LAST_PLACE = 0x1p-23;

  private static final boolean[] NOTHING = {};

  private final ValueCurve[] curves;
  private final double[] weights;
  private final int[] weighed;
  private final List<LimitCheck> checks;
  private final ExactScores exact;
  private final ValueModel model;
  private final Refinement refinement;
  private final Shortlist expected;
  private final int k;
  private double floor = Double.NEGATIVE_INFINITY;

  /**
   * Nothing found yet.
   *
   * @param k how many fill the list
   * @param empty makes an empty list
   */
  SearchGoal(ValueModel model, int k, Supplier<Shortlist> empty, ExactScores exact) {
    this.k = k;
    expected = empty.get();
    this.model = model;
    this.exact = exact;
    refinement = new Refinement(model, empty, exact);
    checks = LimitCheck.of(model);
    weighed = Weights.counting(model);
    curves =
        model.criteria().stream().map(w -> new ValueCurve(w.value())).toArray(ValueCurve[]::new);
    weights = model.criteria().stream().mapToDouble(Weighed::weight).toArray();
  }

  @Override
  public double atMost(double[] low, double[] high) {
    return atMost(low, high, NOTHING);
  }

  @Override
  public double atMost(double[] low, double[] high, boolean[] without) {
    for (LimitCheck check : checks) {
      if (excluded(check.limit(), low[check.criterion()], high[check.criterion()])) {
        return Double.NEGATIVE_INFINITY;
      }
    }
    double sum = 0;
    for (int c : weighed) {
      if (c >= without.length || !without[c]) {
        sum += weights[c] * highest(curves[c], low[c], high[c]);
      }
    }
    return sum;
  }

  @Override
  public boolean counts(int criterion) {
    return weights[criterion] > 0;
  }

  @Override
  public boolean excludes() {
    return !checks.isEmpty();
  }

  /**
   * Valued are narrowed figures, which lie less than the last place of a float beside their own.
   */
  @Override
  public Line above(int criterion, double low, double high) {
    double largest = Math.max(Math.abs(low), Math.abs(high));
    double apart = largest * LAST_PLACE + Float.MIN_NORMAL;
    Line line = curves[criterion].above(low - apart, high + apart);
    double weight = weights[criterion];
    return new Line(
        weight * line.slope(),
        weight * (line.atZero() + Math.abs(line.slope()) * apart),
        line.exact());
  }

  /** A figure that is unknown counts as 0, one that may be known as the best it can be. */
  private static double highest(ValueCurve curve, double low, double high) {
    return Double.isNaN(low) || Double.isNaN(high)
        ? curve.highest(Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY)
        : curve.highest(Narrowing.toOdd(below(low)), Narrowing.toOdd(above(high)));
  }

  /** Limits are decided on figures that are not narrowed. */
  private static boolean excluded(Limit limit, double low, double high) {
    return limit.bound() == Limit.Bound.AT_MOST
        ? !Double.isNaN(low) && !limit.allows(below(low))
        : !Double.isNaN(high) && !limit.allows(above(high));
  }

  private static double below(double low) {
    return Double.isInfinite(low) ? low : low - ROUNDING * Math.abs(low);
  }

  private static double above(double high) {
    return Double.isInfinite(high) ? high : high + ROUNDING * Math.abs(high);
  }

  @Override
  public boolean admits(double value, long path) {
    return value >= floor && refinement.admits(value, path);
  }

  /** A list filled with candidates that exist says what the worst of the best is worth at least. */
  @Override
  public void expect(IntToLongFunction path, Chunk scored) {
    byte[] groups = new ChunkGroups(scored, checks, exact).from(path);
    visit(groups, path, scored, new Expecting());
    List<Shortlist.Entry> best = expected.sorted();
    floor = k > 0 && best.size() == k ? best.get(k - 1).value() : floor;
  }

  private final class Expecting implements TableScan.Visitor {
    @Override
    public boolean admits(double value, long path) {
      return true;
    }

    @Override
    public void visit(long path, Group group, double worst, double best) {
      if (group == Group.RANKED) {
        expected.offer(worst, path);
      }
    }
  }

  @Override
  public void take(IntToLongFunction path, Chunk scored) {
    byte[] groups = new ChunkGroups(scored, checks, exact).from(path);
    visit(groups, path, scored, refinement);
  }

  private void visit(
      byte[] groups, IntToLongFunction path, Chunk scored, TableScan.Visitor visitor) {
    RowValues values = new RowValues(model);
    for (int z = 0; z * Chunk.ZONE < groups.length; z++) {
      int zone = z;
      values.compute(c -> ZoneRows.of(curves[c], scored, c, zone));
      TableScan.rows(groups, zone, path, values, Double.NEGATIVE_INFINITY, visitor);
    }
  }

  /** The best, once the search is over. */
  List<RankedCandidate> best() {
    return refinement.finish().sorted().stream()
        .map(entry -> new RankedCandidate(entry.path(), model.value(exact.figures(entry.path()))))
        .toList();
  }
}
