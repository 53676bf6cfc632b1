package plyworth.plugins.supply;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plyworth.shared.scoring.Block;
import plyworth.shared.scoring.BoundsBlock;
import plyworth.shared.scoring.Join;
import plyworth.shared.scoring.Layerwise;
import plyworth.shared.scoring.StatePart;
import plyworth.shared.structure.Layer;

/**
 * Supply taken apart by layers.
 *
 * <p>Where one machine or service at most comes into question for a process, the layer that calls
 * for the pass carries its days and cost. Where the structure decides between several, the state
 * keeps which of them some layer excludes and how many passes there are, and the first that is left
 * is taken in the end.
 */
final class SupplyLayers implements Layerwise {

  private static final int DAYS = 0;
  private static final int COST = 1;
  private static final int WEB_DAYS = 2;
  private static final int SURPLUS = 3;
  private static final int SURPLUS_VALUE = 4;
  private static final int PROBLEMS = 5;
  private static final int FIRST_CHOICE = 6;

  private final Floor floor;
  private final List<Runners> open;
  private final List<StatePart> parts;
  private final double slittingDays;
  private final double slittingCost;
  private final long always;
  private final double perThousand;

  SupplyLayers(Floor floor) {
    this.floor = floor;
    open = floor.runners().values().stream().filter(Runners::open).toList();
    parts = parts(open);
    slittingDays = floor.slitting().days(0);
    slittingCost = floor.slitting().cost(0);
    always = floor.slitting().suited().isEmpty() ? Problem.NO_WORK_CENTRE.bit() : 0;
    perThousand = floor.demand().perThousand(1);
  }

  private static List<StatePart> parts(List<Runners> open) {
    List<StatePart> parts = new ArrayList<>();
    parts.add(new StatePart("days of passes", Join.SUM));
    parts.add(new StatePart("cost of passes sent out", Join.SUM));
    parts.add(new StatePart("days of the slowest web", Join.MAX));
    parts.add(new StatePart("surplus", Join.SUM));
    parts.add(new StatePart("value of the surplus", Join.SUM));
    parts.add(new StatePart("problems", Join.BITS));
    for (Runners runners : open) {
      String process = runners.process().id();
      parts.add(new StatePart("excluded from " + process, Join.BITS));
      parts.add(new StatePart("passes of " + process, Join.SUM));
    }
    return List.copyOf(parts);
  }

  @Override
  public List<StatePart> state() {
    return parts;
  }

  @Override
  public void contribute(Layer layer, Layer outer, double[] state) {
    Optional<Runners> entered = floor.entered(layer, outer);
    if (entered.isPresent()) {
      pass(entered.get(), layer, outer, state);
    }
    if (Sourcing.concerns(layer, floor)) {
      web(Sourcing.of(layer, floor), state);
    }
  }

  private void pass(Runners runners, Layer layer, Layer outer, double[] state) {
    int choice = open.indexOf(runners);
    long excluded = runners.excluded(layer, outer);
    boolean calls = floor.callsForPass(layer, outer);
    if (choice >= 0) {
      state[FIRST_CHOICE + 2 * choice] = excluded;
      state[FIRST_CHOICE + 2 * choice + 1] = calls ? 1 : 0;
      return;
    }
    int taken = runners.taken(excluded);
    if (calls || taken == runners.suited().size()) {
      state[DAYS] = runners.days(taken);
      state[COST] = runners.cost(taken);
      state[PROBLEMS] = taken == runners.suited().size() ? Problem.NO_WORK_CENTRE.bit() : 0;
    }
  }

  private static void web(Sourcing web, double[] state) {
    state[WEB_DAYS] = web.leadDays();
    state[SURPLUS] = web.surplusKg();
    state[SURPLUS_VALUE] = web.surplusEur();
    long problem = web.problem().map(Problem::bit).orElse(0L);
    state[PROBLEMS] = (long) state[PROBLEMS] | problem;
  }

  @Override
  public void finish(Block block) {
    double[][] states = block.states;
    double[] leadTime = block.low[Criteria.LEAD_TIME];
    double[] sentOut = block.low[Criteria.SENT_OUT];
    for (int i = 0; i < block.size; i++) {
      leadTime[i] = Math.max(0, states[WEB_DAYS][i]) + states[DAYS][i] + slittingDays;
      sentOut[i] = states[COST][i] + slittingCost;
      block.blocked[i] = (long) states[PROBLEMS][i] | always;
    }
    for (int k = 0; k < open.size(); k++) {
      choose(open.get(k), states[FIRST_CHOICE + 2 * k], states[FIRST_CHOICE + 2 * k + 1], block);
    }
    for (int i = 0; i < block.size; i++) {
      sentOut[i] *= perThousand;
    }
    System.arraycopy(states[SURPLUS], 0, block.low[Criteria.SURPLUS], 0, block.size);
    System.arraycopy(states[SURPLUS_VALUE], 0, block.low[Criteria.SURPLUS_VALUE], 0, block.size);
  }

