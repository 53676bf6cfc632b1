package plyworth.plugins.barrier.layerwise;

import java.util.List;
import java.util.stream.Stream;
import plyworth.plugins.barrier.climate.HumiditySpan;
import plyworth.plugins.barrier.laminate.HumidityCurve;
import plyworth.plugins.barrier.laminate.Ply;
import plyworth.plugins.barrier.pack.BarrierModel;
import plyworth.plugins.barrier.permeation.Permeant;
import plyworth.shared.scoring.Join;
import plyworth.shared.scoring.StatePart;
import plyworth.shared.structure.Layer;

/**
 * What the layerwise state keeps of water and oxygen, so that the humidity within can be enclosed.
 *
 * <p>Up to two layers that humidity moves are followed one by one: one that moves oxygen (polymers)
 * and one that moves water alone (papers). For each the resistance that lies outside it is carried:
 * the affine join composes (1, s, R, X) to X = Σ R(outside)·s, where s counts the layer. Of more
 * than one in a slot only the ends of its resistance are known. What is unknown stands in the ends
 * alone: the affine join would carry it to where it does not belong.
 */
final class HumidityState {

  /** Slots: water alone, and oxygen too. */
  static final int SLOTS = 2;

  /** Components of the affine join of a slot. */
  static final int COUNT = 1;

  static final int ALL = 2;
  static final int OUTSIDE = 3;
  private static final int AFFINE = 4;

  /** Where parts begin: the kinds of the slots, their reference resistances, the ends of all. */
  static final int KINDS = SLOTS * AFFINE;

  static final int WATER = KINDS + SLOTS;
  static final int WATER_LOW = WATER + SLOTS;
  static final int WATER_HIGH = WATER_LOW + 1;
  static final int OXYGEN_FIXED = WATER_HIGH + 1;
  static final int OXYGEN = OXYGEN_FIXED + 1;
  static final int OXYGEN_LOW = OXYGEN + SLOTS;
  static final int OXYGEN_HIGH = OXYGEN_LOW + 1;

  /** Counts as more than one, so that the slot is left to its ends. */
  private static final double UNRULY = 2;

  private final BarrierModel model;
  private final HygroscopicKinds kinds;
  private final boolean oxygen;
  private final HumiditySpan span;

  /**
   * The state of a brief.
   *
   * @param oxygen whether oxygen is followed
   */
  HumidityState(BarrierModel model, HygroscopicKinds kinds, boolean oxygen) {
    this.model = model;
    this.kinds = kinds;
    this.oxygen = oxygen;
    this.span = model.climates().span();
  }

  /** The slot's affine join. */
  static int affine(int slot) {
    return AFFINE * slot;
  }

  /** The parts, as many components as {@link #size}. */
  List<StatePart> parts() {
    List<StatePart> water =
        List.of(
            new StatePart("water outside the paper", Join.AFFINE),
            new StatePart("water outside the polymer", Join.AFFINE),
            new StatePart("kind of paper", Join.INNERMOST),
            new StatePart("kind of polymer", Join.INNERMOST),
            new StatePart("resistance of the paper to water", Join.SUM),
            new StatePart("resistance of the polymer to water", Join.SUM),
            new StatePart("least resistance to water", Join.SUM),
            new StatePart("largest resistance to water", Join.SUM));
    List<StatePart> more =
        List.of(
            new StatePart("resistance to oxygen that humidity leaves alone", Join.SUM),
            new StatePart("resistance of the paper to oxygen", Join.SUM),
            new StatePart("resistance of the polymer to oxygen", Join.SUM),
            new StatePart("least resistance to oxygen", Join.SUM),
            new StatePart("largest resistance to oxygen", Join.SUM));
    return oxygen ? Stream.concat(water.stream(), more.stream()).toList() : water;
  }

  /** Number of components. */
  int size() {
    return oxygen ? OXYGEN_HIGH + 1 : WATER_HIGH + 1;
  }

  /** Writes what a layer contributes from {@code at} on. */
  void contribute(Layer layer, Layer outer, double[] state, int at) {
    double water = Math.min(Ply.TIGHT, 1 / model.layers().inPack(layer, outer, Permeant.WATER));
    HumidityCurve waterCurve = model.layers().curve(layer, Permeant.WATER);
    HumidityCurve oxygenCurve = model.layers().curve(layer, Permeant.OXYGEN);
    Integer number = kinds.numbers().get(model.context().material(layer).id());
    int slot = oxygenCurve.one() ? 0 : 1;
    for (int s = 0; s < SLOTS; s++) {
      state[at + affine(s) + ALL] = Double.isNaN(water) ? 0 : water;
    }
    if (number != null) {
      boolean rising = kinds.kinds().get(number).rising();
      state[at + affine(slot) + COUNT] = rising ? 1 : UNRULY;
      state[at + KINDS + slot] = number;
      state[at + WATER + slot] = Double.isNaN(water) ? 0 : water;
    }
    state[at + WATER_LOW] = water / span.highest(waterCurve);
    state[at + WATER_HIGH] = water / span.lowest(waterCurve);
    if (oxygen) {
      double own = 1 / model.layers().inPack(layer, outer, Permeant.OXYGEN);
      state[at + (number == null ? OXYGEN_FIXED : OXYGEN + slot)] = own;
      state[at + OXYGEN_LOW] = own / span.highest(oxygenCurve);
      state[at + OXYGEN_HIGH] = own / span.lowest(oxygenCurve);
    }
  }
}
