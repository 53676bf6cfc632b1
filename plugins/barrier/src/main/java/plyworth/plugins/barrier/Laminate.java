package plyworth.plugins.barrier;

import java.util.ArrayList;
import java.util.List;
import plyworth.plugins.barrier.laminate.HumidityProfile;
import plyworth.plugins.barrier.laminate.Ply;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Structure;

/**
 * The layers of a formed and handled pack in one climate, each at the humidity that the water
 * through the laminate gives it.
 *
 * @param transmission what each layer lets through
 * @param layers the layers, outside first
 * @param profile humidity at their faces
 */
record Laminate(LayerTransmission transmission, List<Layer> layers, HumidityProfile profile) {

  /**
   * A structure between two humidities.
   *
   * @param transmission at the temperature of the laminate
   * @param outside relative humidity outside, 0 to 1
   * @param inside water activity inside, 0 to 1
   */
  static Laminate of(
      LayerTransmission transmission, Structure structure, double outside, double inside) {
    List<Ply> plies = new ArrayList<>();
    Layer outer = null;
    for (Layer layer : structure.layers()) {
      double resistance = 1 / transmission.inPack(layer, outer, Permeant.WATER);
      plies.add(new Ply(resistance, transmission.curve(layer, Permeant.WATER)));
      outer = layer;
    }
    return new Laminate(
        transmission, structure.layers(), HumidityProfile.of(plies, outside, inside));
  }

  /** Resistance of a layer, m²·day·force/amount; NaN when unknown. */
  double resistance(int layer, Permeant permeant) {
    if (permeant == Permeant.WATER) {
      return profile.resistance(layer);
    }
    Layer outer = layer == 0 ? null : layers.get(layer - 1);
    double reference = 1 / transmission.inPack(layers.get(layer), outer, permeant);
    return humid(layer, permeant)
        ? reference * profile.resists(layer, transmission.curve(layers.get(layer), permeant))
        : reference;
  }

  private boolean humid(int layer, Permeant permeant) {
    return !transmission.curve(layers.get(layer), permeant).one();
  }

  /** Resistance of all layers in series (Polymer Journal 36 (2004) 386), m²·day·force/amount. */
  double resistance(Permeant permeant) {
    if (permeant == Permeant.WATER) {
      return profile.resistance();
    }
    double sum = 0;
    for (int i = 0; i < layers.size(); i++) {
      sum += resistance(i, permeant);
    }
    return sum;
  }
}
