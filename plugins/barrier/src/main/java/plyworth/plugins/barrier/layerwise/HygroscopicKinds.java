package plyworth.plugins.barrier.layerwise;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import plyworth.plugins.barrier.laminate.HumidityCurve;
import plyworth.plugins.barrier.pack.BarrierModel;
import plyworth.plugins.barrier.permeation.Permeant;
import plyworth.shared.material.Material;

/**
 * The materials at hand that humidity moves, numbered.
 *
 * @param kinds the kinds
 * @param numbers index of the kind of a material, by its id
 */
record HygroscopicKinds(List<Hygroscopic> kinds, Map<String, Integer> numbers) {

  /** The kinds of a brief's library. */
  static HygroscopicKinds of(BarrierModel model) {
    List<Hygroscopic> kinds = new ArrayList<>();
    Map<String, Integer> numbers = new HashMap<>();
    for (Material material : model.context().materials().all()) {
      HumidityCurve water = model.layers().curves().of(material, Permeant.WATER);
      HumidityCurve oxygen = model.layers().curves().of(material, Permeant.OXYGEN);
      if (!water.one() || !oxygen.one()) {
        numbers.put(material.id(), kinds.size());
        kinds.add(new Hygroscopic(water, oxygen, model.climates().span()));
      }
    }
    return new HygroscopicKinds(List.copyOf(kinds), Map.copyOf(numbers));
  }
}
