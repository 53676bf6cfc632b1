package plyworth.workbench.engine.search;

import java.util.ArrayList;
import java.util.List;
import plyworth.workbench.engine.table.StateLayout;

/**
 * Between which states the completions of each kind of node lie, in a few bundles of completions
 * that follow each other and resemble each other. Bundles keep apart what one interval would mix:
 * the barrier of foil and the price of plain film.
 *
 * <p>By dynamic programming from the inside out: the bundles of a kind are those of its successors
 * behind the layer in between.
 */
final class Bundles {

  private static final long MOST_BYTES = 128L << 20;

  private final StateSpan[][] byKind;

  private Bundles(StateSpan[][] byKind) {
    this.byKind = byKind;
  }

  /**
   * Bundles of every kind.
   *
   * @param most bundles per kind; fewer in graphs so large that they would take too much memory
   */
  static Bundles of(Kinds kinds, Hulls hulls, StateLayout layout, int most) {
    long span = 2L * Double.BYTES * Math.max(1, layout.size());
    int fitting = (int) Math.max(1, Math.min(most, MOST_BYTES / (span * kinds.count())));
    BundleMerge merge = new BundleMerge(layout, fitting);
    StateSpan[][] byKind = new StateSpan[kinds.count()][];
    for (int kind = kinds.count() - 1; kind >= 0; kind--) {
      List<StateSpan> all = new ArrayList<>();
      if (kinds.ends(kind)) {
        all.add(StateSpan.point(layout.neutral()));
      }
      for (Kinds.Edge edge : kinds.edges(kind)) {
        StateSpan own = hulls.of(edge, kinds.all(kind), kinds.all(edge.to()));
        for (StateSpan inner : byKind[edge.to()]) {
          all.add(own.followedBy(inner, layout));
        }
      }
      byKind[kind] = merge.merged(all).toArray(StateSpan[]::new);
    }
    return new Bundles(byKind);
  }

  /** The bundles of a kind; its own layer is not part of them. */
  StateSpan[] of(int kind) {
    return byKind[kind];
  }
}
