package plyworth.plugins.barrier.climate;

import plyworth.plugins.barrier.permeation.AlcoholWater;
import plyworth.plugins.barrier.permeation.SaturatedVapour;
import plyworth.shared.brief.Brief;
import plyworth.shared.brief.Climate;
import plyworth.shared.brief.Isotherm;
import plyworth.shared.brief.MoistureLimit;

/**
 * The climate a laminate lives in.
 *
 * @param celsius storage temperature, °C
 * @param outside relative humidity outside, 0 to 1
 * @param inside water activity in the pack at its wettest, 0 to 1
 * @param driest water activity in the pack at its driest, 0 to 1
 */
public record StorageClimate(double celsius, double outside, double inside, double driest) {

  /**
   * The climate of a brief. Inside is the wetter end of the moisture limit, or the water over an
   * alcohol mixture; a product that holds no water is taken to stand at the humidity outside.
   */
  static StorageClimate of(Brief brief) {
    double celsius = brief.climate().temperatureC();
    double outside = brief.climate().humidityPercent() / 100;
    double inside =
        AlcoholWater.waterActivity(brief, celsius)
            .or(() -> brief.product().moisture().map(limit -> wetterEnd(limit, celsius)))
            .orElse(outside);
    double driest =
        Math.min(
            inside,
            brief.product().moisture().map(limit -> drierEnd(limit, celsius)).orElse(inside));
    return new StorageClimate(celsius, outside, inside, driest);
  }

  private static double wetterEnd(MoistureLimit limit, double celsius) {
    return limit.isotherm(celsius) instanceof Isotherm.Deliquescent
        ? limit.initialActivity()
        : Math.max(limit.initialActivity(), limit.criticalActivity());
  }

  private static double drierEnd(MoistureLimit limit, double celsius) {
    return limit.isotherm(celsius) instanceof Isotherm.Deliquescent
        ? limit.initialActivity()
        : Math.min(limit.initialActivity(), limit.criticalActivity());
  }

  /**
   * Mean of the humidity outside and inside, 0 to 1: what the middle layer of a symmetrical
   * laminate sees whatever its skins are made of (TAPPI 18IFP28, abstract).
   */
  public double within() {
    return (outside + inside) / 2;
  }

  /** The season it stands for. */
  public Climate.Season season() {
    return new Climate.Season(365, celsius, 100 * outside);
  }

  /** Saturated water vapour pressure, Pa. */
  public double saturatedPa() {
    return SaturatedVapour.pascal(celsius);
  }
}
