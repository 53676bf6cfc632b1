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
import plyworth.plugins.barrier.laminate.HumidityCurve;
import plyworth.shared.scoring.Block;
import plyworth.shared.scoring.BoundsBlock;
import plyworth.shared.scoring.Join;
import plyworth.shared.scoring.Layerwise;
import plyworth.shared.scoring.StatePart;
import plyworth.shared.structure.Layer;

/**
 * The barrier taken apart by layers: resistances add, the innermost layer gives the seal edge, the
 * darkest layer the light class. Water and oxygen follow the humidity within as far as {@link
 * HumidityState} knows it. Only what some pack could fail by is carried, and the water that moves
 * with an alcohol.
 */
final class BarrierLayerwise implements Layerwise {

  private static final int FLAT_OXYGEN = 0;
  private static final int FLAT_WATER_LOW = 1;
  private static final int FLAT_WATER_HIGH = 2;
  private static final int LIGHTEST = 3;
  private static final int LABORATORY = 4;
  private static final int HUMIDITY = LABORATORY + LaboratoryState.SIZE;

  private final BarrierModel model;
  private final List<Mechanism> mechanisms;
  private final List<Permeant> permeants;
  private final LaboratoryState laboratory;
  private final HygroscopicKinds kinds;
  private final HumidityState humidity;
  private final boolean humid;
  private final boolean oxygen;
  private final int[] edges;
  private final double[] leaks;
  private final Optional<LossBounds> loss;
  private final PackFinish finish;
  private final double failsBefore;

  BarrierLayerwise(BarrierModel model) {
    this.model = model;
    this.mechanisms = model.demand().canLimit();
    this.permeants = permeants(model.demand());
    this.laboratory = new LaboratoryState(model);
    this.kinds = HygroscopicKinds.of(model);
    this.oxygen = permeants.contains(Permeant.OXYGEN);
    this.humidity = new HumidityState(model, kinds, oxygen);
    this.humid = !permeants.isEmpty();
    this.edges = edges(permeants, HUMIDITY + (humid ? humidity.size() : 0));
    this.leaks = leaks(model);
    this.loss = LossBounds.of(model.demand());
    this.finish = new PackFinish(model, permeants, loss);
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
    parts.add(new StatePart("least flat resistance to water vapour", Join.SUM));
    parts.add(new StatePart("largest flat resistance to water vapour", Join.SUM));
    parts.add(new StatePart("light class", Join.MAX));
    parts.addAll(LaboratoryState.parts());
    if (humid) {
      parts.addAll(humidity.parts());
    }
    for (Permeant permeant : permeants) {
      String name = permeant.name().toLowerCase(Locale.ROOT);
      parts.add(new StatePart("seal edge conductance of " + name, Join.INNERMOST));
      if (permeant.alcohol()) {
        parts.add(new StatePart("resistance in the pack to " + name, Join.SUM));
      }
    }
    return List.copyOf(parts);
  }

  @Override
  public void contribute(Layer layer, Layer outer, double[] state) {
    double flat = 1 / model.layers().flat(layer, Permeant.WATER);
    HumidityCurve water = model.layers().curve(layer, Permeant.WATER);
    state[FLAT_OXYGEN] = 1 / model.layers().flat(layer, Permeant.OXYGEN);
    state[FLAT_WATER_LOW] = flat / water.highest(0, Permeant.WATER_MEASURED_AT);
    state[FLAT_WATER_HIGH] = flat / water.lowest(0, Permeant.WATER_MEASURED_AT);
    state[LIGHTEST] = LightClass.of(model.context().material(layer).kinds());
    laboratory.contribute(layer, outer, state, LABORATORY);
    if (humid) {
      humidity.contribute(layer, outer, state, HUMIDITY);
    }
    double gap = 2 * model.context().gaugeUm(layer);
    for (Permeant permeant : permeants) {
      double sealant = model.layers().asSealant(layer, permeant, model.climate().within());
      state[edge(permeant)] = model.pack().edge(sealant, gap);
      if (permeant.alcohol()) {
        state[edge(permeant) + 1] = 1 / model.layers().inPack(layer, outer, permeant);
      }
    }
  }

  /** Component with the seal edge; an alcohol has its resistance behind it. */
  private int edge(Permeant permeant) {
    return edges[permeant.ordinal()];
  }

  private static int[] edges(List<Permeant> permeants, int first) {
    int[] edges = new int[Permeant.values().length];
    int at = first;
    for (Permeant permeant : permeants) {
      edges[permeant.ordinal()] = at;
      at += permeant.alcohol() ? 2 : 1;
    }
    return edges;
  }

