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

  /** Number of ranked candidates from one path number up to another, which is left out. */
  long rankedBetween(long from, long to) {
    long end = Math.min(to, table.rows());
    long count = 0;
    for (long path = from; path < end; ) {
      int chunk = (int) (path / Chunk.ROWS);
      int row = CandidateTable.rowOf(path);
      int rows = (int) Math.min(end - path, groups.of(chunk).length - row);
      count += groups.rankedBetween(chunk, row, row + rows);
      path += rows;
    }
    return count;
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
    return OptionalLong.of(1 + before(bounds.worst(model, path), path));
  }

  /** Number of ranked candidates of higher value, or of equal value and a lower path number. */
  long before(double value, long path) {
    double[] whole = bounds.whole(model);
    return IntStream.range(0, table.chunks())
        .filter(chunk -> whole[chunk] >= value)
        .parallel()
        .mapToLong(chunk -> inChunk(chunk, value, path))
        .sum();
  }

  private long inChunk(int index, double value, long path) {
    double[] highest = bounds.highest(model, index);
    double[] lowest = bounds.lowest(model, index);
    int[] ranked = groups.rankedPerZone(index);
    RowValues values = new RowValues(model);
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
    values.compute(c -> bounds.of(c).rows(index, zone));
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
