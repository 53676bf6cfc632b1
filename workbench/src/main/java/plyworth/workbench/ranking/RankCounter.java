package plyworth.workbench.ranking;

import java.util.OptionalLong;
import java.util.stream.IntStream;
import plyworth.workbench.engine.table.CandidateTable;
import plyworth.workbench.engine.table.Chunk;

/** Counts the candidates in each group, and those that stand before another. */
final class RankCounter {

  private final CandidateTable table;
  private final Groups groups;
  private final ValueBounds bounds;
  private final ValueModel model;

  RankCounter(CandidateTable table, Groups groups, ValueBounds bounds, ValueModel model) {
    this.table = table;
    this.groups = groups;
    this.bounds = bounds;
    this.model = model;
  }

  GroupCounts counts() {
    return groups.counts();
  }

  boolean complete() {
    return table.complete();
  }

  OptionalLong rankOf(long path) {
    if (path < 0 || path >= table.rows()) {
      return OptionalLong.empty();
    }
    int chunk = (int) (path / Chunk.ROWS);
    int row = CandidateTable.rowOf(path);
    if (groups.of(chunk)[row] != Group.RANKED.ordinal()) {
      return OptionalLong.empty();
    }
    int from = row - row % Chunk.ZONE;
    int to = Math.min(table.chunk(chunk).size(), from + Chunk.ZONE);
    RowValues values = new RowValues(model, bounds.curves(), bounds.fresh());
    values.compute(table.chunk(chunk), path - row % Chunk.ZONE, from, to);
    return OptionalLong.of(1 + before(values.worst[row - from], path));
  }

  /** Number of ranked candidates of higher value, or of equal value and a lower path number. */
  long before(double value, long path) {
    return IntStream.range(0, table.chunks())
        .parallel()
        .mapToLong(chunk -> inChunk(chunk, value, path))
        .sum();
  }

  private long inChunk(int index, double value, long path) {
    if (Weights.sums(model, bounds.whole(index))[0] < value) {
      return 0;
    }
    double[] highest = Weights.sums(model, bounds.highest(index));
    double[] lowest = Weights.sums(model, bounds.lowest(index));
    int[] ranked = groups.rankedPerZone(index);
    RowValues values = new RowValues(model, bounds.curves(), bounds.fresh());
    long count = 0;
    for (int zone = 0; zone < highest.length; zone++) {
      if (lowest[zone] > value) {
        count += ranked[zone];
      } else if (ranked[zone] > 0 && highest[zone] >= value) {
        count += inZone(index, zone, values, value, path);
      }
    }
    return count;
  }

  private int inZone(int index, int zone, RowValues values, double value, long path) {
    Chunk chunk = table.chunk(index);
    int from = zone * Chunk.ZONE;
    int to = Math.min(chunk.size(), from + Chunk.ZONE);
    values.compute(chunk, (long) index * Chunk.ROWS + from, from, to);
    byte[] group = groups.of(index);
    int count = 0;
    for (int row = from; row < to; row++) {
      double other = values.worst[row - from];
      boolean before = other > value || other == value && (long) index * Chunk.ROWS + row < path;
      count += before && group[row] == Group.RANKED.ordinal() ? 1 : 0;
    }
    return count;
  }
}
