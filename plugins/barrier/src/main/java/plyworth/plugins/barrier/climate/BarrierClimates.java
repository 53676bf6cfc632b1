package plyworth.plugins.barrier.climate;

import java.util.HashMap;
import java.util.Map;
import plyworth.plugins.barrier.permeation.BarrierParameters;
import plyworth.plugins.barrier.permeation.LayerTransmission;
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
 * @param byCelsius layers at the temperature of each season
 */
public record BarrierClimates(
    ScoringContext context,
    StorageClimate climate,
    Seasons seasons,
    double shared,
    LayerTransmission storage,
    Map<Double, LayerTransmission> byCelsius) {

  /**
   * The climates of a brief.
   *
   * @param shared damage over its standard
   */
  public static BarrierClimates of(ScoringContext context, double shared) {
    StorageClimate climate = StorageClimate.of(context.brief());
    Seasons seasons =
        new Seasons(
            context.brief().climate(), BarrierParameters.CAP * context.brief().shelfLifeDays());
    Map<Double, LayerTransmission> byCelsius = new HashMap<>();
    byCelsius.put(climate.celsius(), new LayerTransmission(context, climate.celsius(), shared));
    for (Season season : seasons.round()) {
      byCelsius.computeIfAbsent(
          season.temperatureC(), celsius -> new LayerTransmission(context, celsius, shared));
    }
    return new BarrierClimates(
        context, climate, seasons, shared, byCelsius.get(climate.celsius()), Map.copyOf(byCelsius));
  }

  /** All the humidity that a layer can see. */
  public HumiditySpan span() {
    return HumiditySpan.of(climate, seasons);
  }

  /** Layers at a temperature, be it one of the brief or any other. */
  public LayerTransmission layers(double celsius) {
    LayerTransmission known = byCelsius.get(celsius);
    return known != null ? known : new LayerTransmission(context, celsius, shared);
  }
}
