package plyworth.plugins.barrier.climate;

import plyworth.plugins.barrier.laminate.HumidityCurve;
import plyworth.shared.brief.Climate.Season;

/**
 * All the humidity that a layer of a pack can ever see, 0 to 1: between outside and inside, in any
 * season and at any state of the product.
 *
 * @param driest lowest
 * @param dampest highest
 */
public record HumiditySpan(double driest, double dampest) {

  /** The span of a brief. */
  static HumiditySpan of(StorageClimate climate, Seasons seasons) {
    double driest = Math.min(climate.outside(), climate.driest());
    double dampest = Math.max(climate.outside(), climate.inside());
    for (Season season : seasons.round()) {
      driest = Math.min(driest, season.humidityPercent() / 100);
      dampest = Math.max(dampest, season.humidityPercent() / 100);
    }
    return new HumiditySpan(driest, dampest);
  }

  /** The smallest figure of a curve within it. */
  public double lowest(HumidityCurve curve) {
    return curve.lowest(driest, dampest);
  }

  /** The largest figure of a curve within it. */
  public double highest(HumidityCurve curve) {
    return curve.highest(driest, dampest);
  }
}
