package plyworth.plugins.barrier.layerwise;

import java.util.function.DoublePredicate;
import plyworth.plugins.barrier.course.Balance;

/**
 * Conductances from which on nothing more need be known of a pack: days never rise with
 * conductance, so that one which keeps up to the cap, or fails, speaks for all that conduct less,
 * or more.
 *
 * @param keepsUpTo largest conductance at which the product keeps up to the cap for certain;
 *     negative when there is none
 * @param failsFrom least conductance at which it fails for certain; infinite when there is none
 */
record Verdict(double keepsUpTo, double failsFrom) {

  /** Share of a conductance that rounding cannot bridge. */
  private static final double ROUNDING = 1e-9;

  /**
   * The verdict of a balance.
   *
   * @param cap days beyond which no pack is told apart
   * @param failsBefore days before which a pack fails
   */
  static Verdict of(Balance balance, double cap, double failsBefore) {
    double keeps = last(conductance -> balance.atLeast(conductance) >= cap);
    double fails = last(conductance -> !(balance.atMost(conductance) < failsBefore));
    return new Verdict(keeps * (1 - ROUNDING), (fails < 0 ? 0 : fails) * (1 + ROUNDING));
  }

  /** The last conductance that still has what more of it loses; −1 when none has it. */
  private static double last(DoublePredicate has) {
    long low = -1;
    long high = Double.doubleToRawLongBits(Double.POSITIVE_INFINITY);
    if (has.test(Double.POSITIVE_INFINITY)) {
      return Double.POSITIVE_INFINITY;
    }
    while (high - low > 1) {
      long middle = (low + high) / 2;
      boolean there = has.test(Double.longBitsToDouble(middle));
      low = there ? middle : low;
      high = there ? high : middle;
    }
    return low < 0 ? -1 : Double.longBitsToDouble(low);
  }

  /** Whether a pack that conducts as much, or less, keeps its product up to the cap. */
  boolean keeps(double conductance) {
    return conductance <= keepsUpTo;
  }
}
