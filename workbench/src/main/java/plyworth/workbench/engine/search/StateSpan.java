package plyworth.workbench.engine.search;

import plyworth.shared.scoring.Join;
import plyworth.workbench.engine.table.StateLayout;

/**
 * Ends between which states lie.
 *
 * @param low lower ends by component
 * @param high upper ends
 */
record StateSpan(double[] low, double[] high) {

  /** Share by which sums are widened, so that rounding in another order stays inside. */
  private static final double ROUNDING = 1e-13;

  /** A single state. */
  static StateSpan point(double[] state) {
    return new StateSpan(state, state);
  }

  /** Everything outside followed by anything inside. */
  StateSpan followedBy(StateSpan inner, StateLayout layout) {
    double[] joinedLow = new double[low.length];
    double[] joinedHigh = new double[low.length];
    for (int part = 0; part < layout.parts(); part++) {
      Join join = layout.join(part);
      int at = layout.offset(part);
      join.joinBounds(low, high, inner.low, inner.high, joinedLow, joinedHigh, at);
      if (rounds(join)) {
        widen(joinedLow, joinedHigh, at, join.size());
      }
    }
    return new StateSpan(joinedLow, joinedHigh);
  }

  /** What encloses both. */
  StateSpan with(StateSpan other, StateLayout layout) {
    double[] hullLow = low.clone();
    double[] hullHigh = high.clone();
    for (int part = 0; part < layout.parts(); part++) {
      layout.join(part).hull(hullLow, hullHigh, other.low, other.high, layout.offset(part));
    }
    return new StateSpan(hullLow, hullHigh);
  }

  private static boolean rounds(Join join) {
    return switch (join) {
      case SUM, AFFINE, BENDING, HEAT -> true;
      case MAX, MIN, INNERMOST, OUTERMOST, BITS -> false;
    };
  }

  /** Moves ends apart by what rounding can be. */
  private static void widen(double[] low, double[] high, int from, int count) {
    for (int c = from; c < from + count; c++) {
      low[c] = Double.isInfinite(low[c]) ? low[c] : low[c] - ROUNDING * Math.abs(low[c]);
      high[c] = Double.isInfinite(high[c]) ? high[c] : high[c] + ROUNDING * Math.abs(high[c]);
    }
  }
}
