package plyworth.plugins.barrier.layerwise;

import plyworth.plugins.barrier.climate.HumiditySpan;
import plyworth.plugins.barrier.laminate.HumidityCurve;
import plyworth.plugins.barrier.laminate.MeanTable;

/**
 * A kind of layer that humidity moves, prepared for looking up.
 *
 * @param water how its permeability to water follows humidity
 * @param oxygen the same for oxygen
 * @param conducts means of {@code water}
 * @param resists means of {@code water} over {@code oxygen}
 * @param loosest resistance to water over the reference where it is dampest
 * @param tightest the same where it is driest
 */
record Hygroscopic(
    HumidityCurve water,
    HumidityCurve oxygen,
    MeanTable conducts,
    MeanTable resists,
    double loosest,
    double tightest) {

  Hygroscopic(HumidityCurve water, HumidityCurve oxygen, HumiditySpan span) {
    this(
        water,
        oxygen,
        new MeanTable(water),
        new MeanTable(water.over(oxygen)),
        1 / span.highest(water),
        1 / span.lowest(water));
  }

  /** Whether damp never tightens it, so that the ends of humidity give the ends of resistance. */
  boolean rising() {
    return water.rising() && oxygen.rising();
  }
}
