package plyworth.plugins.barrier.layerwise;

import plyworth.plugins.barrier.climate.BarrierClimates;

/**
 * Encloses the resistances of laminates of which {@link HumidityState} is known: the humidity at a
 * face is that outside plus the share of the resistance before the face times the difference to the
 * inside, so ends of the resistances give ends of the humidity, and these narrower ends of the
 * resistances. A few rounds suffice, and every one is enclosing, for every state of the product.
 * Through seasons only the ends over all humidity are used. Reused from laminate to laminate of one
 * block.
 */
final class HumidityBounds {

  private static final int ROUNDS = 4;

  /** Relative width of a whole at which narrowing stops. */
  static final double NARROW = 4e-3;

  private final WetLayer paper;
  private final WetLayer polymer;
  private final boolean constant;
  private final boolean oxygen;
  private final double[] all;
  private final double[] leastWater;
  private final double[] largestWater;
  private final double[] oxygenFixed;
  private final double[] leastOxygen;
  private final double[] largestOxygen;
  private double fixed;

  /** Ends of the resistance to water. */
  double waterLow;

  double waterHigh;

  /** Ends of the resistance to oxygen. */
  double oxygenLow;

  double oxygenHigh;

  /**
   * The laminates of a block.
   *
   * @param states joined states
   * @param at first component of the {@link HumidityState}
   * @param oxygen whether it follows oxygen
   */
  HumidityBounds(
      HygroscopicKinds kinds, BarrierClimates climates, double[][] states, int at, boolean oxygen) {
    this.constant = climates.seasons().constant();
    this.oxygen = oxygen;
    this.paper = new WetLayer(kinds, climates, states, at, 0, oxygen);
    this.polymer = new WetLayer(kinds, climates, states, at, 1, oxygen);
    this.all = states[at + HumidityState.ALL];
    this.leastWater = states[at + HumidityState.WATER_LOW];
    this.largestWater = states[at + HumidityState.WATER_HIGH];
    this.oxygenFixed = oxygen ? states[at + HumidityState.OXYGEN_FIXED] : all;
    this.leastOxygen = oxygen ? states[at + HumidityState.OXYGEN_LOW] : all;
    this.largestOxygen = oxygen ? states[at + HumidityState.OXYGEN_HIGH] : all;
  }

  /** Whether a laminate holds a polymer whose humidity is unknown, since that of water is. */
  boolean unknown(int row) {
    return Double.isNaN(leastWater[row]) && polymer.many(row) > 0;
  }

  /** Encloses a laminate more narrowly; false when no more is known of it. */
  boolean narrow(int row) {
    waterLow = leastWater[row];
    waterHigh = largestWater[row];
    boolean known = waterLow <= waterHigh;
    if (!known || !constant || paper.many(row) > 1 || polymer.many(row) > 1) {
      return false;
    }
    paper.take(row);
    polymer.take(row);
    fixed = Math.max(0, all[row] - paper.water - polymer.water);
    if (polymer.stands() && polymer.outside < paper.outside) {
      narrow(polymer, paper);
    } else {
      narrow(paper, polymer);
    }
    waterLow = Math.max(waterLow, fixed + paper.low + polymer.low);
    waterHigh = Math.min(waterHigh, fixed + paper.high + polymer.high);
    if (oxygen) {
      narrowOxygen(row);
    }
    return true;
  }

  /** Papers hold oxygen alike at any humidity: without a polymer its ends are one. */
  private void narrowOxygen(int row) {
    oxygenLow = leastOxygen[row];
    oxygenHigh = largestOxygen[row];
    if (polymer.stands()) {
      double own = oxygenFixed[row] + paper.oxygen;
      oxygenLow = Math.max(oxygenLow, own + polymer.oxygenLow());
      oxygenHigh = Math.min(oxygenHigh, own + polymer.oxygenHigh());
    }
  }

  private void narrow(WetLayer outer, WetLayer inner) {
    double before = outer.stands() ? outer.outside : 0;
    double between = inner.stands() ? Math.max(0, inner.outside - before - outer.water) : 0;
    double after = Math.max(0, fixed - before - between);
    boolean oxygenOpen = oxygen && polymer.stands();
    for (int round = 0; round < ROUNDS && (oxygenOpen || wide()); round++) {
      if (outer.stands()) {
        outer.narrow(before, before, between + inner.low + after, between + inner.high + after);
      }
      if (inner.stands()) {
        inner.narrow(before + between + outer.low, before + between + outer.high, after, after);
      }
    }
  }

  private boolean wide() {
    double width = paper.high - paper.low + polymer.high - polymer.low;
    return width > NARROW * (fixed + paper.low + polymer.low);
  }
}