  private static void choose(Runners runners, double[] excluded, double[] passes, Block block) {
    double[] leadTime = block.low[Criteria.LEAD_TIME];
    double[] sentOut = block.low[Criteria.SENT_OUT];
    int none = runners.suited().size();
    for (int i = 0; i < block.size; i++) {
      if (passes[i] > 0) {
        int taken = runners.taken((long) excluded[i]);
        leadTime[i] += passes[i] * runners.days(taken);
        sentOut[i] += passes[i] * runners.cost(taken);
        block.blocked[i] |= taken == none ? Problem.NO_WORK_CENTRE.bit() : 0;
      }
    }
  }

  @Override
  public void bound(BoundsBlock block) {
    double[][] low = block.stateLow;
    double[][] high = block.stateHigh;
    for (int i = 0; i < block.size; i++) {
      block.low[Criteria.LEAD_TIME][i] =
          Math.max(0, low[WEB_DAYS][i]) + low[DAYS][i] + slittingDays;
      block.high[Criteria.LEAD_TIME][i] =
          Math.max(0, high[WEB_DAYS][i]) + high[DAYS][i] + slittingDays;
      block.low[Criteria.SENT_OUT][i] = low[COST][i] + slittingCost;
      block.high[Criteria.SENT_OUT][i] = high[COST][i] + slittingCost;
      block.mustBlock[i] = (long) low[PROBLEMS][i] | always;
      block.mayBlock[i] = (long) high[PROBLEMS][i] | always;
      for (int k = 0; k < open.size(); k++) {
        bound(k, i, block);
      }
      block.low[Criteria.SENT_OUT][i] *= perThousand;
      block.high[Criteria.SENT_OUT][i] *= perThousand;
    }
    copy(SURPLUS, Criteria.SURPLUS, block);
    copy(SURPLUS_VALUE, Criteria.SURPLUS_VALUE, block);
  }

  private static void copy(int component, int criterion, BoundsBlock block) {
    System.arraycopy(block.stateLow[component], 0, block.low[criterion], 0, block.size);
    System.arraycopy(block.stateHigh[component], 0, block.high[criterion], 0, block.size);
  }

  /**
   * Between the cheapest and the dearest of those that can still be the first left: each that is
   * not excluded for certain, up to the first that nothing can exclude.
   */
  private void bound(int k, int i, BoundsBlock block) {
    Runners runners = open.get(k);
    long certain = (long) block.stateLow[FIRST_CHOICE + 2 * k][i];
    long possible = (long) block.stateHigh[FIRST_CHOICE + 2 * k][i];
    double fewest = block.stateLow[FIRST_CHOICE + 2 * k + 1][i];
    double most = block.stateHigh[FIRST_CHOICE + 2 * k + 1][i];
    if (!(most > 0)) {
      return;
    }
    int none = runners.suited().size();
    int last = runners.taken(possible);
    Range days = Range.EMPTY;
    Range cost = Range.EMPTY;
    for (int c = runners.taken(certain); c <= last; c++) {
      if (c == none || (certain >> c & 1) == 0) {
        days = days.with(runners.days(c));
        cost = cost.with(runners.cost(c));
      }
    }
    block.low[Criteria.LEAD_TIME][i] += fewest * days.low();
    block.high[Criteria.LEAD_TIME][i] += most * days.high();
    block.low[Criteria.SENT_OUT][i] += fewest * cost.low();
    block.high[Criteria.SENT_OUT][i] += most * cost.high();
    long bit = Problem.NO_WORK_CENTRE.bit();
    block.mustBlock[i] |= fewest > 0 && runners.taken(certain) == none ? bit : 0;
    block.mayBlock[i] |= last == none ? bit : 0;
  }

  /** Figures met so far; NaN, the unknown, is passed on. */
  private record Range(double low, double high) {

    static final Range EMPTY = new Range(Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY);

    Range with(double figure) {
      return new Range(Math.min(low, figure), Math.max(high, figure));
    }
  }
}
