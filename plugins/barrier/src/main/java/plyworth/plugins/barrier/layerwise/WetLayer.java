package plyworth.plugins.barrier.layerwise;

import plyworth.plugins.barrier.climate.BarrierClimates;
import plyworth.plugins.barrier.climate.HumiditySpan;
import plyworth.plugins.barrier.laminate.MeanTable;

/**
 * One layer that humidity moves, as far as it is known: between which ends its resistance to water
 * lies, and the humidity at its faces. Reused from laminate to laminate of one block.
 */
final class WetLayer {

  private final HygroscopicKinds kinds;
  private final HumiditySpan span;
  private final double climate;
  private final double toDriest;
  private final double toDampest;
  private final double[] counts;
  private final double[] numbers;
  private final double[] waters;
  private final double[] oxygens;
  private final double[] outsides;
  private boolean stands;
  private Hygroscopic.Tables kind;

  /** Resistance to water where its curve is 1. */
  double water;

  /** Resistance to oxygen where its curve is 1. */
  double oxygen;

  /** Resistance to water that lies outside it, other such layers at their reference. */
  double outside;

  /** Ends of the resistance to water. */
  double low;

  double high;

  /** Ends of the humidity at the outer and inner face. */
  private double outerLow;

  private double outerHigh;
  private double innerLow;
  private double innerHigh;

  /**
   * The layers of one slot in a block.
   *
   * @param at first component of the {@link HumidityState} in the joined states
   */
  WetLayer(
      HygroscopicKinds kinds,
      BarrierClimates climates,
      double[][] states,
      int at,
      int slot,
      boolean oxygen) {
    this.kinds = kinds;
    this.span = climates.span();
    this.climate = climates.climate().outside();
    this.toDriest = climates.climate().driest() - climate;
    this.toDampest = climates.climate().inside() - climate;
    this.counts = states[at + HumidityState.affine(slot) + HumidityState.COUNT];
    this.numbers = states[at + HumidityState.KINDS + slot];
    this.waters = states[at + HumidityState.WATER + slot];
    this.oxygens = oxygen ? states[at + HumidityState.OXYGEN + slot] : waters;
    this.outsides = states[at + HumidityState.affine(slot) + HumidityState.OUTSIDE];
  }

  /** How many layers the slot holds in a laminate. */
  double many(int row) {
    return counts[row];
  }

  /**
   * Takes the layer of a laminate, anywhere between the driest and dampest; or that none stands.
   */
  void take(int row) {
    stands = counts[row] != 0;
    water = stands ? waters[row] : 0;
    outside = stands ? outsides[row] : 0;
    oxygen = stands ? oxygens[row] : 0;
    low = 0;
    high = 0;
    if (stands) {
      kind = kinds.kinds().get((int) numbers[row]).tables();
      outerLow = span.driest();
      innerLow = outerLow;
      outerHigh = span.dampest();
      innerHigh = outerHigh;
      low = water * kind.loosest();
      high = water * kind.tightest();
    }
  }

  /** Whether a layer stands here. */
  boolean stands() {
    return stands;
  }

  /**
   * Narrows the humidity between ends of the resistances before and after the layer, and its
   * resistance with it: damper is looser.
   */
  void narrow(double beforeLow, double beforeHigh, double afterLow, double afterHigh) {
    double outerLeast = beforeLow / (beforeLow + high + afterHigh);
    double outerMost = beforeHigh / (beforeHigh + low + afterLow);
    double innerLeast = (beforeLow + low) / (beforeLow + low + afterHigh);
    double innerMost = (beforeHigh + high) / (beforeHigh + high + afterLow);
    outerLow = climate + Math.min(toDriest * outerLeast, toDriest * outerMost);
    outerHigh = climate + Math.max(toDampest * outerLeast, toDampest * outerMost);
    innerLow = climate + Math.min(toDriest * innerLeast, toDriest * innerMost);
    innerHigh = climate + Math.max(toDampest * innerLeast, toDampest * innerMost);
    MeanTable conducts = kind.conducts();
    double slack = conducts.error();
    low = conducts.overMean(water * (1 - slack), outerHigh, innerHigh);
    high = conducts.overMean(water * (1 + slack), outerLow, innerLow);
  }

  /** Least resistance to oxygen of a layer that stands. */
  double oxygenLow() {
    return oxygen * (1 - slack()) * mean(outerHigh, innerHigh);
  }

  /** Largest resistance to oxygen. */
  double oxygenHigh() {
    return oxygen * (1 + slack()) * mean(outerLow, innerLow);
  }

  private double slack() {
    return 2 * (kind.conducts().error() + kind.resists().error());
  }

  private double mean(double one, double other) {
    return kind.resists().mean(one, other) / kind.conducts().mean(one, other);
  }
}
