package plyworth.plugins.recyclability;

import java.util.Optional;

/**
 * From a layerwise state to every figure the criteria and the blocking rule need.
 *
 * @param proxy the recyclable share by design
 * @param region the rules of the market; empty when none are carried for it
 * @param yield the fibre estimate
 * @param endYear last year of the platform
 * @param enforce whether a bar from the market blocks
 */
record Judge(Proxy proxy, Optional<Region> region, FibreYield yield, int endYear, boolean enforce) {

  /** Writes the layerwise measures of one state. */
  void exact(double[] state, double[] m) {
    Measures.fill(state, m);
    m[Measure.END_YEAR.ordinal()] = endYear;
    m[Measure.TARGET.ordinal()] = proxy.target(m);
    m[Measure.RECYCLABLE.ordinal()] = proxy.strict(m);
    m[Measure.FIBRE_YIELD.ordinal()] = yield.of(m);
    m[Measure.CLASS.ordinal()] = region.isPresent() ? region.get().classOf(m) : 0;
  }

  /** Writes the bounds of the layerwise measures of all states between two. */
  void bounds(double[] stateLow, double[] stateHigh, double[] low, double[] high) {
    MeasureBounds.fill(stateLow, stateHigh, low, high);
    low[Measure.END_YEAR.ordinal()] = endYear;
    high[Measure.END_YEAR.ordinal()] = endYear;
    proxy.bounds(low, high);
    yield.bounds(low, high);
    low[Measure.CLASS.ordinal()] = 0;
    high[Measure.CLASS.ordinal()] = 0;
    region.ifPresent(r -> r.classBounds(low, high));
  }

  /** Whether the market is barred before the platform ends; the measures must be filled. */
  boolean barred(double[] m) {
    return region.flatMap(Region::access).map(set -> set.anyFires(m)).orElse(false);
  }

  /** The set that bars from the market, where it is enforced. */
  Optional<RuleSet> blocking() {
    return enforce ? region.flatMap(Region::access) : Optional.empty();
  }
}
