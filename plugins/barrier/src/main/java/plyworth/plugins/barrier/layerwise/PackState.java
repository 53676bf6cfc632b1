package plyworth.plugins.barrier.layerwise;

import static plyworth.plugins.barrier.pack.BarrierCriteria.DOES_NOT_KEEP_BIT;
import static plyworth.plugins.barrier.pack.BarrierCriteria.MARGIN;
import static plyworth.plugins.barrier.pack.BarrierCriteria.SHELF_LIFE;
import static plyworth.plugins.barrier.pack.BarrierCriteria.VOLATILE_LOSS;
import static plyworth.plugins.barrier.pack.BarrierCriteria.VOLATILE_LOSS_BIT;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import plyworth.plugins.barrier.course.Balance;
import plyworth.plugins.barrier.course.Demand;
import plyworth.plugins.barrier.course.LossBounds;
import plyworth.plugins.barrier.course.Mechanism;
import plyworth.plugins.barrier.course.VolatileBalance;
import plyworth.plugins.barrier.pack.BarrierModel;
import plyworth.plugins.barrier.permeation.Permeant;
import plyworth.shared.scoring.Block;
import plyworth.shared.scoring.BoundsBlock;
import plyworth.shared.scoring.Join;
import plyworth.shared.scoring.StatePart;
import plyworth.shared.structure.Layer;

/**
 * How long the formed and handled pack keeps: resistances add, the innermost layer gives the seal
 * edge. Water and oxygen follow the humidity within as far as {@link HumidityState} knows it. Only
 * what some pack could fail by is carried, and the water that moves with an alcohol.
 */
final class PackState implements StateGroup {

  private final BarrierModel model;
  private final List<Mechanism> mechanisms;
  private final List<Permeant> permeants;
  private final HygroscopicKinds kinds;
  private final HumidityState humidity;
  private final boolean oxygen;
  private final int[] edges;
  private final double[] leaks;
  private final Optional<LossBounds> loss;
  private final PackFinish finish;
  private final double failsBefore;

  PackState(BarrierModel model) {
    this.model = model;
    this.mechanisms = model.demand().canLimit();
    this.permeants = permeants(model.demand());
    this.kinds = HygroscopicKinds.of(model);
    this.oxygen = permeants.contains(Permeant.OXYGEN);
    this.humidity = new HumidityState(model, kinds, oxygen);
    this.edges = edges(permeants, humidity.size());
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
  public List<StatePart> parts() {
    if (permeants.isEmpty()) {
      return List.of();
    }
    List<StatePart> parts = new ArrayList<>(humidity.parts());
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
  public void contribute(Layer layer, Layer outer, double[] state, int at) {
    if (permeants.isEmpty()) {
      return;
    }
    humidity.contribute(layer, outer, state, at);
    double gap = 2 * model.context().gaugeUm(layer);
    for (Permeant permeant : permeants) {
      double sealant = model.layers().asSealant(layer, permeant, model.climate().within());
      state[at + edge(permeant)] = model.pack().edge(sealant, gap);
      if (permeant.alcohol()) {
        state[at + edge(permeant) + 1] = 1 / model.layers().inPack(layer, outer, permeant);
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
  public void finish(Block block, int at) {
    int size = block.size;
    Arrays.fill(block.undecided, 0, size, false);
    if (permeants.isEmpty()) {
      double cap = model.demand().cap();
      Arrays.fill(block.blocked, 0, size, 0);
      Arrays.fill(block.low[SHELF_LIFE], 0, size, cap);
      Arrays.fill(block.low[MARGIN], 0, size, cap / model.demand().days());
    } else {
      finish.finish(block, ends(block.states, at));
    }
  }

  private PackEnds ends(double[][] states, int at) {
    PackEnds.Columns[] columns = new PackEnds.Columns[permeants.size()];
    for (int p = 0; p < columns.length; p++) {
      Permeant permeant = permeants.get(p);
      columns[p] =
          new PackEnds.Columns(
              states[at + least(permeant)],
              states[at + largest(permeant)],
              states[at + edge(permeant)],
              leak(permeant));
    }
    HumidityBounds bounds = new HumidityBounds(kinds, model.climates(), states, at, oxygen);
    return new PackEnds(permeants, model.pack().faceM2(), bounds, columns);
  }

  /** More conductance always means fewer days and more loss, so the ends bound each other. */
  @Override
  public void bound(BoundsBlock block, int at) {
    for (int i = 0; i < block.size; i++) {
      bound(block, i, at);
    }
  }

  private void bound(BoundsBlock block, int i, int at) {
    double fewest = model.demand().cap();
    double most = model.demand().cap();
    block.mustBlock[i] = 0;
    block.mayBlock[i] = 0;
    for (Mechanism mechanism : mechanisms) {
      Permeant permeant = mechanism.permeant();
      Balance balance = mechanism.balance();
      double low = balance.atLeast(leaky(block, i, at, permeant));
      double high = balance.atMost(tight(block, i, at, permeant));
      boundBlock(block, i, DOES_NOT_KEEP_BIT, failsBefore, low, high);
      fewest = Math.min(fewest, low);
      most = Math.min(most, high);
    }
    block.low[SHELF_LIFE][i] = fewest;
    block.high[SHELF_LIFE][i] = most;
    block.low[MARGIN][i] = fewest / model.demand().days();
    block.high[MARGIN][i] = most / model.demand().days();
    model.demand().alcohol().ifPresent(a -> boundLoss(block, i, at, a));
  }

  private static void boundBlock(
      BoundsBlock block, int i, long bit, double asked, double lowDays, double highDays) {
    block.mustBlock[i] |= highDays < asked ? bit : 0;
    block.mayBlock[i] |= lowDays >= asked ? 0 : bit;
  }

  private void boundLoss(BoundsBlock block, int i, int at, VolatileBalance balance) {
    double tight =
        tight(block, i, at, balance.permeant()) + 0 * tight(block, i, at, Permeant.WATER);
    double leaky =
        leaky(block, i, at, balance.permeant()) + 0 * leaky(block, i, at, Permeant.WATER);
    block.low[VOLATILE_LOSS][i] = loss.map(l -> l.lowest(tight)).orElse(Double.NaN);
    block.high[VOLATILE_LOSS][i] = loss.map(l -> l.highest(leaky)).orElse(Double.NaN);
    if (balance.canLimit()) {
      double fewest = balance.atLeast(leaky);
      double asked = model.demand().days();
      boundBlock(block, i, VOLATILE_LOSS_BIT, asked, fewest, balance.atMost(tight));
    }
  }

  private double tight(BoundsBlock block, int i, int at, Permeant permeant) {
    double resistance = block.stateHigh[at + largest(permeant)][i];
    return conductance(resistance, orNone(block.stateLow[at + edge(permeant)][i]), leak(permeant));
  }

  private double leaky(BoundsBlock block, int i, int at, Permeant permeant) {
    double resistance = block.stateLow[at + least(permeant)][i];
    return conductance(resistance, orNone(block.stateHigh[at + edge(permeant)][i]), leak(permeant));
  }

  /** Component with the least resistance to a permeant. */
  private int least(Permeant permeant) {
    return switch (permeant) {
      case WATER -> HumidityState.WATER_LOW;
      case OXYGEN -> HumidityState.OXYGEN_LOW;
      case ALCOHOL, ETHANOL -> edge(permeant) + 1;
    };
  }

  private int largest(Permeant permeant) {
    return switch (permeant) {
      case WATER -> HumidityState.WATER_HIGH;
      case OXYGEN -> HumidityState.OXYGEN_HIGH;
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
