package plyworth.plugins.barrier.layerwise;

import static plyworth.plugins.barrier.pack.BarrierCriteria.LEAK_RISK;

import java.util.List;
import plyworth.plugins.barrier.pack.BarrierModel;
import plyworth.plugins.barrier.pack.LeakRisk;
import plyworth.shared.brief.Pack;
import plyworth.shared.scoring.Block;
import plyworth.shared.scoring.BoundsBlock;
import plyworth.shared.scoring.Join;
import plyworth.shared.scoring.StatePart;
import plyworth.shared.structure.Layer;

/** The step that seals have to fill, and the sealant that fills it. */
record SealState(BarrierModel model) implements StateGroup {

  private static final int GAUGE = 0;
  private static final int SEALANT = 1;

  @Override
  public List<StatePart> parts() {
    return List.of(
        new StatePart("gauge", Join.SUM), new StatePart("gauge of the sealant", Join.INNERMOST));
  }

  @Override
  public void contribute(Layer layer, Layer outer, double[] state, int at) {
    double gauge = model.context().gaugeUm(layer);
    state[at + GAUGE] = gauge;
    state[at + SEALANT] = gauge;
  }

  @Override
  public void finish(Block block, int at) {
    Pack.Format format = format();
    double[] gauge = block.states[at + GAUGE];
    double[] sealant = block.states[at + SEALANT];
    for (int i = 0; i < block.size; i++) {
      block.low[LEAK_RISK][i] = LeakRisk.of(format, gauge[i], sealant[i]).level();
    }
  }

  /** A piece may hold no sealant yet. */
  @Override
  public void bound(BoundsBlock block, int at) {
    Pack.Format format = format();
    for (int i = 0; i < block.size; i++) {
      double thick = block.stateHigh[at + GAUGE][i];
      double thin = block.stateLow[at + GAUGE][i];
      double least = Math.max(0, block.stateLow[at + SEALANT][i]);
      double most = Math.max(0, block.stateHigh[at + SEALANT][i]);
      block.low[LEAK_RISK][i] = LeakRisk.of(format, thick, least).level();
      block.high[LEAK_RISK][i] = LeakRisk.of(format, thin, most).level();
    }
  }

  private Pack.Format format() {
    return model.context().brief().pack().format();
  }
}
