package plyworth.plugins.barrier;

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
 */
record StorageClimate(double celsius, double outside, double inside) {

  /**
   * The climate of a brief. Inside is the wetter end of the moisture limit, or the water over an
   * alcohol mixture; a product that holds no water is taken to stand at the humidity outside.
   */
  static StorageClimate of(Brief brief) {
    double celsius = brief.climate().temperatureC();
    double outside = brief.climate().humidityPercent() / 100;
    double inside =
        VolatileBalance.waterActivity(brief, celsius)
            .or(() -> brief.product().moisture().map(limit -> wetterEnd(limit, celsius)))
            .orElse(outside);
    return new StorageClimate(celsius, outside, inside);
  }

  /** The climate of a season; inside stays at its wettest. */
  StorageClimate in(Climate.Season season) {
    return new StorageClimate(season.temperatureC(), season.humidityPercent() / 100, inside);
  }

  private static double wetterEnd(MoistureLimit limit, double celsius) {
    return limit.isotherm(celsius) instanceof Isotherm.Deliquescent
        ? limit.initialActivity()
        : Math.max(limit.initialActivity(), limit.criticalActivity());
  }

  /**
   * Relative humidity within the laminate, %: the mean of outside and inside, which the middle
   * layer of a symmetrical laminate sees whatever its skins are made of (TAPPI 18IFP28, abstract).
   * The true place of the layer is not used, so that the figure holds for every structure of a
   * brief.
   */
  double withinPercent() {
    return 50 * (outside + inside);
  }

  /** Saturated water vapour pressure, Pa. */
  double saturatedPa() {
    return SaturatedVapour.pascal(celsius);
  }
}
