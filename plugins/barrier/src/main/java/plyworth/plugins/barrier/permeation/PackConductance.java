package plyworth.plugins.barrier.permeation;

import plyworth.shared.brief.Climate;

/** What a formed and handled pack lets through, all its ways together. */
@FunctionalInterface
public interface PackConductance {

  /**
   * Conductance of the pack, amount/(day·force): g of water per pascal, cm³ of oxygen per bar, g of
   * alcohol per unit of activity; NaN when unknown.
   *
   * @param permeant what passes
   * @param season the climate outside
   * @param insideActivity water activity inside, 0 to 1
   */
  double at(Permeant permeant, Climate.Season season, double insideActivity);
}
