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
import java.util.Optional;
import java.util.stream.Stream;
import plyworth.shared.scoring.Block;
import plyworth.shared.scoring.BoundsBlock;
import plyworth.shared.scoring.Join;
import plyworth.shared.scoring.Layerwise;
import plyworth.shared.scoring.StatePart;
import plyworth.shared.structure.Layer;

/**
 * The barrier taken apart by layers: resistances add, the innermost layer gives the seal edge, the
 * darkest layer the light class. Only what some pack could fail by is carried, and the water that
 * moves with an alcohol.
 */
final class BarrierLayerwise implements Layerwise {

  private static final int FIRST_PATH = 3;

  private final BarrierModel model;
  private final List<Mechanism> mechanisms;
  private final List<Permeant> permeants;
  private final Optional<LossBounds> loss;
  private final double failsBefore;
  private final boolean constant;

  BarrierLayerwise(BarrierModel model) {
    this.model = model;
    this.mechanisms = model.demand().canLimit();
    this.permeants = permeants(model.demand());
    this.loss = LossBounds.of(model.demand());
    this.constant = model.climates().seasons().constant();
    this.failsBefore = model.blockMargin() * model.demand().days();
  }

  private static List<Permeant> permeants(Demand demand) {
    Stream<Permeant> limiting = demand.canLimit().stream().map(Mechanism::permeant);
    Stream<Permeant> content =
        demand.alcohol().stream().flatMap(a -> Stream.of(a.permeant(), Permeant.WATER));
    return Stream.concat(limiting, content).distinct().toList();
  }

  @Override
  public List<StatePart> state() {
    List<StatePart> parts = new ArrayList<>();
    parts.add(new StatePart("flat resistance to oxygen", Join.SUM));
    parts.add(new StatePart("flat resistance to water vapour", Join.SUM));
    parts.add(new StatePart("light class", Join.MAX));
    for (Permeant permeant : permeants) {
      String name = permeant.name().toLowerCase(Locale.ROOT);
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
    for (Permeant permeant : permeants) {
      int at = place(permeant);
      state[at] = 1 / model.layers().inPack(layer, outer, permeant);
      state[at + 1] = model.pack().edge(model.layers().asSealant(layer, permeant), gap);
    }
  }

  private int place(Permeant permeant) {
    return FIRST_PATH + 2 * permeants.indexOf(permeant);
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
    double[][] conductances = new double[permeants.size()][];
    Arrays.setAll(conductances, p -> conductances(block, permeants.get(p)));
    for (Mechanism mechanism : mechanisms) {
      finish(block, mechanism, conductances, most);
    }
    finishLoss(block, conductances);
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

  private double[] conductances(Block block, Permeant permeant) {
    double[] resistance = block.states[place(permeant)];
    double[] edge = block.states[place(permeant) + 1];
    double[] conductances = new double[block.size];
    Arrays.setAll(conductances, i -> model.pack().total(resistance[i], edge[i]));
    return conductances;
  }

  private double[] of(Permeant permeant, double[][] conductances) {
    return conductances[permeants.indexOf(permeant)];
  }

  private void finish(Block block, Mechanism mechanism, double[][] conductances, double[] most) {
    Balance balance = mechanism.balance();
    boolean alcohol = mechanism.permeant().alcohol();
    double[] own = of(mechanism.permeant(), conductances);
    double[] water = alcohol ? of(Permeant.WATER, conductances) : own;
    double tooMuchBefore = alcohol ? model.demand().days() : 0;
    double[] days = block.low[SHELF_LIFE];
    boolean apart = days != most;
    for (int i = 0; i < block.size; i++) {
      double latest = balance.atMost(own[i], water[i]);
      most[i] = Math.min(most[i], latest);
      block.blocked[i] |= latest < failsBefore ? DOES_NOT_KEEP_BIT : 0;
      block.blocked[i] |= latest < tooMuchBefore ? VOLATILE_LOSS_BIT : 0;
      if (apart) {
        days[i] = Math.min(days[i], balance.atLeast(own[i], water[i]));
      }
    }
  }

  private void finishLoss(Block block, double[][] conductances) {
    if (model.demand().alcohol().isEmpty()) {
      return;
    }
    double[] low = block.low[VOLATILE_LOSS];
    double[] high = block.apart(VOLATILE_LOSS);
    if (loss.isEmpty()) {
      Arrays.fill(low, 0, block.size, Double.NaN);
      Arrays.fill(high, 0, block.size, Double.NaN);
      return;
    }
    double[] own = of(model.demand().alcohol().get().permeant(), conductances);
    loss.get().enclose(own, of(Permeant.WATER, conductances), low, high, block.size);
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
    for (Mechanism mechanism : mechanisms) {
      boolean alcohol = mechanism.permeant().alcohol();
      int at = place(mechanism.permeant());
      Balance balance = mechanism.balance();
      double leaky = leaky(block, i, at);
      double low = balance.atLeast(leaky);
      double high = balance.atMost(tight(block, i, at));
      double lowest = alcohol ? low : balance.atMost(leaky);
      boundBlock(block, i, DOES_NOT_KEEP_BIT, failsBefore, lowest, high);
      fewest = Math.min(fewest, low);
      most = Math.min(most, high);
    }
    block.low[SHELF_LIFE][i] = fewest;
    block.high[SHELF_LIFE][i] = most;
    block.low[MARGIN][i] = fewest / model.demand().days();
    block.high[MARGIN][i] = most / model.demand().days();
    model.demand().alcohol().ifPresent(a -> boundLoss(block, i, a));
  }

  private static void boundBlock(
      BoundsBlock block, int i, long bit, double asked, double lowDays, double highDays) {
    block.mustBlock[i] |= highDays < asked ? bit : 0;
    block.mayBlock[i] |= lowDays >= asked ? 0 : bit;
  }

  private void boundLoss(BoundsBlock block, int i, VolatileBalance balance) {
    int at = place(balance.permeant());
    int water = place(Permeant.WATER);
    double tight = tight(block, i, at) + 0 * tight(block, i, water);
    double leaky = leaky(block, i, at) + 0 * leaky(block, i, water);
    block.low[VOLATILE_LOSS][i] = loss.map(l -> l.lowest(tight)).orElse(Double.NaN);
    block.high[VOLATILE_LOSS][i] = loss.map(l -> l.highest(leaky)).orElse(Double.NaN);
    if (balance.canLimit()) {
      double fewest = balance.atLeast(leaky);
      double asked = model.demand().days();
      boundBlock(block, i, VOLATILE_LOSS_BIT, asked, fewest, balance.atMost(tight));
    }
  }

  /** Of a piece that may hold no sealant yet: an edge of −∞ counts as none. */
  private double tight(BoundsBlock block, int i, int at) {
    return model.pack().total(block.stateHigh[at][i], Math.max(0, block.stateLow[at + 1][i]));
  }

  private double leaky(BoundsBlock block, int i, int at) {
    return model.pack().total(block.stateLow[at][i], Math.max(0, block.stateHigh[at + 1][i]));
  }
}
