package plyworth.shared.scoring;

/** The arithmetic of the joins with several components. */
final class JoinKernels {

  /** Highest power of the Laplace variable kept by {@link Join#HEAT}. */
  static final int HEAT_ORDER = 8;

  private static final int A = -1;
  private static final int B = HEAT_ORDER;
  private static final int C = 2 * HEAT_ORDER;
  private static final int D = 3 * HEAT_ORDER;

  private JoinKernels() {}

  static void affine(double[] o, double[] i, double[] r, int at) {
    double a = i[at];
    double b = i[at + 1];
    r[at] = o[at] * a;
    r[at + 1] = o[at] * b + o[at + 1];
    r[at + 2] = i[at + 2] + o[at + 2] * a;
    r[at + 3] = i[at + 3] + o[at + 2] * b + o[at + 3];
  }

  static void bending(double[] o, double[] i, double[] r, int at) {
    double eaOuter = o[at];
    double eaInner = i[at];
    double ea = eaOuter + eaInner;
    double zInner = o[at + 3] + i[at + 1];
    double share = ea > 0 ? eaInner / ea : 0 * ea;
    double d = zInner - o[at + 1];
    r[at] = ea;
    r[at + 1] = o[at + 1] + share * d;
    r[at + 2] = o[at + 2] + i[at + 2] + eaOuter * share * d * d;
    r[at + 3] = o[at + 3] + i[at + 3];
  }

  /** Encloses {@link #bending}; uses that the centroid of a piece lies within its thickness. */
  static void bendingBounds(
      double[] oLow,
      double[] oHigh,
      double[] iLow,
      double[] iHigh,
      double[] low,
      double[] high,
      int at) {
    double dLow = Math.max(0, oLow[at + 3] + iLow[at + 1] - oHigh[at + 1]);
    double dHigh = oHigh[at + 3] + iHigh[at + 1] - oLow[at + 1];
    low[at] = oLow[at] + iLow[at];
    high[at] = oHigh[at] + iHigh[at];
    low[at + 1] = weighted(oHigh[at], oLow[at + 1], iLow[at], oLow[at + 3] + iLow[at + 1]);
    high[at + 1] = weighted(oLow[at], oHigh[at + 1], iHigh[at], oHigh[at + 3] + iHigh[at + 1]);
    low[at + 2] = oLow[at + 2] + iLow[at + 2] + series(oLow[at], iLow[at]) * dLow * dLow;
    high[at + 2] = oHigh[at + 2] + iHigh[at + 2] + series(oHigh[at], iHigh[at]) * dHigh * dHigh;
    low[at + 3] = oLow[at + 3] + iLow[at + 3];
    high[at + 3] = oHigh[at + 3] + iHigh[at + 3];
  }

  private static double weighted(double ea, double z, double eaOther, double zOther) {
    double sum = ea + eaOther;
    return sum > 0 ? (ea * z + eaOther * zOther) / sum : Math.min(z, zOther);
  }

  private static double series(double a, double b) {
    return a + b > 0 ? a * b / (a + b) : 0;
  }

  /**
   * Product of two transfer matrices, each element a power series up to {@link #HEAT_ORDER}. The
   * constant terms 1, b, 0, 1 are written out, so that the inner loop runs over stored terms alone.
   */
  static void heat(double[] o, double[] i, double[] r, int at) {
    double ob = o[at + B];
    double ib = i[at + B];
    r[at + B] = ob + ib;
    for (int n = 1; n <= HEAT_ORDER; n++) {
      double a = o[at + A + n] + i[at + A + n] + ob * i[at + C + n];
      double b = o[at + B + n] + i[at + B + n] + o[at + A + n] * ib + ob * i[at + D + n];
      double c = o[at + C + n] + i[at + C + n];
      double d = o[at + D + n] + i[at + D + n] + o[at + C + n] * ib;
      for (int k = 1; k < n; k++) {
        double oa = o[at + A + k];
        double oc = o[at + C + k];
        double obk = o[at + B + k];
        double od = o[at + D + k];
        double ia = i[at + A + n - k];
        double ic = i[at + C + n - k];
        double ibk = i[at + B + n - k];
        double id = i[at + D + n - k];
        a += oa * ia + obk * ic;
        b += oa * ibk + obk * id;
        c += oc * ia + od * ic;
        d += oc * ibk + od * id;
      }
      r[at + A + n] = a;
      r[at + B + n] = b;
      r[at + C + n] = c;
      r[at + D + n] = d;
    }
  }
}
