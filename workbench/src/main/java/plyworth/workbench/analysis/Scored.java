package plyworth.workbench.analysis;

import java.util.List;
import plyworth.shared.study.Study;
import plyworth.workbench.engine.table.CandidateTable;
import plyworth.workbench.engine.table.Progress;
import plyworth.workbench.engine.table.TableSize;
import plyworth.workbench.engine.table.Tabulation;
import plyworth.workbench.host.PluginFault;

/**
 * A study with every candidate scored, or the first of them when it was cancelled.
 *
 * <p>A plugin that fails on the way is left out and the rest is scored again without it; {@link
 * Compiled#prepared} then holds the catalogue in which it is marked faulty.
 *
 * @param compiled the step before, with the plugins that did the work
 * @param table the figures of all candidates; of none when the best are searched
 * @param sizeStatement memory the table was foreseen to take, in words
 * @param seconds time this step took
 */
public record Scored(
    Compiled compiled, CandidateTable table, String sizeStatement, double seconds) {

  /**
   * Scores the candidates with all processors.
   *
   * @param progress told how far it is; may cancel
   * @throws plyworth.workbench.engine.table.TableTooLargeException when the table does not fit
   */
  public static Scored of(Compiled compiled, Progress progress) {
    Stopwatch watch = new Stopwatch();
    return WithoutFaulty.run(
        compiled.prepared().catalog(), catalog -> of(compiled.with(catalog), progress, watch));
  }

  private static Scored of(Compiled compiled, Progress progress, Stopwatch watch) {
    return of(compiled, tabulation(compiled), progress, watch);
  }

  /** Scores the candidates that a tabulation is ready for. */
  static Scored of(Compiled compiled, Tabulation tabulation, Progress progress, Stopwatch watch) {
    CandidateTable table = tabulation.run(progress);
    return new Scored(compiled, table, tabulation.size().statement(), watch.seconds());
  }

  /** Ready to score, with no candidate scored: what a search begins with. */
  static Scored unfilled(Compiled compiled, Tabulation tabulation, Stopwatch watch) {
    CandidateTable none =
        CandidateTable.unfilled(compiled.prepared().bound().criteria(), compiled.paths().count());
    return new Scored(compiled, none, tabulation.size().statement(), watch.seconds());
  }

  /** Gets ready to score. */
  static Tabulation tabulation(Compiled compiled) {
    Study study = compiled.prepared().study();
    return Tabulation.of(
        compiled.paths(),
        compiled.prepared().bound(),
        criterion -> asksFor(study, criterion.id()),
        TableSize.standardBudget());
  }

  /**
   * Whether the table holds what a study asks for, which may differ from the scored one in
   * weightings, value functions and limits.
   */
  public boolean holds(Study study) {
    Study before = compiled.prepared().study();
    return compiled.prepared().bound().criteria().stream()
        .allMatch(c -> asksFor(before, c.id()) || !asksFor(study, c.id()));
  }

  /** Only what some weighting weighs or a limit concerns needs a column. */
  private static boolean asksFor(Study study, String criterion) {
    return study.weightings().stream().anyMatch(w -> w.weight(criterion) > 0)
        || study.limits().stream().anyMatch(l -> l.criterion().equals(criterion));
  }

  /** Plugins that are not part of this result, with their reasons. */
  public List<PluginFault> faults() {
    return compiled.prepared().catalog().faults();
  }
}
