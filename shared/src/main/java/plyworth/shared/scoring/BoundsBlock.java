package plyworth.shared.scoring;

/**
 * Columns of a block of unfinished structures: intervals of states in, intervals of criteria out.
 *
 * <p>An interval that holds NaN at either end is unknown. As in {@link Block}, what goes out is
 * written anew.
 */
public final class BoundsBlock {

  /** Number of structures in the block. */
  public int size;

  /** Lower ends of the joined states, component by structure. In. */
  public final double[][] stateLow;

  /** Upper ends of the joined states. In. */
  public final double[][] stateHigh;

  /** Lower ends of the needed figures. In. */
  public final double[][] neededLow;

  /** Upper ends of the needed figures. In. */
  public final double[][] neededHigh;

  /** Lower ends of the criteria; NaN when unknown. Out. */
  public final double[][] low;

  /** Upper ends of the criteria; NaN when unknown. Out. */
  public final double[][] high;

  /** Bits of the blocking rules that fire for every state in the interval. Out. */
  public final long[] mustBlock;

  /** Bits of the blocking rules that fire for some state in the interval. Out. */
  public final long[] mayBlock;

  /** Lower ends of the provided figures. Out. */
  public final double[][] providedLow;

  /** Upper ends of the provided figures. Out. */
  public final double[][] providedHigh;

  /**
   * A block with room for {@code capacity} structures; arguments as in {@link Block#Block}.
   *
   * @param components components of the state
   * @param needs number of needed figures
   * @param criteria number of criteria
   * @param provides number of provided figures
   * @param capacity most structures it can hold
   */
  public BoundsBlock(int components, int needs, int criteria, int provides, int capacity) {
    stateLow = new double[components][capacity];
    stateHigh = new double[components][capacity];
    neededLow = new double[needs][capacity];
    neededHigh = new double[needs][capacity];
    low = new double[criteria][capacity];
    high = new double[criteria][capacity];
    mustBlock = new long[capacity];
    mayBlock = new long[capacity];
    providedLow = new double[provides][capacity];
    providedHigh = new double[provides][capacity];
  }
}
