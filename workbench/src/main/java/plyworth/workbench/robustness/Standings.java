package plyworth.workbench.robustness;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalLong;
import plyworth.workbench.ranking.Ranking;

/** Looks candidates up in several rankings of the same table. */
final class Standings {

  private Standings() {}

  /** The standing of each candidate, the smallest greatest loss first. */
  static List<Stakeholders.Standing> of(
      Contest contest, List<Ranking> rankings, double[] best, Collection<Long> paths) {
    return paths.stream()
        .map(path -> of(contest, rankings, best, path))
        .sorted(
            Comparator.comparingDouble(Stakeholders.Standing::greatestLoss)
                .thenComparingLong(Stakeholders.Standing::path))
        .toList();
  }

  private static Stakeholders.Standing of(
      Contest contest, List<Ranking> rankings, double[] best, long path) {
    double[] figures = contest.exact().figures(path);
    List<Double> values = new ArrayList<>();
    List<OptionalLong> ranks = new ArrayList<>();
    double loss = 0;
    for (Ranking ranking : rankings) {
      double value = ranking.model().value(figures).value();
      loss = Math.max(loss, best[values.size()] - value);
      values.add(value);
      ranks.add(ranking.rankOf(path));
    }
    return new Stakeholders.Standing(path, values, ranks, loss);
  }
}
