package plyworth.workbench.robustness;

/**
 * Closeness to the best and distance from the worst of a list (TOPSIS; Hwang and Yoon, Multiple
 * Attribute Decision Making, 1981; from memory).
 *
 * <p>Every criterion is divided by its Euclidean norm over the list and weighted; the ideal has the
 * best of each, the anti-ideal the worst. Both depend on the list: a candidate that comes or goes
 * can change who leads.
 */
final class Topsis {

  private Topsis() {}

  /**
   * Closeness of each candidate, 0 (the worst in everything) to 1 (the best in everything): d⁻/(d⁺
   * + d⁻). Where all candidates are alike it is 0.5.
   *
   * @param table candidate by criterion, higher is better
   * @param weights one for each criterion, not negative
   */
  static double[] closeness(double[][] table, double[] weights) {
    double[] toBest = new double[table.length];
    double[] toWorst = new double[table.length];
    for (int c = 0; c < weights.length; c++) {
      double[] column = weighted(table, c, weights[c]);
      double best = Double.NEGATIVE_INFINITY;
      double worst = Double.POSITIVE_INFINITY;
      for (double figure : column) {
        best = Math.max(best, figure);
        worst = Math.min(worst, figure);
      }
      for (int i = 0; i < column.length; i++) {
        toBest[i] += (best - column[i]) * (best - column[i]);
        toWorst[i] += (column[i] - worst) * (column[i] - worst);
      }
    }
    double[] closeness = new double[table.length];
    for (int i = 0; i < closeness.length; i++) {
      double best = Math.sqrt(toBest[i]);
      double worst = Math.sqrt(toWorst[i]);
      closeness[i] = best + worst == 0 ? 0.5 : worst / (best + worst);
    }
    return closeness;
  }

  /** One criterion, normed and weighted; nothing where every figure is 0. */
  private static double[] weighted(double[][] table, int criterion, double weight) {
    double squares = 0;
    for (double[] row : table) {
      squares += row[criterion] * row[criterion];
    }
    double factor = squares == 0 ? 0 : weight / Math.sqrt(squares);
    double[] column = new double[table.length];
    for (int i = 0; i < column.length; i++) {
      column[i] = factor * table[i][criterion];
    }
    return column;
  }
}
