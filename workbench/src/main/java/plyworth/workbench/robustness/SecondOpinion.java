package plyworth.workbench.robustness;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.ranking.RankedCandidate;
import plyworth.workbench.ranking.Valuation;
import plyworth.workbench.ranking.ValueModel;
import plyworth.workbench.ranking.Weighed;

/**
 * The best candidates, ordered by two other methods under the same weights and the same values of
 * the criteria.
 *
 * <p>Neither replaces the ranking: both order a list by what is in it, so that a candidate that
 * comes or goes can turn two others round, which cannot happen to the ranking itself.
 *
 * @param candidates the candidates compared, best first
 * @param opinions one for each method
 */
public record SecondOpinion(List<RankedCandidate> candidates, List<Opinion> opinions) {

  /** A method that orders a list. */
  public enum Method {
    /** Closeness to the best of the list in everything. */
    TOPSIS,
    /** Each held against every other. */
    PROMETHEE_II
  }

  /** Difference in value that nobody minds (judgement). */
  public static final double INDIFFERENT = 0.02;

  /** Difference in value that counts in full (judgement). */
  public static final double FULL = 0.2;

  /**
   * What a method says.
   *
   * @param method the method
   * @param ranks rank of each candidate among those compared, 1 for the best; those level share the
   *     lowest number
   * @param correlation Kendall's tau-b with the ranking, −1 to 1; NaN where all are level
   */
  public record Opinion(Method method, List<Integer> ranks, double correlation) {

    /** Copies the ranks. */
    public Opinion {
      ranks = List.copyOf(ranks);
    }

    /** Place of the candidate it puts first, in the order of the ranking, from 0. */
    public int leader() {
      return ranks.indexOf(Collections.min(ranks));
    }
  }

  /** Copies the lists. */
  public SecondOpinion {
    candidates = List.copyOf(candidates);
    opinions = List.copyOf(opinions);
  }

  /**
   * Of the best candidates of a ranking; no opinions on fewer than two.
   *
   * @param depth how many of the best to compare
   */
  public static SecondOpinion of(Ranked ranked, int depth) {
    ValueModel model = ranked.ranking().model();
    List<Weighed> criteria = model.criteria();
    int[] counting =
        IntStream.range(0, criteria.size()).filter(c -> criteria.get(c).counts()).toArray();
    double[] weights = IntStream.of(counting).mapToDouble(c -> criteria.get(c).weight()).toArray();
    return of(ranked.ranker().refine(model, depth).best(), counting, weights);
  }

  /**
   * Of candidates in the order of a ranking.
   *
   * @param counting places of the criteria that count
   * @param weights their weights, adding up to 1
   */
  static SecondOpinion of(List<RankedCandidate> candidates, int[] counting, double[] weights) {
    if (candidates.size() < 2) {
      return new SecondOpinion(candidates, List.of());
    }
    double[][] table = new double[candidates.size()][];
    double[] values = new double[table.length];
    for (int i = 0; i < table.length; i++) {
      List<Valuation.Part> parts = candidates.get(i).valuation().parts();
      table[i] = IntStream.of(counting).mapToDouble(c -> parts.get(c).valueLow()).toArray();
      values[i] = candidates.get(i).value();
    }
    Preference preference = Preference.linear(INDIFFERENT, FULL);
    List<Preference> preferences = Collections.nCopies(weights.length, preference);
    return new SecondOpinion(
        candidates,
        List.of(
            opinion(Method.TOPSIS, Topsis.closeness(table, weights), values),
            opinion(Method.PROMETHEE_II, Promethee.netFlows(table, weights, preferences), values)));
  }

  private static Opinion opinion(Method method, double[] scores, double[] values) {
    List<Integer> ranks = new ArrayList<>();
    for (double score : scores) {
      int better = 0;
      for (double other : scores) {
        better += other > score ? 1 : 0;
      }
      ranks.add(1 + better);
    }
    return new Opinion(method, ranks, RankCorrelation.tauB(values, scores));
  }
}
