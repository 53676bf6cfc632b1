package plyworth.plugins.barrier.climate;

import plyworth.plugins.barrier.permeation.LayerTransmission;
import plyworth.plugins.barrier.permeation.Leaks;
import plyworth.plugins.barrier.permeation.Permeant;
import plyworth.shared.brief.Climate.Season;
import plyworth.shared.material.Material;
import plyworth.shared.structure.Layer;

/**
 * Between which factors the conductance of any pack can change from the storage climate to each
 * season. Conductances add and resistances add, so a pack changes by no more than the layer or the
 * leak that changes most, and by no less than the one that changes least.
 *
 * @param lowest smallest factor in each season, over the materials at hand
 * @param highest largest factor in each season
 */
public record SeasonFactors(double[] lowest, double[] highest) {

  /** A constant climate changes nothing. */
  static final SeasonFactors NONE = new SeasonFactors(new double[] {1}, new double[] {1});

  /** The factors of a permeant over the materials of a library. */
  public static SeasonFactors of(BarrierClimates climates, Permeant permeant) {
    if (climates.seasons().constant()) {
      return NONE;
    }
    return new SeasonFactors(
        climates.seasons().each(season -> extreme(climates, permeant, season, false)),
        climates.seasons().each(season -> extreme(climates, permeant, season, true)));
  }

  private static double extreme(
      BarrierClimates climates, Permeant permeant, Season season, boolean highest) {
    double extreme = highest ? 0 : Double.POSITIVE_INFINITY;
    LayerTransmission there = climates.layers(season.temperatureC());
    for (Material material : climates.context().materials().all()) {
      Layer layer = Layer.web(material.id(), 1);
      double factor =
          there.climateFactor(layer, permeant) / climates.storage().climateFactor(layer, permeant);
      if (!Double.isNaN(factor)) {
        extreme = highest ? Math.max(extreme, factor) : Math.min(extreme, factor);
      }
    }
    Leaks leaks = Leaks.of(climates.context());
    if (leaks.any()) {
      double factor =
          leaks.one(permeant, season.temperatureC())
              / leaks.one(permeant, climates.climate().celsius());
      extreme = highest ? Math.max(extreme, factor) : Math.min(extreme, factor);
    }
    return extreme;
  }
}
