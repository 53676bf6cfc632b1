package plyworth.plugins.barrier.layerwise;

import static plyworth.plugins.barrier.pack.BarrierCriteria.PACK_OTR;
import static plyworth.plugins.barrier.pack.BarrierCriteria.PACK_WVTR;

import java.util.List;
import plyworth.plugins.barrier.laminate.HumidityCurve;
import plyworth.plugins.barrier.pack.BarrierModel;
import plyworth.plugins.barrier.pack.LaboratoryPack;
import plyworth.plugins.barrier.permeation.Permeant;
import plyworth.shared.scoring.Block;
import plyworth.shared.scoring.BoundsBlock;
import plyworth.shared.scoring.Join;
import plyworth.shared.scoring.StatePart;
import plyworth.shared.structure.Layer;

/**
 * Transmission of the pack that a laboratory measures whole. Oxygen adds up exactly, since 50 % RH
 * stand on both sides; water is enclosed by the ends of what humidity can do between 90 % RH and
 * none.
 */
final class LaboratoryState implements StateGroup {

  private static final int OXYGEN = 0;
  private static final int OXYGEN_EDGE = 1;
  private static final int WATER_LOW = 2;
  private static final int WATER_HIGH = 3;
  private static final int WATER_EDGE = 4;

  private final BarrierModel model;
  private final double faceM2;
  private final double oxygenLeak;
  private final double waterLeak;

  LaboratoryState(BarrierModel model) {
    this.model = model;
    this.faceM2 = model.pack().faceM2();
    this.oxygenLeak = LaboratoryPack.oxygenLeak(model);
    this.waterLeak = LaboratoryPack.waterLeak(model);
  }

  @Override
  public List<StatePart> parts() {
    return List.of(
        new StatePart("resistance of the handled laminate to oxygen", Join.SUM),
        new StatePart("seal edge conductance of oxygen in the laboratory", Join.INNERMOST),
        new StatePart("least resistance of the handled laminate to water vapour", Join.SUM),
        new StatePart("largest resistance of the handled laminate to water vapour", Join.SUM),
        new StatePart("seal edge conductance of water in the laboratory", Join.INNERMOST));
  }

  @Override
  public void contribute(Layer layer, Layer outer, double[] state, int at) {
    double water = 1 / model.layers().inLaboratory(layer, outer, Permeant.WATER);
    HumidityCurve curve = model.layers().curve(layer, Permeant.WATER);
    state[at + OXYGEN] = 1 / LaboratoryPack.oxygenRate(model.layers(), layer, outer);
    state[at + OXYGEN_EDGE] = LaboratoryPack.edge(model, layer, Permeant.OXYGEN);
    state[at + WATER_LOW] = water / curve.highest(0, Permeant.WATER_MEASURED_AT);
    state[at + WATER_HIGH] = water / curve.lowest(0, Permeant.WATER_MEASURED_AT);
    state[at + WATER_EDGE] = LaboratoryPack.edge(model, layer, Permeant.WATER);
  }

  @Override
  public void finish(Block block, int at) {
    double[] waterEdge = block.states[at + WATER_EDGE];
    oxygen(
        block.states[at + OXYGEN], block.states[at + OXYGEN_EDGE], block.low[PACK_OTR], block.size);
    water(block.states[at + WATER_HIGH], waterEdge, block.low[PACK_WVTR], block.size);
    water(block.states[at + WATER_LOW], waterEdge, block.apart(PACK_WVTR), block.size);
  }

  private void oxygen(double[] resistances, double[] edges, double[] rates, int size) {
    for (int i = 0; i < size; i++) {
      rates[i] = oxygen(resistances[i], edges[i]);
    }
  }

  private void water(double[] resistances, double[] edges, double[] rates, int size) {
    for (int i = 0; i < size; i++) {
      rates[i] = water(resistances[i], edges[i]);
    }
  }

  /** A piece may hold no sealant yet. */
  @Override
  public void bound(BoundsBlock block, int at) {
    double[][] low = block.stateLow;
    double[][] high = block.stateHigh;
    for (int i = 0; i < block.size; i++) {
      double oxygenLeast = Math.max(0, low[at + OXYGEN_EDGE][i]);
      double oxygenMost = Math.max(0, high[at + OXYGEN_EDGE][i]);
      double waterLeast = Math.max(0, low[at + WATER_EDGE][i]);
      double waterMost = Math.max(0, high[at + WATER_EDGE][i]);
      block.low[PACK_OTR][i] = oxygen(high[at + OXYGEN][i], oxygenLeast);
      block.high[PACK_OTR][i] = oxygen(low[at + OXYGEN][i], oxygenMost);
      block.low[PACK_WVTR][i] = water(high[at + WATER_HIGH][i], waterLeast);
      block.high[PACK_WVTR][i] = water(low[at + WATER_LOW][i], waterMost);
    }
  }

  private double oxygen(double resistance, double edge) {
    return LaboratoryPack.inAir(faceM2 / resistance + edge + oxygenLeak);
  }

  private double water(double resistance, double edge) {
    return LaboratoryPack.milligrams(faceM2 / resistance + edge + waterLeak);
  }
}
