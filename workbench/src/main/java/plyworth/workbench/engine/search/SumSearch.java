package plyworth.workbench.engine.search;

import java.util.ArrayList;
import java.util.List;
import java.util.PriorityQueue;
import plyworth.workbench.engine.CompiledGraph;
import plyworth.workbench.engine.table.Chunk;
import plyworth.workbench.engine.table.Progress;

/**
 * Finds the best candidates where nothing but criteria that add up decides: the most that follows
 * an outer piece is known exactly, so the way to the best is straight. Exact.
 */
final class SumSearch extends Search {

  /** Opening a prefix costs less than scoring more completions than these. */
  private static final int FEW = 16;

  private final CompiledGraph graph;
  private final SumBound sums;
  private final int few;
  private final int longest;
  private final PriorityQueue<Prefix> queue = new PriorityQueue<>(Prefix.ORDER);

  SumSearch(SearchSpace space, SumBound sums, Goal goal, Progress progress) {
    super(space.tabulation(), goal, progress);
    this.sums = sums;
    graph = space.tabulation().graph();
    few = Math.min(FEW, space.settings().few());
    longest = (int) Math.min(Integer.MAX_VALUE / 2, space.settings().budget() / Prefix.BYTES);
  }

  /** Nothing is gained by what was good before. */
  @Override
  void search(long[] hopefuls) {
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
    queueBytes = longestQueue * Prefix.BYTES;
  }

  private int edges(int node) {
    return graph.edgeStart(node + 1) - graph.edgeStart(node);
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
    long[] firsts = {path};
    Chunk chunk = scored(firsts, count);
    if (chunk != null) {
      take(firsts, count, chunk);
    }
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
      double atMost = Math.min(prefix.atMost(), sums.atMost(sum, node));
      bounded++;
      if (goal.admits(atMost, path)) {
        wanted.add(new Prefix(node, path, sum, atMost));
      } else {
        settle(graph.completions(node));
      }
      path += graph.completions(node);
    }
    return wanted;
  }
}
