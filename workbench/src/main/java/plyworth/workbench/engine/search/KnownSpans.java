package plyworth.workbench.engine.search;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/**
 * What is known of prefixes that were bounded before. It depends neither on weights nor on value
 * functions nor on limits, so that a search after a step of a slider asks plugins for little.
 */
final class KnownSpans {

  private static final long MOST_BYTES = 128L << 20;

  /** Prefixes of equal lowest path number differ in where they end. */
  private record Place(int node, long path) {}

  private final Map<Place, CriterionSpans> byPlace = new ConcurrentHashMap<>();
  private final long most;

  /**
   * Nothing known yet.
   *
   * @param bundles most bundles of a prefix
   * @param criteria number of criteria
   */
  KnownSpans(int bundles, int criteria) {
    most = MOST_BYTES / (Prefix.BYTES + 2L * Double.BYTES * bundles * criteria);
  }

  /** What is known of a prefix, found out where nothing is; kept as long as there is room. */
  CriterionSpans of(int node, long path, Supplier<CriterionSpans> unknown) {
    Place place = new Place(node, path);
    CriterionSpans spans = byPlace.get(place);
    if (spans == null) {
      spans = unknown.get();
      if (byPlace.size() < most) {
        byPlace.put(place, spans);
      }
    }
    return spans;
  }
}
