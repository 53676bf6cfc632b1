package plyworth.plugins.barrier.course;

import plyworth.plugins.barrier.permeation.PackConductance;

/**
 * How much more, or less, a pack may conduct than it does, so that a limit is reached just when the
 * shelf life is over: the brief computed backwards.
 *
 * @param times conductance the pack may have over the one it has; infinite when any will do
 */
public record ProtectionNeeded(double times) {

  private static final double WIDEST = 1e9;

  private static final int BISECTIONS = 48;

  /**
   * The need of one mechanism.
   *
   * @param days shelf life asked for
   */
  public static ProtectionNeeded of(Mechanism mechanism, PackConductance pack, double days) {
    if (!mechanism.canLimit() || keeps(mechanism, pack, WIDEST, days)) {
      return new ProtectionNeeded(Double.POSITIVE_INFINITY);
    }
    if (!keeps(mechanism, pack, 1 / WIDEST, days)) {
      return new ProtectionNeeded(0);
    }
    double low = -Math.log(WIDEST);
    double high = Math.log(WIDEST);
    for (int i = 0; i < BISECTIONS; i++) {
      double middle = (low + high) / 2;
      if (keeps(mechanism, pack, Math.exp(middle), days)) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return new ProtectionNeeded(Math.exp(low));
  }

  private static boolean keeps(
      Mechanism mechanism, PackConductance pack, double times, double days) {
    PackConductance other = (permeant, season, inside) -> times * pack.at(permeant, season, inside);
    return mechanism.life(other).days() >= days;
  }
}
