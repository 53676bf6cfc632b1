package plyworth.plugins.barrier.pack;

import java.util.List;
import plyworth.plugins.barrier.climate.LayerFigures;
import plyworth.plugins.barrier.laminate.HumidityCurve;
import plyworth.plugins.barrier.laminate.HumidityProfile;
import plyworth.plugins.barrier.permeation.Permeant;
import plyworth.shared.structure.Layer;

/**
 * The layers of a formed and handled pack in one climate, each at the humidity that the water
 * through the laminate gives it.
 *
 * @param figures what each layer lets through
 * @param profile humidity at their faces
 */
public record Laminate(LayerFigures figures, HumidityProfile profile) {

  /**
   * Layers between two humidities.
   *
   * @param outside relative humidity outside, 0 to 1
   * @param inside water activity inside, 0 to 1
   */
  static Laminate of(LayerFigures figures, double outside, double inside) {
    return new Laminate(figures, HumidityProfile.of(figures.plies(), outside, inside));
  }

  /** The layers, outside first. */
  public List<Layer> layers() {
    return figures.layers();
  }

  /** Resistance of a layer, m²·day·force/amount; NaN when unknown. */
  public double resistance(int layer, Permeant permeant) {
    if (permeant == Permeant.WATER) {
      return profile.resistance(layer);
    }
    HumidityCurve curve = figures.curve(layer, permeant);
    double reference = figures.resistance(layer, permeant);
    return curve.one() ? reference : reference * profile.resists(layer, curve);
  }

  /** Resistance of all layers in series (Polymer Journal 36 (2004) 386), m²·day·force/amount. */
  public double resistance(Permeant permeant) {
    if (permeant == Permeant.WATER) {
      return profile.resistance();
    }
    double sum = 0;
    for (int i = 0; i < layers().size(); i++) {
      sum += resistance(i, permeant);
    }
    return sum;
  }
}
