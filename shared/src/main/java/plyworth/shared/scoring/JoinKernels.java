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

  /** Product of two transfer matrices, each element a power series up to {@link #HEAT_ORDER}. */
  static void heat(double[] o, double[] i, double[] r, int at) {
    for (int n = 0; n <= HEAT_ORDER; n++) {
      double a = 0;
      double b = 0;
      double c = 0;
      double d = 0;
      for (int k = 0; k <= n; k++) {
        double oa = get(o, at + A, k, 1);
        double ob = o[at + B + k];
        double oc = get(o, at + C, k, 0);
        double od = get(o, at + D, k, 1);
        double ia = get(i, at + A, n - k, 1);
        double ib = i[at + B + n - k];
        double ic = get(i, at + C, n - k, 0);
        double id = get(i, at + D, n - k, 1);
        a += oa * ia + ob * ic;
        b += oa * ib + ob * id;
        c += oc * ia + od * ic;
        d += oc * ib + od * id;
      }
      r[at + B + n] = b;
      if (n > 0) {
        r[at + A + n] = a;
        r[at + C + n] = c;
        r[at + D + n] = d;
      }
    }
  }

  private static double get(double[] series, int base, int power, double constant) {
    return power == 0 ? constant : series[base + power];
  }
}
