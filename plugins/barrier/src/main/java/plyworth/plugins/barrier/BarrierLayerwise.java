package plyworth.plugins.barrier;

import static plyworth.plugins.barrier.BarrierCriteria.DOES_NOT_KEEP_BIT;
import static plyworth.plugins.barrier.BarrierCriteria.LIGHT;
import static plyworth.plugins.barrier.BarrierCriteria.MARGIN;
import static plyworth.plugins.barrier.BarrierCriteria.OTR;
import static plyworth.plugins.barrier.BarrierCriteria.SHELF_LIFE;
import static plyworth.plugins.barrier.BarrierCriteria.VOLATILE_LOSS;
import static plyworth.plugins.barrier.BarrierCriteria.VOLATILE_LOSS_BIT;
import static plyworth.plugins.barrier.BarrierCriteria.WVTR;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import plyworth.shared.scoring.Block;
import plyworth.shared.scoring.BoundsBlock;
import plyworth.shared.scoring.Join;
import plyworth.shared.scoring.Layerwise;
import plyworth.shared.scoring.StatePart;
import plyworth.shared.structure.Layer;

/**
 * The barrier taken apart by layers: resistances add, the innermost layer gives the seal edge, the
 * darkest layer the light class. Only mechanisms that some pack could fail by are carried.
 */
final class BarrierLayerwise implements Layerwise {

  private static final int FIRST_PATH = 3;

  private final BarrierModel model;
  private final List<Mechanism> mechanisms;
  private final double lossPerConductance;
  private final double allowedLoss;
  private final double failsBefore;
  private final boolean constant;

  BarrierLayerwise(BarrierModel model) {
    this.model = model;
    this.mechanisms = model.demand().canLimit();
    this.lossPerConductance =
        model
            .demand()
            .alcohol()
            .map(a -> a.percentPerExposure() * model.demand().days())
            .orElse(Double.NaN);
    this.allowedLoss =
        model.demand().alcohol().map(a -> a.content().allowedLossPercent()).orElse(Double.NaN);
    this.constant = model.climates().seasons().constant();
    this.failsBefore = model.blockMargin() * model.demand().days();
  }

  @Override
  public List<StatePart> state() {
    List<StatePart> parts = new ArrayList<>();
    parts.add(new StatePart("flat resistance to oxygen", Join.SUM));
    parts.add(new StatePart("flat resistance to water vapour", Join.SUM));
    parts.add(new StatePart("light class", Join.MAX));
    for (Mechanism mechanism : mechanisms) {
      String name = mechanism.permeant().name().toLowerCase(Locale.ROOT);
      parts.add(new StatePart("resistance in the pack to " + name, Join.SUM));
      parts.add(new StatePart("seal edge conductance of " + name, Join.INNERMOST));
    }
    return List.copyOf(parts);
  }

  @Override
  public void contribute(Layer layer, Layer outer, double[] state) {
    state[0] = 1 / model.layers().flat(layer, Permeant.OXYGEN);
    state[1] = 1 / model.layers().flat(layer, Permeant.WATER);
    state[2] = LightClass.of(model.context().material(layer).kinds());
    double gap = 2 * model.context().gaugeUm(layer);
    int at = FIRST_PATH;
    for (Mechanism mechanism : mechanisms) {
      Permeant permeant = mechanism.permeant();
      state[at] = 1 / model.layers().inPack(layer, outer, permeant);
      state[at + 1] = model.pack().edge(model.layers().asSealant(layer, permeant), gap);
      at += 2;
    }
  }

  @Override
  public void finish(Block block) {
    int size = block.size;
    invert(block.states[0], block.low[OTR], size);
    invert(block.states[1], block.low[WVTR], size);
    System.arraycopy(block.states[2], 0, block.low[LIGHT], 0, size);
    double[] days = block.low[SHELF_LIFE];
    double[] most = constant ? days : block.apart(SHELF_LIFE);
    Arrays.fill(days, 0, size, model.demand().cap());
    Arrays.fill(most, 0, size, model.demand().cap());
    Arrays.fill(block.blocked, 0, size, 0);
    for (int m = 0; m < mechanisms.size(); m++) {
      finish(block, m, days, most);
    }
    divide(days, block.low[MARGIN], size);
    if (!constant) {
      divide(most, block.apart(MARGIN), size);
    }
  }

  private void divide(double[] days, double[] margins, int size) {
    double asked = model.demand().days();
    for (int i = 0; i < size; i++) {
      margins[i] = days[i] / asked;
    }
  }

