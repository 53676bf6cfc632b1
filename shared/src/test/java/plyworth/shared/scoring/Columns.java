package plyworth.shared.scoring;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import plyworth.shared.structure.Layer;

/** Runs the layerwise form of one trial, by hand and without the workbench. */
final class Columns {

  /** What a plugin must overwrite. */
  private static final double LEFT_OVER = 12_345.678;

  private final Trial trial;
  private final Layerwise form;
  private final List<StatePart> parts;

  Columns(Trial trial) {
    this(trial, trial.scorer().layerwise().orElseThrow());
  }

  private Columns(Trial trial, Layerwise form) {
    this.trial = trial;
    this.form = form;
    this.parts = form.state();
  }

  /** The same for one criterion alone. */
  Columns only(String criterion) {
    return new Columns(trial, form.only(Set.of(criterion)));
  }

  /** The component that a criterion is said to be. */
  OptionalInt sumOf(String criterion) {
    return form.sumOf(criterion);
  }

  /** How a component is joined. */
  Join joinOf(int component) {
    int at = 0;
    for (StatePart part : parts) {
      at += part.join().size();
      if (component >= 0 && component < at) {
        return part.join();
      }
    }
    throw new AssertionError("the state has no component " + component);
  }

  List<StatePart> parts() {
    return parts;
  }

  double[] neutral() {
    double[] state = new double[StatePart.size(parts)];
    StatePart.neutral(parts, state);
    return state;
  }

  double[] contribution(Layer layer, Layer outer) {
    double[] state = neutral();
    form.contribute(layer, outer, state);
    return state;
  }

  double[] join(double[] outer, double[] inner) {
    double[] joined = neutral();
    StatePart.join(parts, outer, inner, joined);
    return joined;
  }

  /** Contributions of a row of layers that follow {@code outer}, joined from the outside in. */
  double[] fold(List<Layer> layers, Layer outer) {
    double[] state = neutral();
    Layer last = outer;
    for (Layer layer : layers) {
      state = join(state, contribution(layer, last));
      last = layer;
    }
    return state;
  }

  /** Finishes states as one block; its columns held other figures before. */
  Block finish(List<double[]> states) {
    return finish(states, Collections.nCopies(states.size(), trial.neededColumn()));
  }

  /** The same, every state with needed figures of its own. */
  Block finish(List<double[]> states, List<double[]> needed) {
    Block block =
        new Block(
            StatePart.size(parts),
            trial.plugin().needs().size(),
            trial.plugin().criteria().size(),
            trial.plugin().provides().size(),
            states.size() + 2);
    block.size = states.size();
    soil(block.low);
    soil(block.provided);
    Arrays.fill(block.blocked, -1);
    for (int i = 0; i < states.size(); i++) {
      put(block.states, i, states.get(i));
      put(block.needed, i, needed.get(i));
    }
    form.finish(block);
    return block;
  }

  /** Bounds of one interval state and of intervals of the needed figures. */
  BoundsBlock bound(double[] low, double[] high, double[] neededLow, double[] neededHigh) {
    BoundsBlock block =
        new BoundsBlock(
            StatePart.size(parts),
            trial.plugin().needs().size(),
            trial.plugin().criteria().size(),
            trial.plugin().provides().size(),
            3);
    block.size = 1;
    List.of(block.low, block.high, block.providedLow, block.providedHigh).forEach(Columns::soil);
    Arrays.fill(block.mustBlock, -1);
    put(block.stateLow, 0, low);
    put(block.stateHigh, 0, high);
    put(block.neededLow, 0, neededLow);
    put(block.neededHigh, 0, neededHigh);
    form.bound(block);
    return block;
  }

  private static void put(double[][] columns, int row, double[] values) {
    for (int k = 0; k < values.length; k++) {
      columns[k][row] = values[k];
    }
  }

  private static void soil(double[][] columns) {
    for (double[] column : columns) {
      Arrays.fill(column, LEFT_OVER);
    }
  }
}
