package plyworth.workbench.robustness;

/** How alike two orders of the same candidates are (Kendall 1945; from memory). */
final class RankCorrelation {

  private RankCorrelation() {}

  /**
   * Kendall's tau-b: 1 for the same order, −1 for the opposite, ties allowed for; NaN where one of
   * the two puts all candidates level.
   *
   * @param a scores of the candidates by one method
   * @param b scores of the same candidates by another
   */
  static double tauB(double[] a, double[] b) {
    long agreement = 0;
    long apartInA = 0;
    long apartInB = 0;
    for (int i = 0; i < a.length; i++) {
      for (int j = 0; j < i; j++) {
        int inA = Double.compare(a[i], a[j]);
        int inB = Double.compare(b[i], b[j]);
        agreement += (long) Integer.signum(inA) * Integer.signum(inB);
        apartInA += inA == 0 ? 0 : 1;
        apartInB += inB == 0 ? 0 : 1;
      }
    }
    return agreement / Math.sqrt((double) apartInA * apartInB);
  }
}
