package plyworth.plugins.cost;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import plyworth.shared.route.Process;
import plyworth.shared.route.Route;
import plyworth.shared.scoring.Block;
import plyworth.shared.scoring.BoundsBlock;
import plyworth.shared.scoring.Join;
import plyworth.shared.scoring.Layerwise;
import plyworth.shared.scoring.StatePart;
import plyworth.shared.structure.Layer;

/**
 * Cost taken apart by layers.
 *
 * <p>For an area x that leaves on its inner side, a layer lets a·x + b enter on its outer side and
 * costs c·x + d. The layer that calls for a pass carries the pass, I = x/(1 − w) + S; every
 * material is paid at the area that enters its pass. Slitting, the same for all, is led back once.
 */
final class CostLayers implements Layerwise {

  private static final int GRAMMAGE = 0;
  private static final int GAUGE = 1;
  private static final int A = 2;
  private static final int B = 3;
  private static final int C = 4;
  private static final int D = 5;

  private static final List<StatePart> STATE =
      List.of(
          new StatePart("grammage", Join.SUM),
          new StatePart("gauge", Join.SUM),
          new StatePart("area and cost", Join.AFFINE));

  private final Tariff tariff;
  private final boolean speedProvided;
  private final double packs;
  private final double intoSlittingM2;
  private final double slittingCost;
  private final double freightPerGsm;
  private final double perThousand;
  private final double perThousandM2;
  private final double assumedSpeed;
  private final double fillingAtOnePerMinute;
  private final double perGoodPack;

  CostLayers(Tariff tariff, boolean speedProvided) {
    this.tariff = tariff;
    this.speedProvided = speedProvided;
    packs = tariff.brief().order().packs();
    PassRates slitting = tariff.rates(tariff.slitting());
    intoSlittingM2 = slitting.input(tariff.slitM2(packs));
    slittingCost = slitting.cost(tariff.slitM2(packs));
    freightPerGsm = tariff.freight(1, packs);
    perThousand = tariff.priced(1) / packs * 1000;
    perThousandM2 = 1 / tariff.brief().pack().filmAreaM2();
    assumedSpeed = tariff.context().parameter(Parameters.PACKS_PER_MINUTE);
    FillingLine line = new FillingLine(tariff.brief().machine());
    fillingAtOnePerMinute = line.perThousand(1);
    perGoodPack = line.perThousandGood(1, 0);
  }

  @Override
  public List<StatePart> state() {
    return STATE;
  }

  @Override
  public OptionalInt sumOf(String criterion) {
    if (criterion.equals(Criteria.ALL.get(Criteria.GRAMMAGE).id())) {
      return OptionalInt.of(GRAMMAGE);
    }
    return criterion.equals(Criteria.ALL.get(Criteria.GAUGE).id())
        ? OptionalInt.of(GAUGE)
        : OptionalInt.empty();
  }

  @Override
  public void contribute(Layer layer, Layer outer, double[] state) {
    state[GRAMMAGE] = tariff.context().grammage(layer);
    state[GAUGE] = tariff.context().gaugeUm(layer);
    double material = tariff.materialPerM2(layer);
    Optional<Process> called = Route.passAt(layer, outer, tariff.context().processes());
    Optional<Process> shared = Route.sharedPass(layer, outer, tariff.context().processes());
    if (called.isPresent()) {
      carry(called.get(), outer, material, state);
    } else if (shared.isPresent()) {
      share(shared.get(), layer, material, state);
    } else {
      state[C] = material;
    }
    spreadUnknown(state);
  }

  /** One unknown makes the whole map unknown: 0 times unknown is no zero. */
  private static void spreadUnknown(double[] state) {
    if (Double.isNaN(state[A] + state[B] + state[C] + state[D])) {
      Arrays.fill(state, A, D + 1, Double.NaN);
    }
  }

  private void carry(Process process, Layer outer, double material, double[] state) {
    PassRates rates = tariff.rates(process);
    double slowdown = tariff.web(outer) ? tariff.slowdown(process, outer) : 0;
    PassRates here = rates.slowedBy(slowdown);
    state[A] = here.runningInput(1);
    state[B] = here.setupWasteM2();
    state[C] = state[A] * (here.runningCostPerM2() + material);
    state[D] =
        here.setupHours() * here.hourRate() + tariff.tooling(process, packs) + state[B] * material;
  }

  private void share(Process process, Layer layer, double material, double[] state) {
    PassRates rates = tariff.rates(process);
    double slowdown = tariff.unwound(layer) ? tariff.slowdown(process, layer) : 0;
    double running = rates.runningInput(1);
    state[C] = running * (slowdown / 60 * rates.hourRate() + material);
    state[D] = rates.setupWasteM2() * material;
  }

  @Override
  public void finish(Block block) {
    double[] speeds = speedProvided ? block.needed[0] : assumed(block.size);
    write(block.states, speeds, block.size, block.low);
    reciprocal(block.states[GRAMMAGE], block.size, block.low[Criteria.YIELD]);
    Arrays.fill(block.blocked, 0, block.size, 0);
  }

  /** Every criterion but the yield rises with every state and falls with the speed of the line. */
  @Override
  public void bound(BoundsBlock block) {
    int size = block.size;
    write(block.stateLow, speedProvided ? block.neededHigh[0] : assumed(size), size, block.low);
    write(block.stateHigh, speedProvided ? block.neededLow[0] : assumed(size), size, block.high);
    reciprocal(block.stateHigh[GRAMMAGE], size, block.low[Criteria.YIELD]);
    reciprocal(block.stateLow[GRAMMAGE], size, block.high[Criteria.YIELD]);
    Arrays.fill(block.mustBlock, 0, size, 0);
    Arrays.fill(block.mayBlock, 0, size, 0);
  }

  private double[] assumed(int size) {
    double[] speeds = new double[size];
    Arrays.fill(speeds, assumedSpeed);
    return speeds;
  }

  private void write(double[][] states, double[] packsPerMinute, int size, double[][] out) {
    double[] grammage = states[GRAMMAGE];
    double[] perM2 = states[C];
    double[] fixed = states[D];
    double[] packed = out[Criteria.PACKED];
    double[] film = out[Criteria.PRICE_PER_1000];
    double[] filmM2 = out[Criteria.PRICE_PER_1000_M2];
    for (int i = 0; i < size; i++) {
      double cost =
          perM2[i] * intoSlittingM2 + fixed[i] + slittingCost + freightPerGsm * grammage[i];
      double filling = fillingAtOnePerMinute / FillingLine.runnable(packsPerMinute[i]);
      film[i] = cost * perThousand;
      filmM2[i] = film[i] * perThousandM2;
      packed[i] = (film[i] + filling) * perGoodPack;
    }
    System.arraycopy(grammage, 0, out[Criteria.GRAMMAGE], 0, size);
    System.arraycopy(states[GAUGE], 0, out[Criteria.GAUGE], 0, size);
  }

  private static void reciprocal(double[] grammage, int size, double[] yield) {
    for (int i = 0; i < size; i++) {
      yield[i] = 1000 / grammage[i];
    }
  }
}
