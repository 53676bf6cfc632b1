package plyworth.workbench.engine.table;

import java.util.Arrays;

/**
 * Smallest and largest figures of runs of candidates, blocked ones left out. The arrays it hands
 * out are read only.
 */
public final class Zones {

  private final int length;
  private final float[][] lowest;
  private final float[][] highest;
  private final boolean[][] unknown;
  private final int[] blocked;

  private Zones(int length, int criteria, int zones) {
    this.length = length;
    lowest = new float[criteria][];
    highest = new float[criteria][];
    unknown = new boolean[criteria][];
    blocked = new int[zones];
  }

  static Zones of(Chunk chunk, int length) {
    int criteria = chunk.criteria();
    Zones zones = new Zones(length, criteria, (chunk.size() + length - 1) / length);
    for (int c = 0; c < criteria; c++) {
      if (chunk.has(c)) {
        zones.columns(c);
      }
    }
    int[] rows = new int[length];
    for (int zone = 0; zone < zones.count(); zone++) {
      int first = zone * length;
      int end = Math.min(chunk.size(), first + length);
      int open = open(chunk.codes(), first, end, rows);
      zones.blocked[zone] = end - first - open;
      for (int c = 0; c < criteria; c++) {
        if (chunk.has(c)) {
          zones.measure(c, zone, chunk, rows, open);
        }
      }
    }
    return zones;
  }

  /** Writes the rows that are not blocked; returns their number. */
  private static int open(byte[] codes, int first, int end, int[] rows) {
    int open = 0;
    for (int row = first; row < end; row++) {
      rows[open] = row;
      open += codes[row] == Chunk.BLOCKED ? 0 : 1;
    }
    return open;
  }

  /** All zones as one. */
  Zones together() {
    int criteria = lowest.length;
    Zones whole = new Zones(length * count(), criteria, 1);
    whole.blocked[0] = Arrays.stream(blocked).sum();
    for (int c = 0; c < criteria; c++) {
      if (lowest[c] != null) {
        whole.columns(c);
        whole.lowest[c][0] = Float.POSITIVE_INFINITY;
        whole.highest[c][0] = Float.NEGATIVE_INFINITY;
        for (int zone = 0; zone < count(); zone++) {
          whole.lowest[c][0] = Math.min(whole.lowest[c][0], lowest[c][zone]);
          whole.highest[c][0] = Math.max(whole.highest[c][0], highest[c][zone]);
          whole.unknown[c][0] |= unknown[c][zone];
        }
      }
    }
    return whole;
  }

  private void columns(int criterion) {
    lowest[criterion] = new float[count()];
    highest[criterion] = new float[count()];
    unknown[criterion] = new boolean[count()];
  }

  /** Measures the given rows, two at a time, so that a comparison need not wait for the last. */
  private void measure(int criterion, int zone, Chunk chunk, int[] rows, int count) {
    float[] low = chunk.low(criterion);
    float[] high = chunk.high(criterion);
    float least = Float.POSITIVE_INFINITY;
    float most = Float.NEGATIVE_INFINITY;
    float leastNext = least;
    float mostNext = most;
    boolean missing = false;
    int k = 0;
    for (; k < count - 1; k += 2) {
      int row = rows[k];
      int next = rows[k + 1];
      least = low[row] < least ? low[row] : least;
      most = high[row] > most ? high[row] : most;
      leastNext = low[next] < leastNext ? low[next] : leastNext;
      mostNext = high[next] > mostNext ? high[next] : mostNext;
      missing |= low[row] != low[row] | low[next] != low[next];
    }
    if (k < count) {
      int row = rows[k];
      least = low[row] < least ? low[row] : least;
      most = high[row] > most ? high[row] : most;
      missing |= low[row] != low[row];
    }
    lowest[criterion][zone] = leastNext < least ? leastNext : least;
    highest[criterion][zone] = mostNext > most ? mostNext : most;
    unknown[criterion][zone] = missing;
  }

  /** Number of zones. */
  public int count() {
    return blocked.length;
  }

  /** Smallest known figure of a criterion in each zone; +∞ when none is known. */
  public float[] lowest(int criterion) {
    return lowest[criterion];
  }

  /** Largest known figure of a criterion in each zone; −∞ when none is known. */
  public float[] highest(int criterion) {
    return highest[criterion];
  }

  /** Whether some figure of a criterion is unknown, for each zone. */
  public boolean[] unknown(int criterion) {
    return unknown[criterion];
  }

  /** Number of blocked candidates in each zone. */
  public int[] blocked() {
    return blocked;
  }
}
