package plyworth.plugins.cost;

import plyworth.shared.structure.Structure;

/**
 * What a price does with the order size (analytic): P(q) = F + v·q for one route, as long as the
 * tools outlast the orders made with them.
 *
 * @param fixed F, EUR for an order, margin included: set-up, its waste, tools
 * @param variable v, EUR per pack: materials, running hours and running waste
 */
record OrderSize(double fixed, double variable) {

  /** Split at the order of a bill, from a second bill of twice the size. */
  static OrderSize of(Structure structure, Tariff tariff, double packs) {
    double once = Bill.of(structure, tariff, packs).price();
    double twice = Bill.of(structure, tariff, 2 * packs).price();
    double variable = (twice - once) / packs;
    return new OrderSize(once - variable * packs, variable);
  }

  /** Price per 1000 packs in an order of some size, EUR. */
  double pricePerThousand(double packs) {
    return (variable + fixed / packs) * 1000;
  }

  /** Packs in the smallest order whose fixed part is at most a share of its price. */
  double smallestOrder(double fixedShare) {
    return fixed * (1 - fixedShare) / (fixedShare * variable);
  }

  /** By how many per cent the price per pack falls when the order grows by one per cent. */
  double elasticity(double packs) {
    double fixedPerPack = fixed / packs;
    return -fixedPerPack / (variable + fixedPerPack);
  }
}
