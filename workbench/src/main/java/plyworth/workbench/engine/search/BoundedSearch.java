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

  /** Where sums tell candidates apart, opening a prefix costs less than scoring its completions. */
  private static final int FEW_SUMS = 16;

  private final CompiledGraph graph;
  private final Contributions contributions;
  private final StateLayout layout;
  private final Goal goal;
  private final Progress progress;
  private final SearchSpace space;
  private final SumBound sums;
  private final int few;
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

  BoundedSearch(SearchSpace space, Goal goal, Progress progress) {
    this.space = space;
    this.goal = goal;
    this.progress = progress;
    SearchSettings settings = space.settings();
    Tabulation tabulation = space.tabulation();
    sums = SumBound.of(tabulation, space.sums(), goal);
    few = sums.everything() ? Math.min(FEW_SUMS, settings.few()) : settings.few();
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
    if (!sums.everything()) {
      expect(hopefuls);
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

  /** Where sums decide, the way to the best is straight and nothing is gained by what was good. */
  private void expect(long[] hopefuls) {
    for (long path : hopefuls) {
      Chunk chunk = goesOn() ? filler.fill(path, 1) : null;
      if (chunk != null) {
        goal.expect(path, chunk);
        scored++;
      }
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
    if (count > few) {
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
      double sum = prefix.sum() + sums.of(edge);
      Prefix longer = new Prefix(prefix, edge, node, path, sum, prefix.atMost());
      double atMost = Math.min(prefix.atMost(), atMost(longer));
      if (goal.admits(atMost, path)) {
        wanted.add(new Prefix(prefix, edge, node, path, sum, atMost));
      } else {
        settle(graph.completions(node));
      }
      path += graph.completions(node);
    }
    return wanted;
  }

  private double atMost(Prefix prefix) {
    bounded++;
    double together = sums.atMost(prefix.sum(), prefix.node());
    return sums.everything() ? together : spans(prefix).atMost(goal, sums.summed(), together);
  }

  private CriterionSpans spans(Prefix prefix) {
    return space.known().of(prefix.node(), prefix.path(), () -> bounds.of(completed(prefix)));
  }

  /** The states of all candidates that begin so, in the bundles of their completions. */
  private List<StateSpan> completed(Prefix prefix) {
    StateSpan own = StateSpan.point(prefix.state(contributions, layout));
    List<StateSpan> spans = new ArrayList<>();
    for (StateSpan inner : space.bundles().of(prefix.node())) {
      spans.add(own.followedBy(inner, layout));
    }
    return spans;
  }
}
