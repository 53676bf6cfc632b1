package plyworth.workbench.analysis;

import java.util.List;
import java.util.Map;
import plyworth.shared.scoring.Assessment;
import plyworth.shared.structure.Structure;
import plyworth.shared.study.Study;
import plyworth.workbench.host.BoundCriterion;
import plyworth.workbench.host.BoundPlugins;
import plyworth.workbench.ranking.ExactScores;
import plyworth.workbench.ranking.RankedCandidate;
import plyworth.workbench.ranking.Ranker;
import plyworth.workbench.ranking.Ranking;
import plyworth.workbench.ranking.ValueModel;

/**
 * A scored study, ranked under the weighting, value functions and limits of {@code study}.
 *
 * @param scored the step before
 * @param study the study, which may differ from the scored one in weightings, value functions and
 *     limits alone
 * @param ranker ranks the same table again
 * @param ranking the best and the counts
 * @param baseline today's structure
 * @param seconds time this step took
 */
public record Ranked(
    Scored scored, Study study, Ranker ranker, Ranking ranking, Sheet baseline, double seconds) {

  /**
   * Ranks for the first time.
   *
   * @param k how many of the best to list
   */
  public static Ranked of(Scored scored, int k) {
    Ranker ranker = new Ranker(scored.table(), exact(scored.compiled()));
    return of(scored, scored.compiled().prepared().study(), ranker, k);
  }

  /** Ranks again under a changed study; the scores stay. */
  public Ranked again(Study changed, int k) {
    return of(scored, changed, ranker, k);
  }

  private static Ranked of(Scored scored, Study study, Ranker ranker, int k) {
    Stopwatch watch = new Stopwatch();
    ValueModel model = ValueModel.of(scored.table().criteria(), study, study.activeWeighting());
    Ranking ranking = ranker.refine(model, k);
    double seconds = watch.seconds();
    Sheet baseline = Sheet.of(scored.compiled(), model, study.baseline());
    return new Ranked(scored, study, ranker, ranking, baseline, seconds);
  }

  /** The candidates among the best, in order. */
  public List<RankedCandidate> best() {
    return ranking.best();
  }

  /** The structure of a candidate. */
  public Structure structure(long path) {
    return scored.compiled().paths().structure(path);
  }

  /** A structure, scored in full. */
  public Sheet sheet(Structure structure) {
    return Sheet.of(scored.compiled(), ranking.model(), structure);
  }

  private static ExactScores exact(Compiled compiled) {
    BoundPlugins bound = compiled.prepared().bound();
    return path -> {
      Map<String, Assessment> assessments = bound.score(compiled.paths().structure(path));
      return bound.criteria().stream().mapToDouble(c -> figure(bound, assessments, c)).toArray();
    };
  }

  private static double figure(
      BoundPlugins bound, Map<String, Assessment> assessments, BoundCriterion criterion) {
    String plugin = bound.plugins().get(criterion.plugin()).id();
    return assessments.get(plugin).figure(criterion.criterion().id());
  }
}
