package plyworth.workbench.analysis;

import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Function;
import plyworth.shared.structure.Structure;
import plyworth.shared.study.Study;
import plyworth.workbench.engine.table.Progress;
import plyworth.workbench.engine.table.Tabulation;
import plyworth.workbench.ranking.ExactRanker;
import plyworth.workbench.ranking.ExactScores;
import plyworth.workbench.ranking.ParetoFront;
import plyworth.workbench.ranking.RankedCandidate;
import plyworth.workbench.ranking.Ranker;
import plyworth.workbench.ranking.Ranking;
import plyworth.workbench.ranking.SearchRanker;
import plyworth.workbench.ranking.ValueModel;

/**
 * A scored study, ranked under the weighting, value functions and limits of {@code study}.
 *
 * @param scored the step before
 * @param study the study, which may differ from the scored one in weightings, value functions and
 *     limits alone
 * @param ranker ranks the same candidates again
 * @param exact full figures of single candidates
 * @param ranking the counts, and the order of the best
 * @param best the best candidates in that order, with every figure in full
 * @param baseline today's structure
 * @param seconds time this step took
 */
public record Ranked(
    Scored scored,
    Study study,
    ExactRanker ranker,
    ExactScores exact,
    Ranking ranking,
    List<RankedCandidate> best,
    Sheet baseline,
    double seconds) {

  /**
   * Ranks for the first time.
   *
   * @param k how many of the best to list
   */
  public static Ranked of(Scored scored, int k) {
    ExactScores exact = new ExactFigures(scored.compiled());
    return of(scored, new Ranker(scored.table(), exact), exact, k);
  }

  /**
   * Scores and ranks for the first time.
   *
   * @param k how many of the best to list
   * @param search how the best are found; empty for a table where it fits
   * @param progress told how far it is; may cancel
   * @throws plyworth.workbench.engine.table.TableTooLargeException when a table is asked for that
   *     does not fit
   */
  public static Ranked of(Compiled compiled, int k, Optional<Search> search, Progress progress) {
    Stopwatch watch = new Stopwatch();
    return WithoutFaulty.run(
        compiled.prepared().catalog(),
        catalog -> {
          Compiled working = compiled.with(catalog);
          Tabulation tabulation = Scored.tabulation(working);
          Search fitting = tabulation.size().fits() ? Search.TABLE : Search.BOUNDED;
          return search.orElse(fitting) == Search.TABLE
              ? of(Scored.of(working, tabulation, progress, watch), k)
              : searched(working, tabulation, k, progress, watch);
        });
  }

  private static Ranked searched(
      Compiled compiled, Tabulation tabulation, int k, Progress progress, Stopwatch watch) {
    ExactScores exact = new ExactFigures(compiled);
    SearchRanker ranker = new SearchRanker(tabulation, exact, progress);
    return of(Scored.unfilled(compiled, tabulation, watch), ranker, exact, k);
  }

  private static Ranked of(Scored scored, ExactRanker ranker, ExactScores exact, int k) {
    Study study = scored.compiled().prepared().study();
    return of(
        scored,
        study,
        ranker,
        exact,
        k,
        model -> Sheet.of(scored.compiled(), model, study.baseline()));
  }

  /** Ranks again under a changed study; the scores stay. */
  public Ranked again(Study changed, int k) {
    boolean sameBaseline = changed.baseline().equals(baseline.structure());
    return of(
        scored,
        changed,
        ranker,
        exact,
        k,
        model ->
            sameBaseline
                ? baseline.under(model)
                : Sheet.of(scored.compiled(), model, changed.baseline()));
  }

  private static Ranked of(
      Scored scored,
      Study study,
      ExactRanker ranker,
      ExactScores exact,
      int k,
      Function<ValueModel, Sheet> baseline) {
    Stopwatch watch = new Stopwatch();
    ValueModel model = ValueModel.of(scored.table().criteria(), study, study.activeWeighting());
    Ranking ranking = ranker.refine(model, k);
    double seconds = watch.seconds();
    List<RankedCandidate> best = inFull(ranking, exact);
    return new Ranked(scored, study, ranker, exact, ranking, best, baseline.apply(model), seconds);
  }

  private static List<RankedCandidate> inFull(Ranking ranking, ExactScores exact) {
    return ranking.best().stream()
        .map(c -> new RankedCandidate(c.path(), ranking.model().value(exact.figures(c.path()))))
        .toList();
  }

  /**
   * The best candidate of each kind, of the best few kinds, best first, with every figure in full.
   *
   * @param k how many kinds, at least one
   * @param kind what makes two structures of one kind, compared by {@code equals}; null for those
   *     that are not looked for
   */
  public List<RankedCandidate> bestOfEach(int k, Function<Structure, ?> kind) {
    Ranking found = ranker.bestOfEach(ranking.model(), k, path -> kind.apply(structure(path)));
    return inFull(found, exact);
  }

  /** The rank of a candidate among all; empty where it was not counted. */
  OptionalLong rankOf(RankedCandidate candidate) {
    int place = best.indexOf(candidate);
    if (place >= 0) {
      return OptionalLong.of(place + 1);
    }
    return ranking.isCounted() ? ranking.rankOf(candidate.path()) : OptionalLong.empty();
  }

  /** Tells of which kind a structure is. */
  public StructureKinds kinds() {
    return new StructureKinds(study.materialsAtHand());
  }

  /**
   * The candidates that no other beats in every weighted criterion; empty when the best were
   * searched, since only a table shows them.
   *
   * @param cap most candidates the front may hold
   */
  public Optional<ParetoFront> front(int cap) {
    return tableRanker().map(table -> table.paretoFront(ranking.model(), cap));
  }

  /** What ranks the table; empty when the best were searched. */
  public Optional<Ranker> tableRanker() {
    return ranker instanceof Ranker table ? Optional.of(table) : Optional.empty();
  }

  /** The same ranking of another scoring, of which it knows the candidates. */
  public Ranked with(Scored other) {
    return new Ranked(other, study, ranker, exact, ranking, best, baseline, seconds);
  }

  /** The structure of a candidate. */
  public Structure structure(long path) {
    return scored.compiled().paths().structure(path);
  }

  /** A structure, scored in full. */
  public Sheet sheet(Structure structure) {
    return Sheet.of(scored.compiled(), ranking.model(), structure);
  }
}
