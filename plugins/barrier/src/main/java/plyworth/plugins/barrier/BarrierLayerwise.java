package plyworth.plugins.barrier;

import static plyworth.plugins.barrier.BarrierCriteria.LEAK_RISK_ID;
import static plyworth.plugins.barrier.BarrierCriteria.LIGHT_ID;
import static plyworth.plugins.barrier.BarrierCriteria.OTR_ID;
import static plyworth.plugins.barrier.BarrierCriteria.PACK_OTR_ID;
import static plyworth.plugins.barrier.BarrierCriteria.PACK_WVTR_ID;
import static plyworth.plugins.barrier.BarrierCriteria.WVTR_ID;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import plyworth.shared.scoring.Block;
import plyworth.shared.scoring.BoundsBlock;
import plyworth.shared.scoring.Layerwise;
import plyworth.shared.scoring.StatePart;
import plyworth.shared.structure.Layer;

/** The barrier taken apart by layers: groups of state parts one after the other. */
final class BarrierLayerwise implements Layerwise {

  private final BarrierModel model;
  private final PackState pack;
  private final List<StateGroup> groups;
  private final int[] starts;

  private BarrierLayerwise(BarrierModel model, PackState pack, List<StateGroup> groups) {
    this.model = model;
    this.pack = pack;
    this.groups = List.copyOf(groups);
    this.starts = new int[groups.size()];
    for (int g = 1; g < starts.length; g++) {
      starts[g] = starts[g - 1] + StatePart.size(groups.get(g - 1).parts());
    }
  }

  /** The form for all criteria. */
  static BarrierLayerwise of(BarrierModel model) {
    PackState pack = new PackState(model);
    return new BarrierLayerwise(
        model,
        pack,
        List.of(
            pack,
            new FlatState(model),
            new LightState(model),
            new LaboratoryState(model),
            new SealState(model)));
  }

  @Override
  public Layerwise only(Set<String> criteria) {
    List<StateGroup> wanted = new ArrayList<>();
    wanted.add(pack);
    if (criteria.contains(OTR_ID) || criteria.contains(WVTR_ID)) {
      wanted.add(new FlatState(model));
    }
    if (criteria.contains(LIGHT_ID)) {
      wanted.add(new LightState(model));
    }
    if (criteria.contains(PACK_OTR_ID) || criteria.contains(PACK_WVTR_ID)) {
      wanted.add(new LaboratoryState(model));
    }
    if (criteria.contains(LEAK_RISK_ID)) {
      wanted.add(new SealState(model));
    }
    return new BarrierLayerwise(model, pack, wanted);
  }

  @Override
  public List<StatePart> state() {
    return groups.stream().flatMap(group -> group.parts().stream()).toList();
  }

  @Override
  public void contribute(Layer layer, Layer outer, double[] state) {
    for (int g = 0; g < starts.length; g++) {
      groups.get(g).contribute(layer, outer, state, starts[g]);
    }
  }

  @Override
  public void finish(Block block) {
    for (int g = 0; g < starts.length; g++) {
      groups.get(g).finish(block, starts[g]);
    }
  }

  @Override
  public void bound(BoundsBlock block) {
    for (int g = 0; g < starts.length; g++) {
      groups.get(g).bound(block, starts[g]);
    }
  }
}