  @Override
  public void finish(Block block) {
    int size = block.size;
    invert(block.states[FLAT_OXYGEN], block.low[OTR], size);
    invert(block.states[FLAT_WATER_HIGH], block.low[WVTR], size);
    invert(block.states[FLAT_WATER_LOW], block.apart(WVTR), size);
    System.arraycopy(block.states[LIGHTEST], 0, block.low[LIGHT], 0, size);
    laboratory.finish(block, LABORATORY);
    Arrays.fill(block.low[SHELF_LIFE], 0, size, model.demand().cap());
    Arrays.fill(block.blocked, 0, size, 0);
    Arrays.fill(block.undecided, 0, size, false);
    if (humid) {
      Arrays.fill(block.apart(SHELF_LIFE), 0, size, model.demand().cap());
      finish.finish(block, ends(block.states));
      over(block.high[SHELF_LIFE], block.apart(MARGIN), size);
    }
    over(block.low[SHELF_LIFE], block.low[MARGIN], size);
  }

  private PackEnds ends(double[][] states) {
    double[][] edges = new double[permeants.size()][];
    double[] own = permeants.stream().mapToDouble(this::leak).toArray();
    double[] alcohol = {};
    for (int p = 0; p < edges.length; p++) {
      int edge = edge(permeants.get(p));
      edges[p] = states[edge];
      alcohol = permeants.get(p).alcohol() ? states[edge + 1] : alcohol;
    }
    HumidityBounds bounds = new HumidityBounds(kinds, model.climates(), states, HUMIDITY, oxygen);
    return new PackEnds(permeants, model.pack().faceM2(), bounds, edges, own, alcohol);
  }

  private void over(double[] days, double[] margins, int size) {
    double asked = model.demand().days();
    for (int i = 0; i < size; i++) {
      margins[i] = days[i] / asked;
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
      block.low[OTR][i] = 1 / block.stateHigh[FLAT_OXYGEN][i];
      block.high[OTR][i] = 1 / block.stateLow[FLAT_OXYGEN][i];
      block.low[WVTR][i] = 1 / block.stateHigh[FLAT_WATER_HIGH][i];
      block.high[WVTR][i] = 1 / block.stateLow[FLAT_WATER_LOW][i];
      block.low[LIGHT][i] = Math.max(LightClass.TRANSPARENT, block.stateLow[LIGHTEST][i]);
      block.high[LIGHT][i] = Math.max(LightClass.TRANSPARENT, block.stateHigh[LIGHTEST][i]);
      laboratory.bound(block, i, LABORATORY);
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
      Permeant permeant = mechanism.permeant();
      Balance balance = mechanism.balance();
      double low = balance.atLeast(leaky(block, i, permeant));
      double high = balance.atMost(tight(block, i, permeant));
      boundBlock(block, i, DOES_NOT_KEEP_BIT, failsBefore, low, high);
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
    double tight = tight(block, i, balance.permeant()) + 0 * tight(block, i, Permeant.WATER);
    double leaky = leaky(block, i, balance.permeant()) + 0 * leaky(block, i, Permeant.WATER);
    block.low[VOLATILE_LOSS][i] = loss.map(l -> l.lowest(tight)).orElse(Double.NaN);
    block.high[VOLATILE_LOSS][i] = loss.map(l -> l.highest(leaky)).orElse(Double.NaN);
    if (balance.canLimit()) {
      double fewest = balance.atLeast(leaky);
      double asked = model.demand().days();
      boundBlock(block, i, VOLATILE_LOSS_BIT, asked, fewest, balance.atMost(tight));
    }
  }

  private double tight(BoundsBlock block, int i, Permeant permeant) {
    double resistance = block.stateHigh[largest(permeant)][i];
    return conductance(resistance, orNone(block.stateLow[edge(permeant)][i]), leak(permeant));
  }

  private double leaky(BoundsBlock block, int i, Permeant permeant) {
    double resistance = block.stateLow[least(permeant)][i];
    return conductance(resistance, orNone(block.stateHigh[edge(permeant)][i]), leak(permeant));
  }

  /** Component with the least resistance to a permeant. */
  private int least(Permeant permeant) {
    return switch (permeant) {
      case WATER -> HUMIDITY + HumidityState.WATER_LOW;
      case OXYGEN -> HUMIDITY + HumidityState.OXYGEN_LOW;
      case ALCOHOL, ETHANOL -> edge(permeant) + 1;
    };
  }

  private int largest(Permeant permeant) {
    return switch (permeant) {
      case WATER -> HUMIDITY + HumidityState.WATER_HIGH;
      case OXYGEN -> HUMIDITY + HumidityState.OXYGEN_HIGH;
      case ALCOHOL, ETHANOL -> edge(permeant) + 1;
    };
  }

  private double conductance(double resistance, double edge, double leak) {
    return model.pack().faceM2() / resistance + edge + leak;
  }

  private double leak(Permeant permeant) {
    return leaks[permeant.ordinal()];
  }

  private static double[] leaks(BarrierModel model) {
    return Arrays.stream(Permeant.values())
        .mapToDouble(p -> model.pack().leaks().conductance(p, model.climate().celsius()))
        .toArray();
  }

  /** Of a piece that may hold no sealant yet: an edge of −∞ counts as none. */
  private static double orNone(double edge) {
    return Math.max(0, edge);
  }
}
