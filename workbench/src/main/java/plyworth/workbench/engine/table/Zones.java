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
    for (int row = 0; row < chunk.size(); row++) {
      zones.blocked[row / length] += chunk.codes()[row] == Chunk.BLOCKED ? 1 : 0;
    }
    for (int c = 0; c < criteria; c++) {
      if (chunk.has(c)) {
        zones.columns(c);
        zones.measure(c, chunk);
      }
    }
    return zones;
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

  private void measure(int criterion, Chunk chunk) {
    float[] low = chunk.low(criterion);
    float[] high = chunk.high(criterion);
    byte[] codes = chunk.codes();
    for (int zone = 0; zone < count(); zone++) {
      float least = Float.POSITIVE_INFINITY;
      float most = Float.NEGATIVE_INFINITY;
      boolean missing = false;
      int end = Math.min(chunk.size(), (zone + 1) * length);
      for (int row = zone * length; row < end; row++) {
        if (codes[row] != Chunk.BLOCKED) {
          least = low[row] < least ? low[row] : least;
          most = high[row] > most ? high[row] : most;
          missing |= Float.isNaN(low[row]);
        }
      }
      lowest[criterion][zone] = least;
      highest[criterion][zone] = most;
      unknown[criterion][zone] = missing;
    }
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
