package plyworth.workbench.ranking;

import plyworth.workbench.engine.table.CandidateTable;
import plyworth.workbench.engine.table.Chunk;

/**
 * Visits the candidates of a table that may be good enough, most promising chunks first, skipping
 * chunks, zones and strips whose largest values do not reach.
 */
final class TableScan {

  /** Takes what the scan finds. */
  interface Visitor {
    /** Whether any candidate from {@code path} on with at most this value is still of interest. */
    boolean admits(double value, long path);

    /** A value below which none is of interest any more. */
    default double least() {
      return Double.NEGATIVE_INFINITY;
    }

    /** A candidate; {@code worst} and {@code best} as in {@link RowValues}. */
    void visit(long path, Group group, double worst, double best);
  }

  private static final Group[] GROUPS = Group.values();

  private final CandidateTable table;
  private final Groups groups;
  private final ValueBounds bounds;
  private final ValueModel model;
  private final double floor;

  /**
   * A scan.
   *
   * @param floor candidates that can only be worth less are not visited
   */
  TableScan(
      CandidateTable table, Groups groups, ValueBounds bounds, ValueModel model, double floor) {
    this.table = table;
    this.groups = groups;
    this.bounds = bounds;
    this.model = model;
    this.floor = floor;
  }

  /** Visits ranked candidates, and open ones when they are wanted. */
  void run(boolean open, Visitor visitor) {
    double[] whole = bounds.whole(model);
    ZoneScan zones = new ZoneScan(groups, bounds, model, floor, visitor);
    for (int chunk : Promising.first(whole, floor)) {
      if (visitor.admits(whole[chunk], (long) chunk * Chunk.ROWS)) {
        chunk(chunk, open, zones, visitor);
      }
    }
  }

  private void chunk(int index, boolean open, ZoneScan zones, Visitor visitor) {
    double[] highest = bounds.highest(model, index);
    int[] ranked = groups.rankedPerZone(index);
    for (int zone = 0; zone < highest.length; zone++) {
      long path = (long) index * Chunk.ROWS + (long) zone * Chunk.ZONE;
      if (highest[zone] >= floor
          && (open || ranked[zone] > 0)
          && visitor.admits(highest[zone], path)) {
        zones.run(index, zone);
      }
    }
  }

  /**
   * Visits the rows of a zone that are ranked or open and may reach the floor.
   *
   * @param groups of the chunk
   * @param path of the first row of the chunk
   */
  static void rows(
      byte[] groups, int zone, long path, RowValues values, double floor, Visitor visitor) {
    int from = zone * Chunk.ZONE;
    int count = Math.min(groups.length - from, Chunk.ZONE);
    for (int j = 0; j < count; j++) {
      Group group = GROUPS[groups[from + j]];
      if (values.best[j] >= floor && (group == Group.RANKED || group == Group.OPEN)) {
        visitor.visit(path + from + j, group, values.worst[j], values.best[j]);
      }
    }
  }
}
