package plyworth.shared.scoring;

/**
 * Columns of a block of candidates: joined states in, criteria out. The host owns and reuses it; a
 * plugin reads and writes only the first {@link #size} entries of every column. The columns that go
 * out still hold what an earlier block left there, so each of their entries is to be written anew.
 */
public final class Block {

  /** Number of candidates in the block. */
  public int size;

  /** Joined states: component by candidate. In. */
  public final double[][] states;

  /** Needed figures: index in {@link ScoringPlugin#needs} by candidate; NaN when unknown. In. */
  public final double[][] needed;

  /**
   * Criteria: index in {@link ScoringPlugin#criteria} by candidate. Exact where {@link #high} holds
   * the same, else the lower end. NaN when unknown; ignored when not applicable. Out.
   */
  public final double[][] low;

  /**
   * Upper ends of the criteria. The same array as in {@link #low} until a plugin writes apart
   * through {@link #apart}. Out.
   */
  public final double[][] high;

  /** Blocking bits: bit i is set when rule i of {@link ScoringPlugin#blockingRules} fires. Out. */
  public final long[] blocked;

  /**
   * Candidates of which bounded figures cannot say whether a blocking rule fires: the host scores
   * them whole instead, so a plugin leaves few of them. Preset to false. Out.
   */
  public final boolean[] undecided;

  /** Provided figures: index in {@link ScoringPlugin#provides} by candidate. Out. */
  public final double[][] provided;

  /** Upper columns once asked for, kept for the blocks to come. */
  private final double[][] apart;

  /**
   * A block with room for {@code capacity} candidates.
   *
   * @param components components of the state
   * @param needs number of needed figures
   * @param criteria number of criteria
   * @param provides number of provided figures
   * @param capacity most candidates it can hold
   */
  public Block(int components, int needs, int criteria, int provides, int capacity) {
    states = new double[components][capacity];
    needed = new double[needs][capacity];
    low = new double[criteria][capacity];
    high = low.clone();
    apart = new double[criteria][];
    blocked = new long[capacity];
    undecided = new boolean[capacity];
    provided = new double[provides][capacity];
  }

  /** The separate upper column of a criterion that the layerwise form only bounds. */
  public double[] apart(int criterion) {
    if (high[criterion] == low[criterion]) {
      if (apart[criterion] == null) {
        apart[criterion] = new double[low[criterion].length];
      }
      high[criterion] = apart[criterion];
    }
    return high[criterion];
  }
}
