package plyworth.shared.scoring;

/**
 * How the states of an outer and an inner piece of a structure become that of both.
 *
 * <p>Every join is associative with a neutral element. {@link #joinLow} and {@link #joinHigh}
 * enclose the join of everything between two lower and two upper states; {@link #hull} encloses
 * alternatives. NaN, the unknown, is passed on.
 */
public enum Join {

  /** Addition: masses, costs, series resistances. One component, neutral 0. */
  SUM(1, 0),

  /** The larger of the two. One component, neutral −∞. */
  MAX(1, Double.NEGATIVE_INFINITY),

  /** The smaller of the two. One component, neutral +∞. */
  MIN(1, Double.POSITIVE_INFINITY),

  /**
   * The figure of the innermost layer. One component, neutral −∞: no layer. Over intervals a lower
   * end of −∞ says that the layer may lie farther out.
   */
  INNERMOST(1, Double.NEGATIVE_INFINITY),

  /** The figure of the outermost layer. One component, neutral −∞: no layer. */
  OUTERMOST(1, Double.NEGATIVE_INFINITY),

  /**
   * A set of up to 53 bits kept as a whole number, joined by union. Over intervals the lower end
   * holds the bits that are set for certain, the upper end those that may be.
   */
  BITS(1, 0),

  /**
   * Area and cost through the passes of a route: for an area x that must leave on the inner side,
   * the area a·x + b must enter on the outer side and costs c·x + d. Components a, b, c, d, none
   * negative; neutral 1, 0, 0, 0.
   */
  AFFINE(4, 1, 0, 0, 0),

  /**
   * Bending of bonded layers: tensile stiffness EA, distance z of its centroid from the outer face,
   * bending stiffness S about it, thickness t. Joined by the parallel-axis theorem: S = So + Si +
   * EAo·EAi/(EAo + EAi)·d² with d = to + zi − zo. Neutral 0, 0, 0, 0.
   */
  BENDING(4, 0, 0, 0, 0),

  /**
   * Heat through layers: the transfer matrix [[A, B], [C, D]] of a wall as power series in the
   * Laplace variable up to its eighth power. For one homogeneous layer with resistance R and heat
   * capacity K per area and q² = s·R·K: A = D = cosh q, B = R·sinh(q)/q, C = q·sinh(q)/R; walls in
   * series multiply (Carslaw and Jaeger, Conduction of Heat in Solids, composite walls; from
   * memory). Components A1…A8, B0…B8, C1…C8, D1…D8, none negative; A0 = D0 = 1, C0 = 0. Neutral 0.
   *
   * <p>Eight powers place the first two poles of a wall heated from both faces within 0.5 %; four
   * leave the dwell of a three-web seal 2 to 6 % off when it is short.
   */
  HEAT(4 * JoinKernels.HEAT_ORDER + 1, new double[4 * JoinKernels.HEAT_ORDER + 1]);

  private final int size;
  private final double[] neutral;

  Join(int size, double... neutral) {
    this.size = size;
    this.neutral = neutral;
  }

  /** Number of components. */
  public int size() {
    return size;
  }

  /** Writes the neutral element at {@code at}. */
  public void neutral(double[] state, int at) {
    System.arraycopy(neutral, 0, state, at, size);
  }

  /**
   * Joins the parts that begin at {@code at}. {@code result} must not be {@code outer} or {@code
   * inner}.
   */
  public void join(double[] outer, double[] inner, double[] result, int at) {
    double o = outer[at];
    double i = inner[at];
    switch (this) {
      case SUM -> result[at] = o + i;
      case MAX -> result[at] = Math.max(o, i);
      case MIN -> result[at] = Math.min(o, i);
      case INNERMOST -> result[at] = i == Double.NEGATIVE_INFINITY ? o : i;
      case OUTERMOST -> result[at] = o == Double.NEGATIVE_INFINITY ? i : o;
      case BITS -> result[at] = union(o, i);
      case AFFINE -> JoinKernels.affine(outer, inner, result, at);
      case BENDING -> JoinKernels.bending(outer, inner, result, at);
      case HEAT -> JoinKernels.heat(outer, inner, result, at);
    }
  }

  /** Joins interval states: encloses the join of everything between the ends. */
  public void joinBounds(
      double[] outerLow,
      double[] outerHigh,
      double[] innerLow,
      double[] innerHigh,
      double[] low,
      double[] high,
      int at) {
    switch (this) {
      case INNERMOST -> {
        low[at] = keepUnknown(innerLow[at], Math.min(outerLow[at], innerLow[at]), innerLow[at]);
        high[at] = innerHigh[at];
        if (innerLow[at] == Double.NEGATIVE_INFINITY) {
          high[at] = Math.max(outerHigh[at], innerHigh[at]);
          low[at] = innerHigh[at] == Double.NEGATIVE_INFINITY ? outerLow[at] : low[at];
        }
      }
      case OUTERMOST -> {
        low[at] = keepUnknown(outerLow[at], Math.min(outerLow[at], innerLow[at]), outerLow[at]);
        high[at] = outerHigh[at];
        if (outerLow[at] == Double.NEGATIVE_INFINITY) {
          high[at] = Math.max(outerHigh[at], innerHigh[at]);
          low[at] = outerHigh[at] == Double.NEGATIVE_INFINITY ? innerLow[at] : low[at];
        }
      }
      case BENDING ->
          JoinKernels.bendingBounds(outerLow, outerHigh, innerLow, innerHigh, low, high, at);
      default -> {
        join(outerLow, innerLow, low, at);
        join(outerHigh, innerHigh, high, at);
      }
    }
  }

  /** Widens the interval in {@code low}, {@code high} to enclose another. */
  public void hull(double[] low, double[] high, double[] otherLow, double[] otherHigh, int at) {
    for (int k = at; k < at + size; k++) {
      if (this == BITS) {
        low[k] = (long) low[k] & (long) otherLow[k];
        high[k] = union(high[k], otherHigh[k]);
      } else {
        low[k] = Math.min(low[k], otherLow[k]);
        high[k] = Math.max(high[k], otherHigh[k]);
      }
    }
  }

  private static double keepUnknown(double end, double whenAbsent, double otherwise) {
    return end == Double.NEGATIVE_INFINITY ? whenAbsent : otherwise;
  }

  private static double union(double a, double b) {
    return Double.isNaN(a + b) ? Double.NaN : (long) a | (long) b;
  }
}
