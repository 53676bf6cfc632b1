package plyworth.plugins.barrier.layerwise;

import static plyworth.plugins.barrier.pack.BarrierCriteria.LIGHT;

import java.util.List;
import plyworth.plugins.barrier.pack.BarrierModel;
import plyworth.plugins.barrier.pack.LightClass;
import plyworth.shared.scoring.Block;
import plyworth.shared.scoring.BoundsBlock;
import plyworth.shared.scoring.Join;
import plyworth.shared.scoring.StatePart;
import plyworth.shared.structure.Layer;

/** How much light passes: the darkest layer gives the class. */
record LightState(BarrierModel model) implements StateGroup {

  @Override
  public List<StatePart> parts() {
    return List.of(new StatePart("light class", Join.MAX));
  }

  @Override
  public void contribute(Layer layer, Layer outer, double[] state, int at) {
    state[at] = LightClass.of(model.context().material(layer).kinds());
  }

  @Override
  public void finish(Block block, int at) {
    System.arraycopy(block.states[at], 0, block.low[LIGHT], 0, block.size);
  }

  @Override
  public void bound(BoundsBlock block, int at) {
    for (int i = 0; i < block.size; i++) {
      block.low[LIGHT][i] = Math.max(LightClass.TRANSPARENT, block.stateLow[at][i]);
      block.high[LIGHT][i] = Math.max(LightClass.TRANSPARENT, block.stateHigh[at][i]);
    }
  }
}
