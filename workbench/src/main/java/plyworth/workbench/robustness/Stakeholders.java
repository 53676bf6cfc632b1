package plyworth.workbench.robustness;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import plyworth.shared.study.Study;
import plyworth.shared.study.Weighting;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.ranking.RankedCandidate;
import plyworth.workbench.ranking.Ranking;
import plyworth.workbench.ranking.Regret;
import plyworth.workbench.ranking.ValueModel;

/**
 * The weightings of a study side by side, one per stakeholder.
 *
 * <p>The candidate of least regret is the one whose greatest loss of value, against what each
 * weighting would choose for itself, is the smallest over all candidates (minimax regret, Savage
 * 1951; from memory).
 *
 * @param weightings names of the weightings
 * @param weightless weightings that are left out, because nothing they weigh counts
 * @param depth how many of the best of each weighting were looked at
 * @param standings every candidate among the best of some weighting, and the one of least regret;
 *     the smallest greatest loss first
 * @param agreed path numbers of those among the best of all weightings
 * @param leastRegret path number of the candidate of least regret; empty when none is ranked
 */
public record Stakeholders(
    List<String> weightings,
    List<String> weightless,
    int depth,
    List<Standing> standings,
    List<Long> agreed,
    OptionalLong leastRegret) {

  /** Copies the lists. */
  public Stakeholders {
    weightings = List.copyOf(weightings);
    weightless = List.copyOf(weightless);
    standings = List.copyOf(standings);
    agreed = List.copyOf(agreed);
  }

  /**
   * Where a candidate stands with each weighting, in their order.
   *
   * @param path path number
   * @param values its values, 0 to 1
   * @param ranks its ranks among all candidates, 1 for the best; empty where a bounded figure
   *     leaves it open
   * @param greatestLoss the most that any weighting loses against its own best, 0 to 1
   */
  public record Standing(
      long path, List<Double> values, List<OptionalLong> ranks, double greatestLoss) {

    /** Copies the lists. */
    public Standing {
      values = List.copyOf(values);
      ranks = List.copyOf(ranks);
    }
  }

  /**
   * Compares the weightings of a ranked study.
   *
   * @param depth how many of the best of each weighting to look at
   */
  public static Stakeholders of(Ranked ranked, int depth) {
    Study study = ranked.study();
    List<String> names = new ArrayList<>();
    List<String> weightless = new ArrayList<>();
    List<ValueModel> models = new ArrayList<>();
    for (Weighting weighting : study.weightings()) {
      ValueModel model = ValueModel.of(ranked.scored().table().criteria(), study, weighting);
      (model.weighted() ? names : weightless).add(weighting.name());
      if (model.weighted()) {
        models.add(model);
      }
    }
    return of(Contest.of(ranked), names, weightless, models, depth);
  }

  /** Compares value models that differ in weights alone. */
  static Stakeholders of(
      Contest contest,
      List<String> names,
      List<String> weightless,
      List<ValueModel> models,
      int depth) {
    List<Ranking> rankings = models.stream().map(m -> contest.ranker().refine(m, depth)).toList();
    if (rankings.isEmpty() || rankings.get(0).best().isEmpty()) {
      return new Stakeholders(names, weightless, depth, List.of(), List.of(), OptionalLong.empty());
    }
    Set<Long> shown = new LinkedHashSet<>();
    rankings.forEach(r -> r.best().forEach(candidate -> shown.add(candidate.path())));
    Set<Long> agreed = new LinkedHashSet<>(shown);
    rankings.forEach(r -> agreed.retainAll(r.best().stream().map(RankedCandidate::path).toList()));
    double[] best = rankings.stream().mapToDouble(r -> r.best().get(0).value()).toArray();
    Optional<Regret> least = contest.ranker().leastRegret(models, best);
    least.ifPresent(regret -> shown.add(regret.path()));
    List<Standing> standings = Standings.of(contest, rankings, best, shown);
    return new Stakeholders(
        names,
        weightless,
        depth,
        standings,
        List.copyOf(agreed),
        least.map(regret -> OptionalLong.of(regret.path())).orElse(OptionalLong.empty()));
  }
}
