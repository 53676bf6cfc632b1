package plyworth.workbench.ranking;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/**
 * Finds the best when some figures are only bounded: candidates are scored in full in the order of
 * what they could be worth, until none that is left could still be among the best.
 */
final class Refinement implements TableScan.Visitor {

  private final ValueModel model;
  private final ExactScores exact;
  private final Shortlist certain;
  private final Shortlist best;
  private final List<Shortlist.Entry> pending = new ArrayList<>();
  private final Map<Long, Valuation> refined = new HashMap<>();

  /**
   * Nothing found yet.
   *
   * @param empty makes an empty list of what is looked for
   */
  Refinement(ValueModel model, Supplier<Shortlist> empty, ExactScores exact) {
    this.model = model;
    this.exact = exact;
    certain = empty.get();
    best = empty.get();
  }

  @Override
  public boolean admits(double value, long path) {
    return certain.admits(value, path);
  }

  @Override
  public double least() {
    return certain.least();
  }

  @Override
  public void visit(long path, Group group, double worst, double highest) {
    if (group == Group.RANKED) {
      certain.offer(worst, path);
    }
    if (group == Group.RANKED && worst == highest) {
      best.offer(worst, path);
    } else if (certain.wants(highest, path)) {
      pending.add(new Shortlist.Entry(highest, path));
    }
  }

  /** Scores what is needed. */
  Shortlist finish() {
    pending.sort(Shortlist.ORDER);
    for (Shortlist.Entry entry : pending) {
      if (!best.admits(entry.value(), entry.path())) {
        break;
      }
      if (!best.wants(entry.value(), entry.path())) {
        continue;
      }
      double[] figures = exact.figures(entry.path());
      if (model.group(figures, false) == Group.RANKED) {
        Valuation valuation = model.value(figures);
        refined.put(entry.path(), valuation);
        best.offer(valuation.value(), entry.path());
      }
    }
    return best;
  }

  /** The best by what is known without scoring in full. */
  Shortlist certain() {
    return certain;
  }

  /** What was refined, by path. */
  Map<Long, Valuation> refined() {
    return refined;
  }
}
