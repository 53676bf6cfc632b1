package plyworth.workbench.chart;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import plyworth.workbench.analysis.BestList;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.engine.table.CandidateTable;
import plyworth.workbench.ranking.ParetoFront;
import plyworth.workbench.ranking.RankedCandidate;
import plyworth.workbench.ranking.Valuation;
import plyworth.workbench.ranking.ValueModel;

/**
 * The candidates on a trade-off plot. Each is there for a reason that can be told: it is among the
 * best, the best of its kind, or on the front. None is picked at random.
 *
 * @param candidates the best first, then the best of each kind, then those on the front alone
 * @param best how many of them are among the best listed
 * @param kinds how many kinds the best of each are there of; 0 where kinds are not told apart
 * @param front what is known of the front
 */
public record Plotted(List<Candidate> candidates, int best, int kinds, Front front) {

  /** Most candidates that are there for the front alone. */
  public static final int MOST_OF_FRONT = 300;

  /** Members of a front beyond which it is not looked for. */
  public static final int LARGEST_FRONT = 5000;

  /**
   * A candidate.
   *
   * @param path path number
   * @param rank its rank; 0 where it is not among the best listed
   * @param valuation its figures in full, and what they are worth
   * @param onFront whether no other candidate beats it in the criteria of the front
   */
  public record Candidate(long path, int rank, Valuation valuation, boolean onFront) {}

  /**
   * The front.
   *
   * @param reach what it was found over
   * @param members how many candidates are on it
   * @param plotted how many of them are on the plot: those of highest value
   */
  public record Front(Reach reach, int members, int plotted) {}

  /** What the front was found over. */
  public enum Reach {
    /** All candidates. */
    ALL,
    /** Those on the plot: the table has no column of one of the criteria. */
    NO_COLUMN,
    /** Those on the plot: over all candidates it has more than {@link #LARGEST_FRONT} members. */
    TOO_LARGE
  }

  /** Copies the list. */
  public Plotted {
    candidates = List.copyOf(candidates);
  }

  /**
   * Chooses.
   *
   * @param kinds those listed beside the best
   * @param criteria places in the value model of the criteria of the front
   * @param fronts finds the front
   * @param cancelled asked now and then; true gives up
   * @throws CancellationException when cancelled
   */
  public static Plotted of(
      Ranked ranked,
      BestList kinds,
      int[] criteria,
      FrontMemory fronts,
      BooleanSupplier cancelled) {
    Map<Long, Valuation> shown = new LinkedHashMap<>();
    ranked.best().forEach(c -> shown.put(c.path(), c.valuation()));
    kinds.entries().forEach(e -> shown.put(e.candidate().path(), e.candidate().valuation()));
    Optional<ParetoFront> found = fronts.of(ranked, criteria);
    Optional<ParetoFront> whole = found.filter(ParetoFront::complete);
    whole.ifPresent(
        front -> {
          for (long path : highest(ranked, front.paths())) {
            if (cancelled.getAsBoolean()) {
              throw new CancellationException();
            }
            shown.computeIfAbsent(path, p -> valuation(ranked, p));
          }
        });
    Set<Long> members =
        whole
            .<Set<Long>>map(front -> new LinkedHashSet<>(front.paths()))
            .orElseGet(() -> unbeaten(shown, criteria));
    Reach reach =
        whole.isPresent() ? Reach.ALL : found.isPresent() ? Reach.TOO_LARGE : Reach.NO_COLUMN;
    return of(ranked, kinds, shown, members, reach);
  }

  private static Plotted of(
      Ranked ranked, BestList kinds, Map<Long, Valuation> shown, Set<Long> members, Reach reach) {
    List<Long> best = ranked.best().stream().map(RankedCandidate::path).toList();
    List<Candidate> candidates = new ArrayList<>();
    shown.forEach(
        (path, valuation) ->
            candidates.add(
                new Candidate(path, 1 + best.indexOf(path), valuation, members.contains(path))));
    int plotted = (int) candidates.stream().filter(Candidate::onFront).count();
    return new Plotted(
        candidates,
        best.size(),
        kinds.eachKind() ? kinds.entries().size() : 0,
        new Front(reach, members.size(), plotted));
  }

  private static Valuation valuation(Ranked ranked, long path) {
    return ranked.ranking().model().value(ranked.exact().figures(path));
  }

  /** Those of highest value by the figures of the table, not more than fit on the plot. */
  private static List<Long> highest(Ranked ranked, List<Long> paths) {
    if (paths.size() <= MOST_OF_FRONT) {
      return paths;
    }
    ValueModel model = ranked.ranking().model();
    CandidateTable table = ranked.scored().table();
    Map<Long, Double> values = new LinkedHashMap<>();
    paths.forEach(path -> values.put(path, model.value(table, path).value()));
    return paths.stream()
        .sorted(Comparator.comparingDouble((Long path) -> -values.get(path)))
        .limit(MOST_OF_FRONT)
        .toList();
  }

  /** Those that no other one of them beats. */
  private static Set<Long> unbeaten(Map<Long, Valuation> shown, int[] criteria) {
    Set<Long> unbeaten = new LinkedHashSet<>();
    shown.forEach(
        (path, valuation) -> {
          if (shown.values().stream().noneMatch(other -> beats(other, valuation, criteria))) {
            unbeaten.add(path);
          }
        });
    return unbeaten;
  }

  private static boolean beats(Valuation a, Valuation b, int[] criteria) {
    boolean better = false;
    for (int c : criteria) {
      double own = a.parts().get(c).valueLow();
      double other = b.parts().get(c).valueLow();
      if (own < other) {
        return false;
      }
      better |= own > other;
    }
    return better;
  }
}
