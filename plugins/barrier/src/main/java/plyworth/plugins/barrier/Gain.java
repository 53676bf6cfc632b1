package plyworth.plugins.barrier;

import java.util.function.DoubleUnaryOperator;

/**
 * What builds up in the product until it is spoilt.
 *
 * @param unit unit of gain and limit, plain spelling
 * @param limit the limit
 * @param over the gain after some days
 */
record Gain(String unit, double limit, DoubleUnaryOperator over) {

  /** The gain through one path of a pack. */
  static Gain of(PackBarrier barrier, PackBarrier.Path path) {
    Demand demand = barrier.demand();
    double total = path.total();
    return switch (path.mechanism().permeant()) {
      case WATER -> {
        MoistureBalance balance = demand.moisture().orElseThrow();
        yield new Gain("g", balance.allowedG(), days -> balance.uptakeG(days, total));
      }
      case OXYGEN -> {
        OxygenBalance balance = demand.oxygen().orElseThrow();
        yield new Gain("cm3", balance.allowedCm3(), days -> balance.uptakeCm3(days, total));
      }
      case ALCOHOL -> {
        VolatileBalance balance = demand.alcohol().orElseThrow();
        yield new Gain(
            "%", balance.content().allowedLossPercent(), days -> balance.lossPercent(days, total));
      }
    };
  }

  /** The gain after some days; NaN when the pack is unknown. */
  double after(double days) {
    return over.applyAsDouble(days);
  }
}
