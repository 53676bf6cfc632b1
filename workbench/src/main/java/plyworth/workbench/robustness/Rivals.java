package plyworth.workbench.robustness;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import plyworth.workbench.analysis.Ranked;

/** The candidates that may come first when weights and inputs move. */
public final class Rivals {

  private Rivals() {}

  /**
   * The first and the second, the best of every weighting with that of least regret, and those that
   * overtake the leader when a weight moves.
   */
  public static List<Long> of(
      Ranked ranked, List<WeightInterval> intervals, Stakeholders stakeholders) {
    Set<Long> paths = new LinkedHashSet<>();
    ranked.best().stream().limit(2).forEach(candidate -> paths.add(candidate.path()));
    stakeholders.standings().forEach(standing -> paths.add(standing.path()));
    for (WeightInterval interval : intervals) {
      interval.lower().overtaker().ifPresent(paths::add);
      interval.upper().overtaker().ifPresent(paths::add);
    }
    return List.copyOf(paths);
  }
}
