package plyworth.workbench.ranking;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Finds the best when some figures are only bounded: candidates are scored in full in the order of
 * what they could be worth, until none that is left could still be among the best.
 */
final class Refinement implements TableScan.Visitor {

  private final ValueModel model;
  private final ExactScores exact;
  private final BestK certain;
  private final BestK best;
  private final List<BestK.Entry> pending = new ArrayList<>();
  private final Map<Long, Valuation> refined = new HashMap<>();

  Refinement(ValueModel model, int k, ExactScores exact) {
    this.model = model;
    this.exact = exact;
    certain = new BestK(k);
    best = new BestK(k);
  }

  @Override
  public boolean admits(double value, long path) {
    return certain.admits(value, path);
  }

  @Override
  public void visit(long path, Group group, double worst, double highest) {
    if (group == Group.RANKED) {
      certain.offer(worst, path);
    }
    if (group == Group.RANKED && worst == highest) {
      best.offer(worst, path);
    } else if (certain.admits(highest, path)) {
      pending.add(new BestK.Entry(highest, path));
    }
  }

  /** Scores what is needed. */
  BestK finish() {
    pending.sort(BestK.ORDER);
    for (BestK.Entry entry : pending) {
      if (!best.admits(entry.value(), entry.path())) {
        break;
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

  /** What was refined, by path. */
  Map<Long, Valuation> refined() {
    return refined;
  }
}
