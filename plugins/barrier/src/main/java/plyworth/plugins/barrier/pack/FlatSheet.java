package plyworth.plugins.barrier.pack;

import java.util.ArrayList;
import java.util.List;
import plyworth.plugins.barrier.laminate.HumidityProfile;
import plyworth.plugins.barrier.laminate.Ply;
import plyworth.plugins.barrier.permeation.Permeant;
import plyworth.shared.structure.Layer;
import plyworth.shared.structure.Structure;

/**
 * The flat laminate as a laboratory measures it: layers in series, 1/TR = Σ L/P + Σ 1/TR of the
 * layers given as a whole (standard; confirmed for three layers by Polymer Journal 36 (2004) 386).
 */
final class FlatSheet {

  private FlatSheet() {}

  /** Oxygen transmission rate at 23 °C with 50 % RH on both sides, cm³/(m²·day·bar). */
  static double oxygen(BarrierModel model, Structure structure) {
    return series(structure, (layer, outer) -> model.layers().flat(layer, Permeant.OXYGEN));
  }

  /**
   * Water vapour transmission rate at 38 °C, g/(m²·day), with 90 % RH on the outer side and none on
   * the inner.
   */
  static double water(BarrierModel model, Structure structure) {
    return intoDry(model, structure, (layer, outer) -> model.layers().flat(layer, Permeant.WATER));
  }

  /** What a layer lets through by itself, with its outer neighbour; null for the outermost. */
  @FunctionalInterface
  interface Rate {
    double of(Layer layer, Layer outer);
  }

  /** The rate of layers in series that see no humidity of their own. */
  static double series(Structure structure, Rate rate) {
    double resistance = 0;
    Layer outer = null;
    for (Layer layer : structure.layers()) {
      resistance += 1 / rate.of(layer, outer);
      outer = layer;
    }
    return 1 / resistance;
  }

  /** The rate of water from 90 % RH into none, each layer at the humidity it sees. */
  static double intoDry(BarrierModel model, Structure structure, Rate rate) {
    List<Ply> plies = new ArrayList<>();
    Layer outer = null;
    for (Layer layer : structure.layers()) {
      plies.add(new Ply(1 / rate.of(layer, outer), model.layers().curve(layer, Permeant.WATER)));
      outer = layer;
    }
    return 1 / HumidityProfile.of(plies, Permeant.WATER_MEASURED_AT, 0).resistance();
  }
}
