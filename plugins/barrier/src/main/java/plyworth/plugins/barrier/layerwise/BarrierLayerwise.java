package plyworth.plugins.barrier.layerwise;

import static plyworth.plugins.barrier.pack.BarrierCriteria.LEAK_RISK_ID;
import static plyworth.plugins.barrier.pack.BarrierCriteria.LIGHT_ID;
import static plyworth.plugins.barrier.pack.BarrierCriteria.OTR_ID;
import static plyworth.plugins.barrier.pack.BarrierCriteria.PACK_OTR_ID;
import static plyworth.plugins.barrier.pack.BarrierCriteria.PACK_WVTR_ID;
import static plyworth.plugins.barrier.pack.BarrierCriteria.WVTR_ID;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import plyworth.plugins.barrier.pack.BarrierModel;
import plyworth.shared.scoring.Block;
import plyworth.shared.scoring.BoundsBlock;
import plyworth.shared.scoring.Layerwise;
import plyworth.shared.scoring.StatePart;
import plyworth.shared.structure.Layer;

/** The barrier taken apart by layers: groups of state parts one after the other. */
public final class BarrierLayerwise implements Layerwise {

  private final BarrierModel model;
  private final List<StateGroup> groups;
  private final int[] starts;

  private BarrierLayerwise(BarrierModel model, List<StateGroup> groups) {
    this.model = model;
    this.groups = List.copyOf(groups);
    this.starts = new int[groups.size()];
    for (int g = 1; g < starts.length; g++) {
      starts[g] = starts[g - 1] + StatePart.size(groups.get(g - 1).parts());
    }
  }

  /** The form for all criteria. */
  public static BarrierLayerwise of(BarrierModel model) {
    return of(model, criterion -> true);
  }

  @Override
  public Layerwise only(Set<String> criteria) {
    return of(model, criteria::contains);
  }

  private static BarrierLayerwise of(BarrierModel model, Predicate<String> wanted) {
    List<StateGroup> groups = new ArrayList<>();
    groups.add(new PackState(model));
    if (wanted.test(OTR_ID) || wanted.test(WVTR_ID)) {
      groups.add(new FlatState(model));
    }
    if (wanted.test(LIGHT_ID)) {
      groups.add(new LightState(model));
    }
    if (wanted.test(PACK_OTR_ID) || wanted.test(PACK_WVTR_ID)) {
      groups.add(new LaboratoryState(model));
    }
    if (wanted.test(LEAK_RISK_ID)) {
      groups.add(new SealState(model));
    }
    return new BarrierLayerwise(model, groups);
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
