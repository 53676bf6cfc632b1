package plyworth.workbench.ranking;

import java.util.Arrays;

/** Sums of what the parts of some runs are worth at most, under the weights of one model. */
final class Level {

  private final Slots slots;
  private final int generation;
  private final double[] weights;
  private final SlotBounds[] bounds;
  private final float[][] values;

  /**
   * A level.
   *
   * @param slots of the runs
   * @param generation of the criteria that count
   * @param weights of these criteria
   * @param bounds of their values
   */
  Level(Slots slots, int generation, double[] weights, SlotBounds[] bounds) {
    this.slots = slots;
    this.generation = generation;
    this.weights = weights;
    this.bounds = bounds;
    values = Arrays.stream(bounds).map(SlotBounds::all).toArray(float[][]::new);
  }

  /** Eight sums for as many parts of a run, from one part on. */
  void sum(int chunk, int run, int part, double[] sums) {
    int slot = slots.of(chunk, run);
    if (!slots.isFilled(slot, generation)) {
      fill(chunk, run, slot);
    }
    Weights.sumEight(weights, values, bounds.length == 0 ? 0 : bounds[0].at(slot) + part, sums);
  }

  private void fill(int chunk, int run, int slot) {
    for (int i = 0; i < bounds.length; i++) {
      bounds[i].fill(chunk, run, slot, slots.round());
      values[i] = bounds[i].all();
    }
    slots.filled(slot, generation);
  }
}
