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
final class BoundedSearch {

  private final CompiledGraph graph;
  private final Contributions contributions;
  private final StateLayout layout;
  private final Goal goal;
  private final Progress progress;
  private final SearchSettings settings;
  private final Bundles bundles;
  private final KnownSpans known;
  private final PluginBounds bounds;
  private final ChunkFiller filler;
  private final int longest;

  private final PriorityQueue<Prefix> queue = new PriorityQueue<>(Prefix.ORDER);

  private boolean stopped;
  private long settled;
  private long popped;
  private long pushed;
  private long opened;
  private long bounded;
  private long scored;
  private long deepened;
  private int longestQueue;

  BoundedSearch(
      Tabulation tabulation,
      Bundles bundles,
      KnownSpans known,
      Goal goal,
      Progress progress,
      SearchSettings settings) {
    this.bundles = bundles;
    this.known = known;
    this.goal = goal;
    this.progress = progress;
    this.settings = settings;
    graph = tabulation.graph();
    contributions = tabulation.contributions();
    layout = tabulation.layout();
    bounds = new PluginBounds(tabulation, settings.bundles());
    filler = tabulation.filler(this::goesOn);
    longest = (int) Math.min(Integer.MAX_VALUE / 2, settings.budget() / Prefix.BYTES);
  }

  SearchEffort effort(double seconds) {
    return new SearchEffort(
        popped, pushed, opened, bounded, scored, longestQueue, deepened, !stopped, seconds);
  }

  void run(long[] hopefuls) {
    for (long path : hopefuls) {
      expect(path);
    }
    if (graph.count() > 0) {
      queue.add(Prefix.outside());
    }
    while (!queue.isEmpty() && goesOn()) {
      Prefix prefix = queue.poll();
      popped++;
      if (!goal.admits(prefix.atMost(), prefix.path())) {
        queue.clear();
      } else if (!score(prefix)) {
        open(prefix, queue.size() + edges(prefix.node()) <= longest);
      }
    }
    if (!stopped) {
      progress.scored(graph.count(), graph.count());
    }
  }

  private void expect(long path) {
    Chunk chunk = goesOn() ? filler.fill(path, 1) : null;
    if (chunk != null) {
      goal.expect(path, chunk);
      scored++;
    }
  }

  private int edges(int node) {
    return graph.edgeStart(node + 1) - graph.edgeStart(node);
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
      pushed += next.size();
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
    long path = prefix.path();
    if (graph.ends(prefix.node())) {
      score(path++, 1);
    }
    int end = graph.edgeStart(prefix.node() + 1);
    for (int edge = graph.edgeStart(prefix.node()); edge < end && goesOn(); edge++) {
      int node = graph.edgeTo(edge);
      Prefix longer = new Prefix(prefix, edge, node, path, prefix.atMost());
      double atMost = Math.min(prefix.atMost(), spans(longer).atMost(goal));
      if (goal.admits(atMost, path)) {
        wanted.add(new Prefix(prefix, edge, node, path, atMost));
      } else {
        settle(graph.completions(node));
      }
      path += graph.completions(node);
    }
    return wanted;
  }

  private CriterionSpans spans(Prefix prefix) {
    bounded++;
    return known.of(prefix.node(), prefix.path(), () -> bounds.of(completed(prefix)));
  }

  /** The states of all candidates that begin so, in the bundles of their completions. */
  private List<StateSpan> completed(Prefix prefix) {
    StateSpan own = StateSpan.point(prefix.state(contributions, layout));
    List<StateSpan> spans = new ArrayList<>();
    for (StateSpan inner : bundles.of(prefix.node())) {
      spans.add(own.followedBy(inner, layout));
    }
    return spans;
  }
}
