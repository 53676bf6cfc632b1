package plyworth.workbench.engine.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.IntStream;
import plyworth.workbench.engine.table.Chunk;
import plyworth.workbench.engine.table.StateLayout;
import plyworth.workbench.engine.table.Tabulation;

/**
 * What the candidates of a study fall into, region by region: first by the kinds of their layers,
 * from the outside in, then by their amounts, the range that matters most halved each time.
 *
 * <p>Between which figures a region lies, and what its candidates are, depends neither on weights
 * nor on value functions nor on limits, so regions are kept from search to search as long as there
 * is room, and a search after a step of a slider asks plugins for little.
 */
final class Regions {

  private static final long MOST_BYTES = 192L << 20;

  private static final long OVERHEAD = 1000;

  private static final Kinds.Edge[] NO_EDGES = {};
  private static final Range[] NO_RANGES = {};

  private final Kinds kinds;
  private final Hulls hulls;
  private final Bundles bundles;
  private final StateLayout layout;
  private final AtomicReference<Region> whole = new AtomicReference<>();
  private final AtomicLong kept = new AtomicLong();

  Regions(Tabulation tabulation, int most) {
    layout = tabulation.layout();
    kinds = Kinds.of(tabulation.graph());
    hulls = new Hulls(kinds, tabulation.contributions(), layout);
    bundles = Bundles.of(kinds, hulls, layout, most);
    forget();
  }

  private void forget() {
    CriterionSpans nothing = new CriterionSpans(new double[0][], new double[0][]);
    whole.set(new Region(kinds, NO_EDGES, NO_RANGES, false, nothing, null));
    kept.set(0);
  }

  /** Begins a search: makes room where the last ones left none. */
  Region begin() {
    if (kept.get() > MOST_BYTES / 4 * 3) {
      forget();
    }
    return whole.get();
  }

  Kinds kinds() {
    return kinds;
  }

  /**
   * What a region of more than one candidate falls into.
   *
   * @param bounds bounds it where that is not known
   * @param goal says which range matters; no part is left out for its sake
   */
  Region[] parts(Region region, PluginBounds bounds, Goal goal) {
    Region[] parts = region.parts();
    if (parts == null) {
      parts = region.ended ? halves(region, bounds, goal) : longer(region, bounds);
      if (fits(Arrays.stream(parts).mapToLong(Region::bytes).sum())) {
        region.keep(parts);
      }
    }
    return parts;
  }

  /** Keeps the scores of a region as long as there is room. */
  void keep(Region region, Chunk scored) {
    long columns = IntStream.range(0, scored.criteria()).filter(scored::has).count();
    if (fits(OVERHEAD + 2L * Float.BYTES * columns * scored.size())) {
      region.keep(scored);
    }
  }

  private boolean fits(long bytes) {
    boolean fits = kept.get() + bytes <= MOST_BYTES;
    kept.addAndGet(fits ? bytes : 0);
    return fits;
  }

  private Region[] longer(Region region, PluginBounds bounds) {
    List<Region> longer = new ArrayList<>();
    StateSpan own = state(region.edges, region.ranges);
    if (kinds.ends(region.kind())) {
      longer.add(
          new Region(kinds, region.edges, region.ranges, true, bounds.of(List.of(own)), null));
    }
    int length = region.edges.length;
    for (Kinds.Edge edge : kinds.edges(region.kind())) {
      Kinds.Edge[] edges = Arrays.copyOf(region.edges, length + 1);
      Range[] ranges = Arrays.copyOf(region.ranges, length + 1);
      edges[length] = edge;
      ranges[length] = kinds.all(edge.to());
      StateSpan next =
          own.followedBy(hulls.of(edge, region.range(length - 1), ranges[length]), layout);
      List<StateSpan> completed = new ArrayList<>();
      for (StateSpan inner : bundles.of(edge.to())) {
        completed.add(next.followedBy(inner, layout));
      }
      longer.add(new Region(kinds, edges, ranges, false, bounds.of(completed), null));
    }
    return longer.toArray(Region[]::new);
  }

  private StateSpan state(Kinds.Edge[] edges, Range[] ranges) {
    StateSpan state = StateSpan.point(layout.neutral());
    for (int i = 0; i < edges.length; i++) {
      Range outer = i == 0 ? kinds.all(0) : ranges[i - 1];
      state = state.followedBy(hulls.of(edges[i], outer, ranges[i]), layout);
    }
    return state;
  }

  private Region[] halves(Region region, PluginBounds bounds, Goal goal) {
    if (region.sway == null) {
      return firstHalves(region, bounds, goal);
    }
    int layer = widest(region, region.sway);
    double[] sway = region.sway.clone();
    sway[layer] /= 2;
    return halves(region, layer, sway, bounds);
  }

  /** Tries every range, to know from then on which matters how much. */
  private Region[] firstHalves(Region region, PluginBounds bounds, Goal goal) {
    double[] sway = new double[region.ranges.length];
    Region[][] tried = new Region[sway.length][];
    double before = region.spans.atMost(goal);
    for (int layer = 0; layer < sway.length; layer++) {
      if (region.ranges[layer].size() > 1) {
        tried[layer] = halves(region, layer, sway, bounds);
        for (Region half : tried[layer]) {
          sway[layer] += Math.min(1, before - half.spans.atMost(goal));
        }
      }
    }
    int layer = widest(region, sway);
    sway[layer] /= 2;
    return tried[layer];
  }

  private Region[] halves(Region region, int layer, double[] sway, PluginBounds bounds) {
    Range range = region.ranges[layer];
    return new Region[] {
      within(region, layer, range.firstHalf(), sway, bounds),
      within(region, layer, range.secondHalf(), sway, bounds)
    };
  }

  private Region within(Region region, int layer, Range range, double[] sway, PluginBounds bounds) {
    Range[] ranges = region.ranges.clone();
    ranges[layer] = range;
    CriterionSpans spans = bounds.of(List.of(state(region.edges, ranges)));
    return new Region(kinds, region.edges, ranges, true, spans, sway);
  }

  private static int widest(Region region, double[] sway) {
    int widest = -1;
    for (int layer = 0; layer < sway.length; layer++) {
      if (region.ranges[layer].size() > 1 && (widest < 0 || sway[layer] > sway[widest])) {
        widest = layer;
      }
    }
    return widest;
  }
}
