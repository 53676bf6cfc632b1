package plyworth.workbench.robustness;

import java.util.List;

/**
 * Net flow of preference in a list, each candidate held against every other (PROMETHEE II; Brans
 * and Vincke 1985, from memory).
 *
 * <p>Flows depend on the list: a candidate that comes or goes can change who leads.
 */
final class Promethee {

  private Promethee() {}

  /**
   * Net flow of each candidate, −1 (all others preferred to it) to 1; the flows add up to 0.
   *
   * @param table candidate by criterion, higher is better; more than one candidate
   * @param weights one for each criterion, adding up to 1
   * @param preferences one for each criterion
   */
  static double[] netFlows(double[][] table, double[] weights, List<Preference> preferences) {
    double[] flows = new double[table.length];
    for (int c = 0; c < weights.length; c++) {
      Preference preference = preferences.get(c);
      for (int i = 0; i < table.length; i++) {
        for (int j = 0; j < i; j++) {
          double flow = weights[c] * preferred(preference, table[i][c] - table[j][c]);
          flows[i] += flow;
          flows[j] -= flow;
        }
      }
    }
    for (int i = 0; i < flows.length; i++) {
      flows[i] /= table.length - 1;
    }
    return flows;
  }

  private static double preferred(Preference preference, double difference) {
    if (difference == 0) {
      return 0;
    }
    return difference > 0 ? preference.strength(difference) : -preference.strength(-difference);
  }
}
