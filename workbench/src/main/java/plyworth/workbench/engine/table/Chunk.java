package plyworth.workbench.engine.table;

/**
 * A run of consecutive candidates as columns, with the smallest and largest figures of the whole
 * and of each {@link #ZONE} rows. Never changes once it is in a table; the arrays it hands out are
 * read only.
 */
public final class Chunk {

  /** Candidates in a full chunk. */
  public static final int ROWS = 16384;

  /** Candidates in a full zone. */
  public static final int ZONE = 128;

  /** Code of a candidate that nothing blocks and all of whose figures are known. */
  public static final byte SCORED = 0;

  /** Code of a candidate that nothing blocks and some of whose figures are unknown. */
  public static final byte UNKNOWN = 1;

  /** Code of a candidate that a blocking rule of some plugin keeps out. */
  public static final byte BLOCKED = 2;

  /** Bytes that a ranking keeps for a zone and a criterion: what its parts are worth at most. */
  private static final int KEPT = 68;

  private final int size;
  private final float[][] low;
  private final float[][] high;
  private final byte[] codes;
  private final Zones zones;
  private final Zones whole;

  Chunk(float[][] low, float[][] high, byte[] codes) {
    this.size = codes.length;
    this.low = low;
    this.high = high;
    this.codes = codes;
    this.zones = Zones.of(this, ZONE);
    this.whole = zones.together();
  }

  /** Candidates in it. */
  public int size() {
    return size;
  }

  /** Number of criteria, those without a column included. */
  public int criteria() {
    return low.length;
  }

  /** Whether a criterion has a column; one that does not apply to the brief has none. */
  public boolean has(int criterion) {
    return low[criterion] != null;
  }

  /**
   * Figures of a criterion, or their lower ends where they are bounded. NaN when unknown; what
   * stands there for a blocked candidate means nothing.
   */
  public float[] low(int criterion) {
    return low[criterion];
  }

  /** Upper ends of a criterion; the same array as {@link #low} unless it is bounded here. */
  public float[] high(int criterion) {
    return high[criterion];
  }

  /** Whether the figures of a criterion are only bounded here. */
  public boolean bounded(int criterion) {
    return high[criterion] != low[criterion];
  }

  /** {@link #SCORED}, {@link #UNKNOWN} or {@link #BLOCKED} of each candidate. */
  public byte[] codes() {
    return codes;
  }

  /** Smallest and largest figures per {@link #ZONE} rows. */
  public Zones zones() {
    return zones;
  }

  /** Smallest and largest figures of the whole chunk, as one zone. */
  public Zones whole() {
    return whole;
  }

  /** Number of candidates per code. */
  public int count(byte code) {
    int count = 0;
    for (byte c : codes) {
      count += c == code ? 1 : 0;
    }
    return count;
  }

  /**
   * Memory that a number of rows takes with exact and with bounded columns, the groups of a ranking
   * and the bounds that it may come to keep included.
   */
  static long bytes(long rows, int columns, int bounded) {
    long row = (long) Float.BYTES * (columns + bounded) + 2;
    long zone = (2L * Float.BYTES + 1 + KEPT) * columns + 2 * Integer.BYTES;
    double bytes = (double) rows * row + (rows / ZONE + 1.0) * zone;
    return bytes < Long.MAX_VALUE / 2 ? (long) bytes : Long.MAX_VALUE / 2;
  }
}
