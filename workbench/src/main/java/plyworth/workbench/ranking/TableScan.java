package plyworth.workbench.ranking;

import java.util.function.IntToLongFunction;
import plyworth.workbench.engine.table.Chunk;

/**
 * Visits the candidates of a table that may be good enough, most promising bands first, skipping
 * bands, zones and strips whose largest values do not reach.
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

  private final Groups groups;
  private final ValueBounds bounds;
  private final ValueModel model;
  private final double floor;

  /**
   * A scan.
   *
   * @param floor candidates that can only be worth less are not visited
   */
  TableScan(Groups groups, ValueBounds bounds, ValueModel model, double floor) {
    this.groups = groups;
    this.bounds = bounds;
    this.model = model;
    this.floor = floor;
  }

  /** Visits ranked candidates, and open ones when they are wanted. */
  void run(boolean open, Visitor visitor) {
    double[] bands = bounds.bands(model);
    ZoneScan zones = new ZoneScan(groups, bounds, model, open, floor, visitor);
    for (int band : Promising.first(bands, floor)) {
      if (bands[band] >= visitor.least() && visitor.admits(bands[band], (long) band * Bands.ROWS)) {
        zones.band(band);
      }
    }
  }

  /**
   * Visits the rows of a zone that are ranked or open and may reach the floor.
   *
   * @param groups of the chunk
   * @param path of a row of the chunk
   */
  static void rows(
      byte[] groups,
      int zone,
      IntToLongFunction path,
      RowValues values,
      double floor,
      Visitor visitor) {
    int from = zone * Chunk.ZONE;
    int count = Math.min(groups.length - from, Chunk.ZONE);
    for (int j = 0; j < count; j++) {
      Group group = GROUPS[groups[from + j]];
      if (values.best[j] >= floor && (group == Group.RANKED || group == Group.OPEN)) {
        visitor.visit(path.applyAsLong(from + j), group, values.worst[j], values.best[j]);
      }
    }
  }
}
