package plyworth.workbench.engine.table;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import plyworth.shared.scoring.Layerwise;
import plyworth.workbench.engine.CompiledGraph;
import plyworth.workbench.host.BoundCriterion;
import plyworth.workbench.host.BoundPlugin;
import plyworth.workbench.host.BoundPlugins;

/** Scores every candidate of a graph into a {@link CandidateTable}. */
public final class Tabulation {

  /** How long a plugin may take to answer one call, for a block or for a structure. */
  private static final Duration PATIENCE = Duration.ofSeconds(30);

  private final CompiledGraph graph;
  private final BoundPlugins plugins;
  private final List<Optional<Layerwise>> forms;
  private final StateLayout layout;
  private final StateLayout joining;
  private final Contributions contributions;
  private final Suffixes suffixes;
  private final boolean[] kept;
  private final TableSize size;
  private final Duration patience;

  private Tabulation(
      CompiledGraph graph,
      BoundPlugins plugins,
      Predicate<BoundCriterion> wanted,
      long budget,
      Duration patience) {
    this.graph = graph;
    this.plugins = plugins;
    this.patience = patience;
    kept = new boolean[plugins.criteria().size()];
    for (int c = 0; c < kept.length; c++) {
      BoundCriterion criterion = plugins.criteria().get(c);
      kept[c] = criterion.applies() && wanted.test(criterion);
    }
    forms = forms(plugins, kept);
    layout = StateLayout.of(plugins.plugins(), forms);
    contributions = Contributions.of(graph, plugins.plugins(), forms, layout);
    joining = layout.joining(contributions);
    suffixes = Suffixes.of(graph, contributions, joining);
    size = measure(budget);
  }

  /** Gets ready, with {@link TableSize#standardBudget} to fill; see the other. */
  public static Tabulation of(CompiledGraph graph, BoundPlugins plugins) {
    return of(graph, plugins, criterion -> true, TableSize.standardBudget());
  }

  /**
   * Gets ready: asks the plugins for their contributions, and finishes one block to see which
   * criteria are only bounded.
   *
   * @param wanted criteria that get a column; the others are not kept
   * @param budget bytes the table may take
   * @throws ScoringFault when a plugin throws, gives what cannot be or does not answer
   */
  public static Tabulation of(
      CompiledGraph graph, BoundPlugins plugins, Predicate<BoundCriterion> wanted, long budget) {
    return of(graph, plugins, wanted, budget, PATIENCE);
  }

  /** The same, with other patience for a plugin's answer. */
  static Tabulation of(
      CompiledGraph graph,
      BoundPlugins plugins,
      Predicate<BoundCriterion> wanted,
      long budget,
      Duration patience) {
    AtomicReference<Tabulation> made = new AtomicReference<>();
    WatchedThreads.run(
        1, patience, () -> made.set(new Tabulation(graph, plugins, wanted, budget, patience)));
    return made.get();
  }

  /** The memory that the table takes. */
  public TableSize size() {
    return size;
  }

  /**
   * Scores with all processors; see the other.
   *
   * @throws TableTooLargeException when the table does not fit
   * @throws ScoringFault when a plugin throws, gives what cannot be or does not answer
   */
  public CandidateTable run(Progress progress) {
    return run(progress, Runtime.getRuntime().availableProcessors());
  }

  /**
   * Scores all candidates, or as many as there are when it is cancelled.
   *
   * @param threads threads to work with
   * @return the table; partial when it was cancelled
   * @throws TableTooLargeException when the table does not fit
   * @throws ScoringFault when a plugin throws, gives what cannot be or does not answer
   */
  public CandidateTable run(Progress progress, int threads) {
    if (!size.fits()) {
      throw new TableTooLargeException(size);
    }
    return new ChunkQueue(this, progress).run(threads);
  }

  /**
   * Scores any candidates that are asked for, exactly as {@link #run} does.
   *
   * @param goOn asked now and then; false gives up
   */
  public ChunkFiller filler(BooleanSupplier goOn) {
    return new ChunkFiller(this, goOn);
  }

  /**
   * Does work that calls plugins on a thread of its own, and waits for it.
   *
   * @throws ScoringFault when a plugin does not answer
   */
  public void watched(Runnable work) {
    WatchedThreads.run(1, patience, work);
  }

  /** The layerwise form of each plugin, for the criteria alone that are kept. */
  private static List<Optional<Layerwise>> forms(BoundPlugins bound, boolean[] kept) {
    List<Optional<Layerwise>> forms = new ArrayList<>();
    for (int p = 0; p < bound.plugins().size(); p++) {
      BoundPlugin plugin = bound.plugins().get(p);
      Set<String> wanted = new HashSet<>();
      for (int c = 0; c < kept.length; c++) {
        BoundCriterion criterion = bound.criteria().get(c);
        if (kept[c] && criterion.plugin() == p) {
          wanted.add(criterion.criterion().id());
        }
      }
      forms.add(
          Plugins.call(plugin, () -> plugin.scorer().layerwise().map(form -> form.only(wanted))));
    }
    return List.copyOf(forms);
  }

  private TableSize measure(long budget) {
    int columns = 0;
    for (boolean column : kept) {
      columns += column ? 1 : 0;
    }
    long rows = graph.count();
    int bounded = rows == 0 ? 0 : new ChunkFiller(this, () -> true).boundedColumns();
    long bytes = Chunk.bytes(rows, columns, bounded) + suffixes.bytes();
    return new TableSize(rows, columns, bounded, bytes, budget);
  }

  /** The candidates. */
  public CompiledGraph graph() {
    return graph;
  }

  /** The plugins that score them. */
  public BoundPlugins plugins() {
    return plugins;
  }

  /** The layerwise form of each plugin, asked for once: it may hold tables that take a while. */
  public List<Optional<Layerwise>> forms() {
    return forms;
  }

  /** Whether each criterion has a column. */
  boolean[] kept() {
    return kept;
  }

  Duration patience() {
    return patience;
  }

  /** What a state consists of. */
  public StateLayout layout() {
    return layout;
  }

  /** What of a state has to be joined; see {@link StateLayout#joining}. */
  StateLayout joining() {
    return joining;
  }

  /** What each edge adds to a state. */
  public Contributions contributions() {
    return contributions;
  }

  PrefixWalk walk() {
    return new PrefixWalk(graph, contributions, suffixes, joining);
  }
}
