package plyworth.workbench.ranking;

import java.util.stream.IntStream;
import plyworth.workbench.engine.table.CandidateTable;
import plyworth.workbench.engine.table.Chunk;

/**
 * Visits the candidates of a table that may be good enough, most promising chunks first, skipping
 * chunks and zones whose largest values do not reach.
 */
final class TableScan {

  /** Takes what the scan finds. */
  interface Visitor {
    /** Whether any candidate from {@code path} on with at most this value is still of interest. */
    boolean admits(double value, long path);

    /** A candidate; {@code worst} and {@code best} as in {@link RowValues}. */
    void visit(long path, Group group, double worst, double best);
  }

  private static final Group[] GROUPS = Group.values();

  private final CandidateTable table;
  private final Groups groups;
  private final ValueBounds bounds;
  private final ValueModel model;

  TableScan(CandidateTable table, Groups groups, ValueBounds bounds, ValueModel model) {
    this.table = table;
    this.groups = groups;
    this.bounds = bounds;
    this.model = model;
  }

  /** Visits ranked candidates, and open ones when they are wanted. */
  void run(boolean open, Visitor visitor) {
    RowValues values = new RowValues(model, bounds.curves(), bounds.kept());
    double[] chunkBounds =
        IntStream.range(0, table.chunks())
            .mapToDouble(i -> Weights.sums(model, bounds.whole(i))[0])
            .toArray();
    IntStream.range(0, table.chunks())
        .boxed()
        .sorted((a, b) -> Double.compare(chunkBounds[b], chunkBounds[a]))
        .filter(i -> visitor.admits(chunkBounds[i], (long) i * Chunk.ROWS))
        .forEachOrdered(i -> chunk(i, open, values, visitor));
  }

  private void chunk(int index, boolean open, RowValues values, Visitor visitor) {
    Chunk chunk = table.chunk(index);
    double[] sums = Weights.sums(model, bounds.highest(index));
    int[] ranked = groups.rankedPerZone(index);
    for (int zone = 0; zone < sums.length; zone++) {
      int from = zone * Chunk.ZONE;
      long path = (long) index * Chunk.ROWS + from;
      if ((open || ranked[zone] > 0) && visitor.admits(sums[zone], path)) {
        int to = Math.min(chunk.size(), from + Chunk.ZONE);
        values.compute(chunk, path, from, to);
        rows(groups.of(index), from, to, path, values, visitor);
      }
    }
  }

  /** Visits the rows of a zone that are ranked or open. */
  static void rows(byte[] groups, int from, int to, long path, RowValues values, Visitor visitor) {
    for (int row = from; row < to; row++) {
      Group group = GROUPS[groups[row]];
      if (group == Group.RANKED || group == Group.OPEN) {
        int j = row - from;
        visitor.visit(path + j, group, values.worst[j], values.best[j]);
      }
    }
  }
}