  private void finish(Block block, int index, double[] days, double[] most) {
    Mechanism mechanism = mechanisms.get(index);
    Balance balance = mechanism.balance();
    boolean apart = days != most;
    double[] resistance = block.states[FIRST_PATH + 2 * index];
    double[] edge = block.states[FIRST_PATH + 2 * index + 1];
    long[] blocked = block.blocked;
    PackGeometry pack = model.pack();
    for (int i = 0; i < block.size; i++) {
      double conductance = pack.total(resistance[i], edge[i]);
      double latest = balance.atMost(conductance);
      most[i] = Math.min(most[i], latest);
      blocked[i] |= latest < failsBefore ? DOES_NOT_KEEP_BIT : 0;
      if (apart) {
        days[i] = Math.min(days[i], balance.atLeast(conductance));
      }
    }
    if (mechanism.permeant() == Permeant.ALCOHOL) {
      finishLoss(block, resistance, edge);
    }
  }

  private void finishLoss(Block block, double[] resistance, double[] edge) {
    double[] losses = block.low[VOLATILE_LOSS];
    for (int i = 0; i < block.size; i++) {
      double conductance = model.pack().total(resistance[i], edge[i]);
      losses[i] = Math.min(100, lossPerConductance * conductance);
      block.blocked[i] |= losses[i] > allowedLoss ? VOLATILE_LOSS_BIT : 0;
    }
  }

  private static void invert(double[] resistances, double[] rates, int size) {
    for (int i = 0; i < size; i++) {
      rates[i] = 1 / resistances[i];
    }
  }

  @Override
  public void bound(BoundsBlock block) {
    for (int i = 0; i < block.size; i++) {
      block.low[OTR][i] = 1 / block.stateHigh[0][i];
      block.high[OTR][i] = 1 / block.stateLow[0][i];
      block.low[WVTR][i] = 1 / block.stateHigh[1][i];
      block.high[WVTR][i] = 1 / block.stateLow[1][i];
      block.low[LIGHT][i] = Math.max(LightClass.TRANSPARENT, block.stateLow[2][i]);
      block.high[LIGHT][i] = Math.max(LightClass.TRANSPARENT, block.stateHigh[2][i]);
      boundPack(block, i);
    }
  }

  /** More conductance always means fewer days and more loss, so the ends bound each other. */
  private void boundPack(BoundsBlock block, int i) {
    double fewest = model.demand().cap();
    double most = model.demand().cap();
    block.mustBlock[i] = 0;
    block.mayBlock[i] = 0;
    for (int m = 0; m < mechanisms.size(); m++) {
      Mechanism mechanism = mechanisms.get(m);
      int at = FIRST_PATH + 2 * m;
      double tight = conductance(block.stateHigh[at][i], block.stateLow[at + 1][i]);
      double leaky = conductance(block.stateLow[at][i], block.stateHigh[at + 1][i]);
      double low = mechanism.balance().atLeast(leaky);
      double high = mechanism.balance().atMost(tight);
      boundKeeping(block, i, mechanism.balance().atMost(leaky), high);
      if (mechanism.permeant() == Permeant.ALCOHOL) {
        boundLoss(block, i, tight, leaky);
      }
      fewest = Math.min(fewest, low);
      most = Math.min(most, high);
    }
    block.low[SHELF_LIFE][i] = fewest;
    block.high[SHELF_LIFE][i] = most;
    block.low[MARGIN][i] = fewest / model.demand().days();
    block.high[MARGIN][i] = most / model.demand().days();
  }

  private void boundKeeping(BoundsBlock block, int i, double lowDays, double highDays) {
    if (highDays < failsBefore) {
      block.mustBlock[i] |= DOES_NOT_KEEP_BIT;
    }
    if (!(lowDays >= failsBefore)) {
      block.mayBlock[i] |= DOES_NOT_KEEP_BIT;
    }
  }

  private void boundLoss(BoundsBlock block, int i, double tight, double leaky) {
    double low = Math.min(100, lossPerConductance * tight);
    double high = Math.min(100, lossPerConductance * leaky);
    block.low[VOLATILE_LOSS][i] = low;
    block.high[VOLATILE_LOSS][i] = high;
    if (low > allowedLoss) {
      block.mustBlock[i] |= VOLATILE_LOSS_BIT;
    }
    if (!(high <= allowedLoss)) {
      block.mayBlock[i] |= VOLATILE_LOSS_BIT;
    }
  }

  /** Of a piece that may hold no sealant yet: an edge of −∞ counts as none. */
  private double conductance(double resistance, double edge) {
    return model.pack().total(resistance, Math.max(0, edge));
  }
}
