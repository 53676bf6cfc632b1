package plyworth.plugins.barrier.layerwise;

import plyworth.plugins.barrier.climate.HumiditySpan;
import plyworth.plugins.barrier.laminate.HumidityCurve;
import plyworth.plugins.barrier.laminate.MeanTable;

/**
 * A kind of layer that humidity moves, prepared for looking up when it is first met: of the
 * materials at hand few stand in the packs of a study.
 */
final class Hygroscopic {

  private final HumidityCurve water;
  private final HumidityCurve oxygen;
  private final HumiditySpan span;
  private volatile Tables tables;

  /**
   * Tables of a kind.
   *
   * @param conducts means of its permeability to water
   * @param resists means of that over its permeability to oxygen
   * @param loosest resistance to water over the reference where it is dampest
   * @param tightest the same where it is driest
   */
  record Tables(MeanTable conducts, MeanTable resists, double loosest, double tightest) {}

  /**
   * A kind.
   *
   * @param water how its permeability to water follows humidity
   * @param oxygen the same for oxygen
   */
  Hygroscopic(HumidityCurve water, HumidityCurve oxygen, HumiditySpan span) {
    this.water = water;
    this.oxygen = oxygen;
    this.span = span;
  }

  /** Whether damp never tightens it, so that the ends of humidity give the ends of resistance. */
  boolean rising() {
    return water.rising() && oxygen.rising();
  }

  /** Its tables. Two threads that ask at once may both make them; they are the same. */
  Tables tables() {
    Tables made = tables;
    if (made == null) {
      made =
          new Tables(
              new MeanTable(water),
              new MeanTable(water.over(oxygen)),
              1 / span.highest(water),
              1 / span.lowest(water));
      tables = made;
    }
    return made;
  }
}
