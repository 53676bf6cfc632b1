package plyworth.plugins.barrier.layerwise;

import static plyworth.plugins.barrier.pack.BarrierCriteria.OTR;
import static plyworth.plugins.barrier.pack.BarrierCriteria.WVTR;

import java.util.List;
import plyworth.plugins.barrier.laminate.HumidityCurve;
import plyworth.plugins.barrier.pack.BarrierModel;
import plyworth.plugins.barrier.permeation.Permeant;
import plyworth.shared.scoring.Block;
import plyworth.shared.scoring.BoundsBlock;
import plyworth.shared.scoring.Join;
import plyworth.shared.scoring.StatePart;
import plyworth.shared.structure.Layer;

/** Transmission of the flat sheet as a laboratory measures it: resistances add. */
record FlatState(BarrierModel model) implements StateGroup {

  private static final int OXYGEN = 0;
  private static final int WATER_LOW = 1;
  private static final int WATER_HIGH = 2;

  @Override
  public List<StatePart> parts() {
    return List.of(
        new StatePart("flat resistance to oxygen", Join.SUM),
        new StatePart("least flat resistance to water vapour", Join.SUM),
        new StatePart("largest flat resistance to water vapour", Join.SUM));
  }

  @Override
  public void contribute(Layer layer, Layer outer, double[] state, int at) {
    double water = 1 / model.layers().flat(layer, Permeant.WATER);
    HumidityCurve curve = model.layers().curve(layer, Permeant.WATER);
    state[at + OXYGEN] = 1 / model.layers().flat(layer, Permeant.OXYGEN);
    state[at + WATER_LOW] = water / curve.highest(0, Permeant.WATER_MEASURED_AT);
    state[at + WATER_HIGH] = water / curve.lowest(0, Permeant.WATER_MEASURED_AT);
  }

  @Override
  public void finish(Block block, int at) {
    invert(block.states[at + OXYGEN], block.low[OTR], block.size);
    invert(block.states[at + WATER_HIGH], block.low[WVTR], block.size);
    invert(block.states[at + WATER_LOW], block.apart(WVTR), block.size);
  }

  @Override
  public void bound(BoundsBlock block, int at) {
    invert(block.stateHigh[at + OXYGEN], block.low[OTR], block.size);
    invert(block.stateLow[at + OXYGEN], block.high[OTR], block.size);
    invert(block.stateHigh[at + WATER_HIGH], block.low[WVTR], block.size);
    invert(block.stateLow[at + WATER_LOW], block.high[WVTR], block.size);
  }

  private static void invert(double[] resistances, double[] rates, int size) {
    for (int i = 0; i < size; i++) {
      rates[i] = 1 / resistances[i];
    }
  }
}
