package plyworth.plugins.barrier.course;

import plyworth.plugins.barrier.climate.StorageClimate;
import plyworth.plugins.barrier.permeation.PackConductance;

/**
 * How a product moves towards one of its limits while things cross its pack.
 *
 * <p>The exact answer, {@link #life}, follows the pack through every season. The layerwise form
 * knows only one conductance, that at the {@link StorageClimate}; {@link #atLeast} and {@link
 * #atMost} enclose the exact answer by it, up to the day looked ahead to. Both never rise with
 * conductance. In a constant climate both are the exact answer for a conductance that does not
 * change with the activity inside, to the rounding of the quadrature (1e-12).
 */
public interface Balance {

  /** The fewest days until the limit, for a conductance at the storage climate. */
  double atLeast(double conductance);

  /** The most days until the limit. */
  double atMost(double conductance);

  /**
   * The fewest days, for packs whose conductance to water is enclosed as well and matters to a
   * content that is mixed with water.
   *
   * @param waterLow least conductance to water at the storage climate, g/(day·Pa)
   * @param waterHigh largest conductance to water
   */
  default double atLeast(double conductance, double waterLow, double waterHigh) {
    return atLeast(conductance);
  }

  /** The most days, in the same way. */
  default double atMost(double conductance, double waterLow, double waterHigh) {
    return atMost(conductance);
  }

  /**
   * Days times conductance, above 0, where both ends above are exact and that is constant; NaN
   * elsewhere.
   */
  default double allowance() {
    return Double.NaN;
  }

  /** Days until the limit in a pack. */
  Life life(PackConductance pack);

  /** The way to the limit, up to some day. */
  Course course(PackConductance pack, double days);

  /**
   * What crosses the pack per day when it is filled, in the season that drives most: g of water or
   * alcohol, cm³ of oxygen; negative when it leaves a product that dries.
   *
   * @param conductance of the pack, or of a part of it, at the storage climate
   */
  double rateAtFirst(double conductance);

  /** Whether the climate can drive the product to the limit at all. */
  boolean canLimit();

  /** Whether the product is at its limit, or beyond it, when it is packed. */
  boolean atOnce();
}
