package plyworth.plugins.barrier;

import plyworth.shared.brief.VolatileContent;

/**
 * Alcohol that leaves a pack, at the constant vapour pressure of the liquid as filled, into air
 * that holds none.
 *
 * <p>The rate is constant until all is gone. In truth the liquid grows richer in water and the rate
 * falls a little; the constant rate is on the safe side.
 *
 * @param content what is filled
 * @param vapour the vapour over it at the storage temperature
 */
record VolatileBalance(VolatileContent content, AlcoholVapour vapour) {

  /** The balance of a content; its vapour is unknown for any other substance than isopropanol. */
  static VolatileBalance of(VolatileContent content, double celsius) {
    return new VolatileBalance(
        content,
        AlcoholVapour.KNOWN.contains(content.substance())
            ? AlcoholVapour.over(content.massFraction(), celsius)
            : AlcoholVapour.UNKNOWN);
  }

  /** Mass of the volatile part as filled, g. */
  double chargeG() {
    return content.chargeG() * content.massFraction();
  }

  /** The loss up to what is allowed, each season at the vapour pressure of its temperature. */
  Balance accrual(double inside, Seasons seasons, SeasonFactors factors) {
    return Accrual.of(
        Permeant.ALCOHOL,
        "%",
        100 / chargeG(),
        0,
        content.allowedLossPercent() / 100 * chargeG(),
        seasons.each(season -> of(content, season.temperatureC()).vapour().alcoholActivity()),
        inside,
        seasons,
        factors);
  }

  /** Loss per day and unit of conductance, % of the charge. */
  double percentPerExposure() {
    return 100 * vapour.alcoholActivity() / chargeG();
  }

  /**
   * Loss after some days, % of the charge.
   *
   * @param conductance of the pack, g/day per unit of activity
   */
  double lossPercent(double days, double conductance) {
    return Math.min(100, percentPerExposure() * days * conductance);
  }
}
