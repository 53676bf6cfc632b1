package plyworth.workbench.engine.graph;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import plyworth.shared.route.ProcessLibrary;
import plyworth.shared.structure.Layer;

/**
 * The fewest changes of single layers that turn a structure into another (edit distance, Wagner and
 * Fischer, Journal of the ACM 21(1), 1974; from memory). A layer added, taken out, adjusted, or
 * exchanged for another of the same role is one edit; one of another role in its place is two.
 * Among equally many, the fewest edits that are more than an adjustment, and then the smallest
 * changes of gauge.
 *
 * <p>A cost holds all three, so that costs add up and compare as they should: edits from bit 48,
 * those that are more than an adjustment from bit 32, and below, thousandths of |ln| of the ratios
 * of gauges.
 */
final class EditDistance {

  private static final long EDIT = 1L << 48;
  private static final long MORE_THAN_ADJUSTED = 1L << 32;
  private static final long LARGEST_CHANGE = 0xffff;

  /** The cost of a layer added, taken out or exchanged. */
  static final long ANOTHER = EDIT + MORE_THAN_ADJUSTED;

  private final List<Layer> from;
  private final ProcessLibrary processes;

  /** Distances from a list of layers, whose processes are all known. */
  EditDistance(List<Layer> from, ProcessLibrary processes) {
    this.from = from;
    this.processes = processes;
  }

  /** The cost of another layer in place of one of the list. */
  long cost(int at, Layer after) {
    Layer before = from.get(at);
    if (before.equals(after)) {
      return 0;
    }
    boolean sameMake =
        before.material().equals(after.material()) && before.process().equals(after.process());
    if (sameMake) {
      return EDIT + change(before, after);
    }
    return processes.role(before) == processes.role(after) ? ANOTHER : 2 * ANOTHER;
  }

  private static long change(Layer before, Layer after) {
    double ratio = Math.abs(Math.log(after.amount() / before.amount()));
    return before.unit() == after.unit()
        ? Math.min(LARGEST_CHANGE, Math.round(1000 * ratio))
        : LARGEST_CHANGE;
  }

  /** The cost of nothing from each number of layers, 0 to all: they are taken out. */
  long[] toNothing() {
    long[] row = new long[from.size() + 1];
    Arrays.setAll(row, i -> i * ANOTHER);
    return row;
  }

  /**
   * The cost of a list from each number of layers.
   *
   * @param row the same for the list without its last layer
   * @param layer that layer
   */
  long[] to(long[] row, Layer layer) {
    long[] next = new long[row.length];
    next[0] = row[0] + ANOTHER;
    for (int i = 1; i < row.length; i++) {
      long oneMore = Math.min(row[i], next[i - 1]) + ANOTHER;
      next[i] = Math.min(oneMore, row[i - 1] + cost(i - 1, layer));
    }
    return next;
  }

  /** The edits that turn the list into another, outside first. */
  List<LayerEdit> edits(List<Layer> to) {
    List<long[]> rows = new ArrayList<>(List.of(toNothing()));
    to.forEach(layer -> rows.add(to(rows.get(rows.size() - 1), layer)));
    List<LayerEdit> edits = new ArrayList<>();
    int i = from.size();
    int j = to.size();
    while (i > 0 || j > 0) {
      long here = rows.get(j)[i];
      if (j > 0 && here == rows.get(j - 1)[i] + ANOTHER) {
        Optional<Layer> added = Optional.of(to.get(--j));
        edits.add(new LayerEdit(LayerEdit.Kind.ADD, i, Optional.empty(), added));
      } else if (i > 0 && here == rows.get(j)[i - 1] + ANOTHER) {
        Optional<Layer> gone = Optional.of(from.get(--i));
        edits.add(new LayerEdit(LayerEdit.Kind.TAKE_OUT, i, gone, Optional.empty()));
      } else {
        replaced(--i, to.get(--j)).ifPresent(edits::add);
      }
    }
    Collections.reverse(edits);
    return List.copyOf(edits);
  }

  private Optional<LayerEdit> replaced(int at, Layer after) {
    long cost = cost(at, after);
    LayerEdit.Kind kind = cost < ANOTHER ? LayerEdit.Kind.ADJUST : LayerEdit.Kind.EXCHANGE;
    return cost == 0
        ? Optional.empty()
        : Optional.of(new LayerEdit(kind, at, Optional.of(from.get(at)), Optional.of(after)));
  }
}
