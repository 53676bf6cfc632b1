package plyworth.plugins.barrier;

import static plyworth.plugins.barrier.BarrierCriteria.DOES_NOT_KEEP_BIT;
import static plyworth.plugins.barrier.BarrierCriteria.SHELF_LIFE;
import static plyworth.plugins.barrier.BarrierCriteria.VOLATILE_LOSS;
import static plyworth.plugins.barrier.BarrierCriteria.VOLATILE_LOSS_BIT;

import java.util.List;
import java.util.Optional;
import plyworth.shared.scoring.Block;

/**
 * Turns the conductances of a block of packs into days, loss and verdicts. The humidity within is
 * enclosed only where it can still make a difference: not of a pack that keeps up to the cap, or
 * fails, with its layers at any humidity. The figures of one that fails may then stay wide; it is
 * blocked whatever they are.
 */
final class PackFinish {

  private final Way[] ways;
  private final double failsBefore;
  private final boolean constant;
  private final int alcohol;
  private final int water;
  private final Optional<LossBounds> loss;

  /**
   * A mechanism, prepared.
   *
   * @param permeant index of what passes
   * @param with index of what passes along with it; itself when nothing does
   * @param tooMuchBefore days before which too much is lost; 0 when that is not asked
   */
  private record Way(
      Balance balance, int permeant, int with, double tooMuchBefore, Verdict verdict) {

    boolean known(PackEnds ends) {
      return !Double.isNaN(ends.largest(with));
    }

    boolean keeps(PackEnds ends) {
      return verdict.keeps(ends.largest(permeant)) && known(ends);
    }

    boolean fails(PackEnds ends) {
      return verdict.fails(ends.least(permeant)) && known(ends);
    }
  }

  PackFinish(BarrierModel model, List<Permeant> permeants, Optional<LossBounds> loss) {
    Demand demand = model.demand();
    this.failsBefore = model.blockMargin() * demand.days();
    this.constant = model.climates().seasons().constant();
    this.alcohol = demand.alcohol().map(a -> permeants.indexOf(a.permeant())).orElse(-1);
    this.water = permeants.indexOf(Permeant.WATER);
    this.loss = loss;
    this.ways = demand.canLimit().stream().map(m -> way(m, demand, permeants)).toArray(Way[]::new);
  }

  private Way way(Mechanism mechanism, Demand demand, List<Permeant> permeants) {
    int permeant = permeants.indexOf(mechanism.permeant());
    boolean mixed = mechanism.permeant().alcohol();
    double certain = Math.min(failsBefore, demand.days());
    return new Way(
        mechanism.balance(),
        permeant,
        mixed ? water : permeant,
        mixed ? demand.days() : 0,
        Verdict.of(mechanism.balance(), demand.cap(), certain));
  }

  /** Lowers the days of a block to what its packs allow, and writes their blocks and losses. */
  void finish(Block block, PackEnds ends) {
    if (alcohol >= 0) {
      block.apart(VOLATILE_LOSS);
    }
    for (int row = 0; row < block.size; row++) {
      ends.read(row);
      boolean fails = fails(ends);
      if (!fails && open(ends)) {
        ends.narrow(row);
      }
      for (Way way : ways) {
        if (!way.keeps(ends)) {
          live(block, row, way, ends);
        }
      }
      if (alcohol >= 0) {
        lose(block, row, fails, ends);
      }
    }
  }

  private boolean fails(PackEnds ends) {
    for (Way way : ways) {
      if (way.fails(ends)) {
        return true;
      }
    }
    return false;
  }

  /** Whether narrower ends could change a figure; a loss they always can. */
  private boolean open(PackEnds ends) {
    for (Way way : ways) {
      if (!way.keeps(ends)) {
        return true;
      }
    }
    return alcohol >= 0;
  }

  private void live(Block block, int row, Way way, PackEnds ends) {
    double waterLow = ends.least(way.with);
    double waterHigh = ends.largest(way.with);
    double latest = way.balance.atMost(ends.least(way.permeant), waterLow, waterHigh);
    double soonest = way.balance.atLeast(ends.largest(way.permeant), waterLow, waterHigh);
    boolean fails = latest < failsBefore;
    boolean loses = latest < way.tooMuchBefore;
    block.high[SHELF_LIFE][row] = Math.min(block.high[SHELF_LIFE][row], latest);
    block.low[SHELF_LIFE][row] = Math.min(block.low[SHELF_LIFE][row], soonest);
    block.blocked[row] |= fails ? DOES_NOT_KEEP_BIT : 0;
    block.blocked[row] |= loses ? VOLATILE_LOSS_BIT : 0;
    boolean undecided = !fails && soonest < failsBefore || !loses && soonest < way.tooMuchBefore;
    block.undecided[row] |= constant && undecided;
  }

  private void lose(Block block, int row, boolean fails, PackEnds ends) {
    double[] low = block.low[VOLATILE_LOSS];
    double[] high = block.high[VOLATILE_LOSS];
    double own = ends.least(alcohol);
    if (loss.isEmpty()) {
      low[row] = Double.NaN;
      high[row] = Double.NaN;
    } else if (fails) {
      low[row] = loss.get().lowest(own) + 0 * ends.largest(water);
      high[row] = loss.get().highest(own) + 0 * ends.largest(water);
    } else {
      loss.get().enclose(own, ends.least(water), ends.largest(water), low, high, row);
    }
  }
}
