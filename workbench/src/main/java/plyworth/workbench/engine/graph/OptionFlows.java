package plyworth.workbench.engine.graph;

import java.util.Arrays;
import java.util.List;
import java.util.function.LongBinaryOperator;
import plyworth.shared.structure.Option;
import plyworth.shared.structure.Position;

/**
 * How candidates run through the options, from position to position.
 *
 * <p>Every candidate counts once at every position. Where its layers can be spelled by the options
 * in several ways, the spelling counts that puts its layers outermost, and among these the one of
 * the earlier options. So what runs into an option runs out of it again, and every position sums to
 * the same.
 */
public final class OptionFlows {

  /** Counts every candidate of a run of path numbers. */
  public static final LongBinaryOperator EVERY = (from, to) -> to - from;

  private final long[][] through;
  private final long[][][] between;
  private final int[] nothing;

  OptionFlows(List<Position> positions) {
    int count = positions.size();
    through = new long[count][];
    between = new long[count - 1][][];
    nothing = new int[count];
    for (int p = 0; p < count; p++) {
      List<Option> options = positions.get(p).options();
      through[p] = new long[options.size()];
      nothing[p] = options.indexOf(Option.NOTHING);
      if (p + 1 < count) {
        between[p] = new long[options.size()][positions.get(p + 1).options().size()];
      }
    }
  }

  /** Number of positions. */
  public int positions() {
    return through.length;
  }

  /** Number of options of a position. */
  public int options(int position) {
    return through[position].length;
  }

  /** Number of candidates that are counted. */
  public long candidates() {
    return Arrays.stream(through[0]).sum();
  }

  /** Number of candidates that run through an option. */
  public long through(int position, int option) {
    return through[position][option];
  }

  /**
   * Number of candidates that run from an option to one of the next position.
   *
   * @param position index of the outer position, not the last
   */
  public long between(int position, int option, int next) {
    return between[position][option][next];
  }

  /** Adds candidates that stand in a slot after another, with nothing in between. */
  void add(Slot from, Slot to, long candidates) {
    run(from.position(), from.option(), to.position(), to.option(), candidates);
  }

  /** Adds candidates that end in a slot, with nothing inside it. */
  void end(Slot from, long candidates) {
    run(from.position(), from.option(), through.length, -1, candidates);
  }

  private void run(int position, int option, int to, int toOption, long candidates) {
    int before = option;
    for (int p = position + 1; p <= to && p < through.length; p++) {
      int taken = p == to ? toOption : nothing[p];
      through[p][taken] += candidates;
      if (p > 0) {
        between[p - 1][before][taken] += candidates;
      }
      before = taken;
    }
  }
}
