package plyworth.plugins.barrier;

import java.util.HashMap;
import java.util.Map;
import plyworth.shared.brief.Climate.Season;
import plyworth.shared.scoring.ScoringContext;

/**
 * What layers let through at the storage climate and in each of its seasons.
 *
 * @param context what the plugin may know
 * @param climate the storage climate, one for the whole brief
 * @param seasons the climate over time
 * @param shared damage over its standard
 * @param storage layers at the storage climate
 * @param bySeason layers in each season
 */
record BarrierClimates(
    ScoringContext context,
    StorageClimate climate,
    Seasons seasons,
    double shared,
    LayerTransmission storage,
    Map<Season, LayerTransmission> bySeason) {

  /**
   * The climates of a brief.
   *
   * @param shared damage over its standard
   */
  static BarrierClimates of(ScoringContext context, double shared) {
    StorageClimate climate = StorageClimate.of(context.brief());
    Seasons seasons =
        new Seasons(context.brief().climate(), Demand.CAP * context.brief().shelfLifeDays());
    Map<Season, LayerTransmission> bySeason = new HashMap<>();
    for (Season season : seasons.round()) {
      bySeason.put(season, new LayerTransmission(context, season.temperatureC(), shared));
    }
    return new BarrierClimates(
        context,
        climate,
        seasons,
        shared,
        new LayerTransmission(context, climate.celsius(), shared),
        Map.copyOf(bySeason));
  }

  /** All the humidity that a layer can see. */
  HumiditySpan span() {
    return HumiditySpan.of(climate, seasons);
  }

  /** Layers in a season, be it one of the brief or any other. */
  LayerTransmission layers(Season season) {
    LayerTransmission known = bySeason.get(season);
    return known != null ? known : new LayerTransmission(context, season.temperatureC(), shared);
  }
}
