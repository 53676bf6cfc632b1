package plyworth.plugins.cost;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
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
  private final FillingLine line;
  private final boolean speedProvided;
  private final double packs;
  private final double intoSlittingM2;
  private final double slittingCost;
  private final double freightPerGsm;
  private final double perThousand;
  private final double perThousandM2;
  private final double assumedSpeed;

  CostLayers(Tariff tariff, boolean speedProvided) {
    this.tariff = tariff;
    this.speedProvided = speedProvided;
    line = new FillingLine(tariff.brief().machine());
    packs = tariff.brief().order().packs();
    PassRates slitting = tariff.rates(tariff.slitting());
    intoSlittingM2 = slitting.input(tariff.slitM2(packs));
    slittingCost = slitting.cost(tariff.slitM2(packs));
    freightPerGsm = tariff.freight(1, packs);
    perThousand = tariff.priced(1) / packs * 1000;
    perThousandM2 = 1 / tariff.brief().pack().filmAreaM2();
    assumedSpeed = tariff.context().parameter(Parameters.PACKS_PER_MINUTE);
  }

  @Override
  public List<StatePart> state() {
    return STATE;
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
    double[] speeds = speedProvided ? block.needed[0] : null;
    double[][] out = block.low;
    for (int i = 0; i < block.size; i++) {
      double speed = speeds == null ? assumedSpeed : speeds[i];
      write(block.states, i, speed, out);
      out[Criteria.YIELD][i] = 1000 / block.states[GRAMMAGE][i];
      block.blocked[i] = 0;
    }
  }

  /** Every criterion rises with every state, and falls with the speed of the line. */
  @Override
  public void bound(BoundsBlock block) {
    for (int i = 0; i < block.size; i++) {
      double slow = speedProvided ? block.neededLow[0][i] : assumedSpeed;
      double fast = speedProvided ? block.neededHigh[0][i] : assumedSpeed;
      write(block.stateLow, i, fast, block.low);
      write(block.stateHigh, i, slow, block.high);
      block.low[Criteria.YIELD][i] = 1000 / block.stateHigh[GRAMMAGE][i];
      block.high[Criteria.YIELD][i] = 1000 / block.stateLow[GRAMMAGE][i];
      block.mustBlock[i] = 0;
      block.mayBlock[i] = 0;
    }
  }

  /** Writes every criterion but the yield. */
  private void write(double[][] states, int i, double packsPerMinute, double[][] out) {
    double grammage = states[GRAMMAGE][i];
    double cost =
        states[C][i] * intoSlittingM2 + states[D][i] + slittingCost + freightPerGsm * grammage;
    double film = cost * perThousand;
    double filling = line.perThousand(FillingLine.runnable(packsPerMinute));
    out[Criteria.PACKED][i] = line.perThousandGood(film, filling);
    out[Criteria.PRICE_PER_1000][i] = film;
    out[Criteria.PRICE_PER_1000_M2][i] = film * perThousandM2;
    out[Criteria.GRAMMAGE][i] = grammage;
    out[Criteria.GAUGE][i] = states[GAUGE][i];
  }
}
