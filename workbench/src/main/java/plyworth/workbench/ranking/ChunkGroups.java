package plyworth.workbench.ranking;

import java.util.List;
import java.util.function.IntToLongFunction;
import plyworth.workbench.engine.table.Chunk;
import plyworth.workbench.engine.table.Zones;

/** Finds the groups of one chunk. */
final class ChunkGroups {

  private final Chunk chunk;
  private final List<LimitCheck> checks;
  private final ExactScores exact;

  ChunkGroups(Chunk chunk, List<LimitCheck> checks, ExactScores exact) {
    this.chunk = chunk;
    this.checks = checks;
    this.exact = exact;
  }

  /** The groups of the chunk, whose first row is a path. */
  byte[] from(long path) {
    return from(row -> path + row);
  }

  /** The same for rows that need not follow each other. */
  byte[] from(IntToLongFunction path) {
    byte[] groups = new byte[chunk.size()];
    for (int row = 0; row < groups.length; row++) {
      boolean blocked = chunk.codes()[row] == Chunk.BLOCKED;
      groups[row] = (byte) (blocked ? Group.BLOCKED : Group.RANKED).ordinal();
    }
    for (LimitCheck check : checks) {
      if (!allowsAll(check)) {
        apply(check, groups, path);
      }
    }
    return groups;
  }

  private boolean allowsAll(LimitCheck check) {
    Zones whole = chunk.whole();
    int c = check.criterion();
    return !whole.unknown(c)[0]
        && check.of(whole.lowest(c)[0], whole.highest(c)[0]) == LimitCheck.Answer.ALLOWED;
  }

  private void apply(LimitCheck check, byte[] groups, IntToLongFunction path) {
    float[] low = chunk.low(check.criterion());
    float[] high = chunk.high(check.criterion());
    for (int row = 0; row < groups.length; row++) {
      if (groups[row] < Group.EXCLUDED.ordinal()) {
        Group group = group(check, low[row], high[row], path.applyAsLong(row));
        groups[row] = (byte) Math.max(groups[row], group.ordinal());
      }
    }
  }

  private Group group(LimitCheck check, float low, float high, long path) {
    return switch (check.of(low, high)) {
      case ALLOWED -> Group.RANKED;
      case BROKEN -> Group.EXCLUDED;
      case UNKNOWN -> Group.CANNOT_BE_JUDGED;
      case NEAR -> low == high ? decided(check, exact.figures(path)) : Group.OPEN;
    };
  }

  private static Group decided(LimitCheck check, double[] figures) {
    double figure = figures[check.criterion()];
    if (Double.isNaN(figure)) {
      return Group.CANNOT_BE_JUDGED;
    }
    return check.limit().allows(figure) ? Group.RANKED : Group.EXCLUDED;
  }
}
