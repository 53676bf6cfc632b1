package plyworth.workbench.engine.search;

import java.util.concurrent.atomic.AtomicReference;
import plyworth.workbench.engine.table.Chunk;

/**
 * Candidates that have their outer layers in common but for the amounts, each of which lies within
 * a range; and, once it is known, what they fall into.
 */
final class Region {

  private static final int OVERHEAD = 300;

  /** From the outside in, the kinds as edges between them. */
  final Kinds.Edge[] edges;

  /** The members of each kind. */
  final Range[] ranges;

  /** Whether nothing follows. */
  final boolean ended;

  /** Lowest path number of the candidates. */
  final long path;

  /** Number of candidates. */
  final double count;

  /** Between which figures they lie. */
  final CriterionSpans spans;

  /** By layer, how much a split of its range moved bounds apart; null when nothing is known. */
  final double[] sway;

  private final AtomicReference<Region[]> parts = new AtomicReference<>();
  private final AtomicReference<Chunk> scores = new AtomicReference<>();

  Region(
      Kinds kinds,
      Kinds.Edge[] edges,
      Range[] ranges,
      boolean ended,
      CriterionSpans spans,
      double[] sway) {
    this.edges = edges;
    this.ranges = ranges;
    this.ended = ended;
    this.spans = spans;
    this.sway = sway;
    long lowest = 0;
    double number = ended ? 1 : kinds.completions(kind());
    for (int i = 0; i < edges.length; i++) {
      lowest += least(edges[i].offset(), ranges[i]);
      number *= ranges[i].size();
    }
    path = lowest;
    count = number;
  }

  private static long least(long[] offsets, Range range) {
    long least = Long.MAX_VALUE;
    for (int i = range.from(); i < range.to(); i++) {
      least = Math.min(least, offsets[i]);
    }
    return least;
  }

  /** The kind of the innermost layer so far; the outside when there is none. */
  int kind() {
    return edges.length == 0 ? 0 : edges[edges.length - 1].to();
  }

  /** The members of a layer; those of the outside before the first. */
  Range range(int layer) {
    return layer < 0 ? OUTSIDE : ranges[layer];
  }

  private static final Range OUTSIDE = new Range(0, 1);

  /** What it falls into; null as long as that is not known. */
  Region[] parts() {
    return parts.get();
  }

  void keep(Region[] found) {
    parts.set(found);
  }

  /** Its candidates in the order of {@link #paths}; null as long as they are not scored. */
  Chunk scores() {
    return scores.get();
  }

  void keep(Chunk scored) {
    scores.set(scored);
  }

  /**
   * Path numbers of the candidates, or of the first of those that begin alike when more follows.
   */
  long[] paths() {
    long[] paths = {0};
    for (int layer = 0; layer < edges.length; layer++) {
      long[] longer = new long[paths.length * ranges[layer].size()];
      int at = 0;
      for (long path : paths) {
        for (int i = ranges[layer].from(); i < ranges[layer].to(); i++) {
          longer[at++] = path + edges[layer].offset()[i];
        }
      }
      paths = longer;
    }
    return paths;
  }

  /** Memory that it takes, roughly. */
  long bytes() {
    return OVERHEAD + 64L * edges.length + spans.bytes();
  }
}
