package plyworth.plugins.barrier;

import java.util.ArrayList;
import java.util.List;
import plyworth.plugins.barrier.laminate.HumidityProfile;
import plyworth.plugins.barrier.laminate.Ply;
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
    double resistance = 0;
    for (Layer layer : structure.layers()) {
      resistance += 1 / model.layers().flat(layer, Permeant.OXYGEN);
    }
    return 1 / resistance;
  }

  /**
   * Water vapour transmission rate at 38 °C, g/(m²·day), with 90 % RH on the outer side and none on
   * the inner.
   */
  static double water(BarrierModel model, Structure structure) {
    List<Ply> plies = new ArrayList<>();
    for (Layer layer : structure.layers()) {
      plies.add(
          new Ply(
              1 / model.layers().flat(layer, Permeant.WATER),
              model.layers().curve(layer, Permeant.WATER)));
    }
    return 1 / HumidityProfile.of(plies, Permeant.WATER_MEASURED_AT, 0).resistance();
  }
}
