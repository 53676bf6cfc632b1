package plyworth.workbench.engine.search;

import java.util.ArrayList;
import java.util.List;
import java.util.PriorityQueue;
import plyworth.workbench.engine.CompiledGraph;
import plyworth.workbench.engine.table.Chunk;
import plyworth.workbench.engine.table.ChunkFiller;
import plyworth.workbench.engine.table.Contributions;
import plyworth.workbench.engine.table.Progress;
import plyworth.workbench.engine.table.StateLayout;
import plyworth.workbench.engine.table.Tabulation;

/** Finds the best candidates of a graph without scoring all of them. Exact. */
public final class BoundedSearch {

  /** Memory that one waiting prefix takes, roughly. */
  private static final long BYTES_PER_PREFIX = 100;

  private final Tabulation tabulation;
  private final CompiledGraph graph;
  private final Contributions contributions;
  private final StateLayout layout;
  private final Goal goal;
  private final Progress progress;
  private final SearchSettings settings;
  private final int longest;

  private final PriorityQueue<Prefix> queue = new PriorityQueue<>(Prefix.ORDER);
  private Bundles bundles;
  private PluginBounds bounds;
  private ChunkFiller filler;

  private boolean stopped;
  private long settled;
  private long opened;
  private long bounded;
  private long scored;
  private long deepened;
  private int longestQueue;

  private BoundedSearch(
      Tabulation tabulation, Goal goal, Progress progress, SearchSettings settings) {
    this.tabulation = tabulation;
    this.goal = goal;
    this.progress = progress;
    graph = tabulation.graph();
    contributions = tabulation.contributions();
    layout = tabulation.layout();
    this.settings = settings;
    long fitting = settings.budget() / BYTES_PER_PREFIX;
    longest = (int) Math.max(1, Math.min(Integer.MAX_VALUE / 2, fitting));
  }

  /**
   * Searches until the goal wants nothing that is left.
   *
   * @param tabulation the candidates and the plugins that score them
   * @param progress told how many candidates are settled; may cancel
   * @throws plyworth.workbench.engine.table.ScoringFault when a plugin throws, gives what cannot be
   *     or does not answer
   */
  public static SearchEffort run(
      Tabulation tabulation, Goal goal, Progress progress, SearchSettings settings) {
    long start = System.nanoTime();
    BoundedSearch search = new BoundedSearch(tabulation, goal, progress, settings);
    tabulation.watched(search::work);
    return search.effort((System.nanoTime() - start) * 1e-9);
  }

  private SearchEffort effort(double seconds) {
    return new SearchEffort(opened, bounded, scored, longestQueue, deepened, !stopped, seconds);
  }

  private void work() {
    bundles = Bundles.of(graph, contributions, layout, settings.bundles());
    bounds = new PluginBounds(tabulation, settings.bundles());
    filler = tabulation.filler(this::goesOn);
    if (graph.count() > 0) {
      queue.add(Prefix.outside());
    }
    while (!queue.isEmpty() && goesOn()) {
      Prefix prefix = queue.poll();
      if (!goal.admits(prefix.atMost(), prefix.path())) {
        queue.clear();
      } else if (!score(prefix)) {
        open(prefix, queue.size() < longest);
      }
    }
    if (!stopped) {
      progress.scored(graph.count(), graph.count());
    }
  }

  private boolean goesOn() {
    stopped |= progress.cancelled();
    return !stopped;
  }

  /** Scores the candidates of a prefix when they are few. */
  private boolean score(Prefix prefix) {
    long count = graph.completions(prefix.node());
    if (count > settings.few()) {
      return false;
    }
    score(prefix.path(), (int) count);
    return true;
  }

  private void score(long path, int count) {
    Chunk chunk = filler.fill(path, count);
    if (chunk != null) {
      goal.take(path, chunk);
      scored += count;
      settle(count);
    }
  }

  private void settle(long count) {
    settled += count;
    progress.scored(settled, graph.count());
  }

  /** Bounds what a prefix continues with; what is wanted waits, or is opened at once. */
  private void open(Prefix prefix, boolean wait) {
    opened++;
    deepened += wait ? 0 : 1;
    List<Prefix> next = wanted(prefix);
    if (wait) {
      queue.addAll(next);
      longestQueue = Math.max(longestQueue, queue.size());
      return;
    }
    next.sort(Prefix.ORDER);
    for (Prefix longer : next) {
      if (!goesOn()) {
        return;
      }
      if (!goal.admits(longer.atMost(), longer.path())) {
        settle(graph.completions(longer.node()));
      } else if (!score(longer)) {
        open(longer, false);
      }
    }
  }

  private List<Prefix> wanted(Prefix prefix) {
    List<Prefix> wanted = new ArrayList<>();
    double[] state = prefix.state(contributions, layout);
    double[] joined = layout.neutral();
    long path = prefix.path();
    if (graph.ends(prefix.node())) {
      score(path++, 1);
    }
    int end = graph.edgeStart(prefix.node() + 1);
    for (int edge = graph.edgeStart(prefix.node()); edge < end && goesOn(); edge++) {
      int node = graph.edgeTo(edge);
      layout.join(state, contributions.of(edge), joined);
      double atMost = Math.min(prefix.atMost(), atMost(joined, node, path));
      if (goal.admits(atMost, path)) {
        wanted.add(new Prefix(prefix, edge, node, path, atMost));
      } else {
        settle(graph.completions(node));
      }
      path += graph.completions(node);
    }
    return wanted;
  }

  private double atMost(double[] state, int node, long path) {
    bounded++;
    StateSpan own = StateSpan.point(state);
    List<StateSpan> spans = new ArrayList<>();
    for (StateSpan inner : bundles.of(node)) {
      spans.add(own.followedBy(inner, layout));
    }
    return bounds.atMost(spans, path, goal);
  }
}
