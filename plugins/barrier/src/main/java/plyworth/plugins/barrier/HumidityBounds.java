package plyworth.plugins.barrier;

/**
 * Encloses the resistances of laminates of which {@link HumidityState} is known: the humidity at a
 * face is that outside plus the share of the resistance before the face times the difference to the
 * inside, so ends of the resistances give ends of the humidity, and these narrower ends of the
 * resistances. A few rounds suffice, and every one is enclosing, for every state of the product.
 * Through seasons only the ends over all humidity are used.
 */
final class HumidityBounds {

  private static final int ROUNDS = 4;

  /** Relative width of the whole resistance at which narrowing stops. */
  private static final double NARROW = 4e-3;

  private final HygroscopicKinds kinds;
  private final HumiditySpan span;
  private final double outside;
  private final double driest;
  private final double dampest;
  private final boolean constant;
  private final boolean oxygen;
  private final WetLayer paper = new WetLayer();
  private final WetLayer polymer = new WetLayer();
  private double fixed;

  /** Ends of the resistance to water. */
  double waterLow;

  double waterHigh;

  /** Ends of the resistance to oxygen. */
  double oxygenLow;

  double oxygenHigh;

  HumidityBounds(HygroscopicKinds kinds, BarrierClimates climates, boolean oxygen) {
    this.kinds = kinds;
    this.span = climates.span();
    this.outside = climates.climate().outside();
    this.driest = climates.climate().driest();
    this.dampest = climates.climate().inside();
    this.constant = climates.seasons().constant();
    this.oxygen = oxygen;
  }

  /** Encloses the resistances of one laminate, whose state begins at row {@code at}. */
  void of(double[][] states, int at, int column) {
    double papers = states[at + HumidityState.COUNT][column];
    double polymers = states[at + HumidityState.affine(1) + HumidityState.COUNT][column];
    double unknown = 0 * states[at + HumidityState.WATER_LOW][column];
    double all = states[at + HumidityState.ALL][column] + unknown;
    ends(states, at, column, polymers > 0);
    if (!constant || papers > 1 || polymers > 1) {
      return;
    }
    take(paper, states, at, column, 0, papers);
    take(polymer, states, at, column, 1, polymers);
    fixed = Math.max(0, all - paper.water - polymer.water);
    narrow(polymer.stands() && polymer.outside < paper.outside);
    waterLow = Math.max(waterLow, fixed + paper.low + polymer.low);
    waterHigh = Math.min(waterHigh, fixed + paper.high + polymer.high);
    if (oxygen) {
      double own = states[at + HumidityState.OXYGEN_FIXED][column];
      oxygenLow = Math.max(oxygenLow, own + paper.oxygenLow() + polymer.oxygenLow());
      oxygenHigh = Math.min(oxygenHigh, own + paper.oxygenHigh() + polymer.oxygenHigh());
    }
  }

  /** What is known whatever the humidity within, as long as water through every layer is. */
  private void ends(double[][] states, int at, int column, boolean humid) {
    waterLow = states[at + HumidityState.WATER_LOW][column];
    waterHigh = states[at + HumidityState.WATER_HIGH][column];
    if (oxygen) {
      double unknown = humid ? 0 * waterLow : 0;
      oxygenLow = states[at + HumidityState.OXYGEN_LOW][column] + unknown;
      oxygenHigh = states[at + HumidityState.OXYGEN_HIGH][column] + unknown;
    }
  }

  private void take(WetLayer layer, double[][] states, int at, int column, int slot, double count) {
    if (count == 0) {
      layer.absent();
      return;
    }
    layer.water = states[at + HumidityState.WATER + slot][column];
    layer.oxygen = oxygen ? states[at + HumidityState.OXYGEN + slot][column] : 0;
    layer.outside = states[at + HumidityState.affine(slot) + HumidityState.OUTSIDE][column];
    layer.present(
        kinds, states[at + HumidityState.KINDS + slot][column], span.driest(), span.dampest());
  }

  private void narrow(boolean polymerOutside) {
    WetLayer outer = polymerOutside ? polymer : paper;
    WetLayer inner = polymerOutside ? paper : polymer;
    double before = outer.stands() ? outer.outside : 0;
    double between = inner.stands() ? Math.max(0, inner.outside - before - outer.water) : 0;
    double after = Math.max(0, fixed - before - between);
    boolean oxygenOpen = oxygen && polymer.stands();
    for (int round = 0; round < ROUNDS && (oxygenOpen || wide()); round++) {
      if (outer.stands()) {
        narrow(outer, before, before, between + inner.low + after, between + inner.high + after);
      }
      if (inner.stands()) {
        narrow(inner, before + between + outer.low, before + between + outer.high, after, after);
      }
    }
  }

  private boolean wide() {
    double width = paper.high - paper.low + polymer.high - polymer.low;
    return width > NARROW * (fixed + paper.low + polymer.low);
  }

  /** Narrows a layer between ends of the resistances before and after it. */
  private void narrow(
      WetLayer layer, double beforeLow, double beforeHigh, double afterLow, double afterHigh) {
    double outerLeast = beforeLow / (beforeLow + layer.high + afterHigh);
    double outerMost = beforeHigh / (beforeHigh + layer.low + afterLow);
    double innerLeast = (beforeLow + layer.low) / (beforeLow + layer.low + afterHigh);
    double innerMost = (beforeHigh + layer.high) / (beforeHigh + layer.high + afterLow);
    layer.outerLow = low(outerLeast, outerMost);
    layer.outerHigh = high(outerLeast, outerMost);
    layer.innerLow = low(innerLeast, innerMost);
    layer.innerHigh = high(innerLeast, innerMost);
    layer.narrow();
  }

  /** Lowest humidity at a face before which lies a share of the resistance between two. */
  private double low(double least, double most) {
    double step = driest - outside;
    return outside + Math.min(step * least, step * most);
  }

  private double high(double least, double most) {
    double step = dampest - outside;
    return outside + Math.max(step * least, step * most);
  }
}
