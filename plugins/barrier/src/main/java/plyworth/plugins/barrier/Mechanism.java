package plyworth.plugins.barrier;

/**
 * One way in which the product reaches its limit.
 *
 * @param permeant what passes
 * @param allowance days until the limit times conductance of the pack; NaN when unknown, infinite
 *     when the climate never drives the product to the limit
 */
record Mechanism(Permeant permeant, double allowance) {

  /** Days until the limit through a pack of some conductance; zero when nothing is allowed. */
  double days(double conductance) {
    return allowance == 0 ? 0 : allowance / conductance;
  }

  /** Whether any pack could be the one that fails. */
  boolean canLimit() {
    return !Double.isInfinite(allowance);
  }

  /** The word for it, also the last part of the keys of its texts. */
  String word() {
    return switch (permeant) {
      case OXYGEN -> "oxygen";
      case WATER -> "moisture";
      case ALCOHOL -> "volatile";
    };
  }

  /** The source behind the balance. */
  String source() {
    return switch (permeant) {
      case OXYGEN -> "oxygen balance of the pack; series model: Polymer Journal 36 (2004) 386";
      case WATER ->
          "sorption balance of the pack, from memory; series model: Polymer Journal 36 (2004) 386";
      case ALCOHOL ->
          "Antoine and Wilson equations, from memory; series model: Polymer Journal 36 (2004) 386";
    };
  }
}
