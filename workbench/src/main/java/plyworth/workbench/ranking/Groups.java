package plyworth.workbench.ranking;

import java.util.List;
import java.util.stream.IntStream;
import plyworth.workbench.engine.table.CandidateTable;
import plyworth.workbench.engine.table.Chunk;

/** The group of every candidate of a table under some limits. Weights do not matter to it. */
final class Groups {

  private final byte[][] byChunk;
  private final int[][] zoneRanked;
  private final GroupCounts counts;

  private Groups(byte[][] byChunk, int[][] zoneRanked, GroupCounts counts) {
    this.byChunk = byChunk;
    this.zoneRanked = zoneRanked;
    this.counts = counts;
  }

  static Groups of(CandidateTable table, ValueModel model, ExactScores exact) {
    List<LimitCheck> checks = LimitCheck.of(model);
    byte[][] byChunk = new byte[table.chunks()][];
    int[][] zones = new int[table.chunks()][];
    GroupCounts counts =
        IntStream.range(0, table.chunks())
            .parallel()
            .mapToObj(
                index -> {
                  byChunk[index] = groups(table, index, checks, exact);
                  zones[index] = rankedPerZone(byChunk[index]);
                  return count(byChunk[index]);
                })
            .reduce(GroupCounts.NONE, GroupCounts::plus);
    return new Groups(byChunk, zones, counts);
  }

  private static byte[] groups(
      CandidateTable table, int index, List<LimitCheck> checks, ExactScores exact) {
    return new ChunkGroups(table.chunk(index), checks, exact).from((long) index * Chunk.ROWS);
  }

  private static GroupCounts count(byte[] groups) {
    long[] counts = new long[Group.values().length];
    for (byte group : groups) {
      counts[group]++;
    }
    return GroupCounts.of(counts);
  }

  private static int[] rankedPerZone(byte[] groups) {
    int[] ranked = new int[(groups.length + Chunk.ZONE - 1) / Chunk.ZONE];
    for (int row = 0; row < groups.length; row++) {
      ranked[row / Chunk.ZONE] += groups[row] == Group.RANKED.ordinal() ? 1 : 0;
    }
    return ranked;
  }

  /** The {@link Group#ordinal} of each candidate of a chunk. */
  byte[] of(int chunk) {
    return byChunk[chunk];
  }

  /** Whether a candidate is ranked. */
  boolean isRanked(long path) {
    byte group = byChunk[(int) (path / Chunk.ROWS)][CandidateTable.rowOf(path)];
    return group == Group.RANKED.ordinal();
  }

  /** Number of ranked candidates in each zone of a chunk. */
  int[] rankedPerZone(int chunk) {
    return zoneRanked[chunk];
  }

  /** Number of ranked candidates from one row of a chunk up to another, whole zones at once. */
  int rankedBetween(int chunk, int from, int to) {
    byte[] rows = byChunk[chunk];
    int count = 0;
    for (int row = from; row < to; ) {
      int end = row + Chunk.ZONE;
      if (row % Chunk.ZONE == 0 && end <= to) {
        count += zoneRanked[chunk][row / Chunk.ZONE];
        row = end;
      } else {
        count += rows[row++] == Group.RANKED.ordinal() ? 1 : 0;
      }
    }
    return count;
  }

  /** Number of candidates in each group. */
  GroupCounts counts() {
    return counts;
  }
}
