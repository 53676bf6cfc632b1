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
  private final Predicate<String> wanted;
  private volatile Groups groups;

  /**
   * Groups of state parts and where each begins. They are made when they are first asked for, since
   * a form for all criteria is mostly asked for one for some alone.
   */
  private record Groups(List<StateGroup> all, int[] starts) {

    static Groups of(List<StateGroup> all) {
      int[] starts = new int[all.size()];
      for (int g = 1; g < starts.length; g++) {
        starts[g] = starts[g - 1] + StatePart.size(all.get(g - 1).parts());
      }
      return new Groups(List.copyOf(all), starts);
    }
  }

  private BarrierLayerwise(BarrierModel model, Predicate<String> wanted) {
    this.model = model;
    this.wanted = wanted;
  }

  /** The form for all criteria. */
  public static BarrierLayerwise of(BarrierModel model) {
    return new BarrierLayerwise(model, criterion -> true);
  }

  @Override
  public Layerwise only(Set<String> criteria) {
    return new BarrierLayerwise(model, criteria::contains);
  }

  private Groups groups() {
    Groups made = groups;
    if (made == null) {
      made = Groups.of(make());
      groups = made;
    }
    return made;
  }

  private List<StateGroup> make() {
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
    return groups;
  }

  @Override
  public List<StatePart> state() {
    return groups().all().stream().flatMap(group -> group.parts().stream()).toList();
  }

  @Override
  public void contribute(Layer layer, Layer outer, double[] state) {
    Groups made = groups();
    for (int g = 0; g < made.starts().length; g++) {
      made.all().get(g).contribute(layer, outer, state, made.starts()[g]);
    }
  }

  @Override
  public void finish(Block block) {
    Groups made = groups();
    for (int g = 0; g < made.starts().length; g++) {
      made.all().get(g).finish(block, made.starts()[g]);
    }
  }

  @Override
  public void bound(BoundsBlock block) {
    Groups made = groups();
    for (int g = 0; g < made.starts().length; g++) {
      made.all().get(g).bound(block, made.starts()[g]);
    }
  }
}
