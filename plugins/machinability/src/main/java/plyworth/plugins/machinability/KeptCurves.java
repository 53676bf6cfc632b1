package plyworth.plugins.machinability;

/**
 * Curves of {@link HeatingCurves} that are kept for later, one to a row.
 *
 * @param p1 slower rate, 1/s
 * @param p2 faster rate, 1/s
 * @param r1 share of the slower
 * @param r2 share of the faster
 * @param crest how fast the faster rises at first beside the fall of the slower
 */
record KeptCurves(double[] p1, double[] p2, double[] r1, double[] r2, double[] crest) {

  /** Room for as many. */
  static KeptCurves room(int rows) {
    return new KeptCurves(
        new double[rows], new double[rows], new double[rows], new double[rows], new double[rows]);
  }
}
