package plyworth.workbench.engine.table;

import plyworth.workbench.engine.CompiledGraph;
import plyworth.workbench.host.BoundPlugins;

/** Scores every candidate of a graph into a {@link CandidateTable}. */
public final class Tabulation {

  private final CompiledGraph graph;
  private final BoundPlugins plugins;
  private final StateLayout layout;
  private final Contributions contributions;
  private final Suffixes suffixes;
  private final TableSize size;

  private Tabulation(CompiledGraph graph, BoundPlugins plugins, long budget) {
    this.graph = graph;
    this.plugins = plugins;
    layout = StateLayout.of(plugins.plugins());
    contributions = Contributions.of(graph, plugins.plugins(), layout);
    suffixes = Suffixes.of(graph, contributions, layout);
    size = measure(budget);
  }

  /** Gets ready, with {@link TableSize#standardBudget} to fill; see the other. */
  public static Tabulation of(CompiledGraph graph, BoundPlugins plugins) {
    return of(graph, plugins, TableSize.standardBudget());
  }

  /**
   * Gets ready: asks the plugins for their contributions, and finishes one block to see which
   * criteria are only bounded.
   *
   * @param budget bytes the table may take
   * @throws ScoringFault when a plugin throws or gives what cannot be
   */
  public static Tabulation of(CompiledGraph graph, BoundPlugins plugins, long budget) {
    return new Tabulation(graph, plugins, budget);
  }

  /** The memory that the table takes. */
  public TableSize size() {
    return size;
  }

  /**
   * Scores with all processors; see the other.
   *
   * @throws TableTooLargeException when the table does not fit
   * @throws ScoringFault when a plugin throws or gives what cannot be
   */
  public CandidateTable run(Progress progress) {
    return run(progress, Runtime.getRuntime().availableProcessors());
  }

  /**
   * Scores all candidates, or as many as there are when it is cancelled.
   *
   * @param threads threads to work with, this one included
   * @return the table; partial when it was cancelled
   * @throws TableTooLargeException when the table does not fit
   * @throws ScoringFault when a plugin throws or gives what cannot be
   */
  public CandidateTable run(Progress progress, int threads) {
    if (!size.fits()) {
      throw new TableTooLargeException(size);
    }
    return new ChunkQueue(this, progress).run(threads);
  }

  private TableSize measure(long budget) {
    int columns = (int) plugins.criteria().stream().filter(c -> c.applies()).count();
    long rows = graph.count();
    int bounded = rows == 0 ? 0 : new ChunkFiller(this, () -> true).boundedColumns();
    long bytes = Chunk.bytes(rows, columns, bounded) + suffixes.bytes();
    return new TableSize(rows, columns, bounded, bytes, budget);
  }

  CompiledGraph graph() {
    return graph;
  }

  BoundPlugins plugins() {
    return plugins;
  }

  StateLayout layout() {
    return layout;
  }

  PrefixWalk walk() {
    return new PrefixWalk(graph, contributions, suffixes, layout);
  }
}
