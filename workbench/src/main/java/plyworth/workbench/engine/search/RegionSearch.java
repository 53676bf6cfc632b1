package plyworth.workbench.engine.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;
import plyworth.workbench.engine.table.Chunk;
import plyworth.workbench.engine.table.Progress;

/** Finds the best candidates by opening the most promising region first. Exact. */
final class RegionSearch extends Search {

  /** A region, and the most that one of its candidates can be worth. */
  private record Waiting(Region region, double atMost) {

    /** The most promising first, on equal promise the lower path number. */
    static final Comparator<Waiting> ORDER =
        Comparator.comparingDouble(Waiting::atMost)
            .reversed()
            .thenComparingLong(waiting -> waiting.region().path);
  }

  private final Regions regions;
  private final PluginBounds bounds;
  private final SumBound sums;
  private final SearchSettings settings;
  private final PriorityQueue<Waiting> queue = new PriorityQueue<>(Waiting.ORDER);
  private long waitingBytes;

  RegionSearch(SearchSpace space, SumBound sums, Goal goal, Progress progress) {
    super(space.tabulation(), goal, progress);
    this.sums = sums;
    regions = space.regions();
    settings = space.settings();
    bounds = new PluginBounds(space.tabulation(), settings.bundles());
  }

  @Override
  void search(long[] hopefuls) {
    expect(hopefuls);
    Region whole = regions.begin();
    if (whole.count > 0) {
      push(new Waiting(whole, Double.POSITIVE_INFINITY));
    }
    while (!queue.isEmpty() && goesOn()) {
      Waiting next = queue.poll();
      waitingBytes -= next.region().bytes();
      popped++;
      if (!goal.admits(next.atMost(), next.region().path)) {
        queue.clear();
      } else if (!score(next.region())) {
        open(next, true);
      }
    }
    bounded = bounds.asked();
  }

  private void push(Waiting waiting) {
    queue.add(waiting);
    waitingBytes += waiting.region().bytes();
    longestQueue = Math.max(longestQueue, queue.size());
    queueBytes = Math.max(queueBytes, waitingBytes);
  }

  /** Scores the candidates of a region when they are few. */
  private boolean score(Region region) {
    if (region.count > Math.max(1, settings.few())) {
      return false;
    }
    int run = region.ended ? 1 : (int) regions.kinds().completions(region.kind());
    long[] firsts = region.paths();
    Chunk scores = region.scores();
    if (scores == null) {
      scores = scored(firsts, run);
      if (scores == null) {
        return true;
      }
      regions.keep(region, scores);
    }
    take(firsts, run, scores);
    return true;
  }

  /** Lets the parts of a region wait, or opens them at once when the queue is full. */
  private void open(Waiting whole, boolean mayWait) {
    opened++;
    List<Waiting> wanted = wanted(whole);
    long bytes = wanted.stream().mapToLong(waiting -> waiting.region().bytes()).sum();
    if (mayWait && waitingBytes + bytes <= settings.budget()) {
      wanted.forEach(this::push);
      pushed += wanted.size();
      return;
    }
    deepened++;
    wanted.sort(Waiting.ORDER);
    for (Waiting part : wanted) {
      if (!goesOn()) {
        return;
      }
      if (!goal.admits(part.atMost(), part.region().path)) {
        settle(part.region().count);
      } else if (!score(part.region())) {
        open(part, false);
      }
    }
  }

  private List<Waiting> wanted(Waiting whole) {
    List<Waiting> wanted = new ArrayList<>();
    for (Region part : regions.parts(whole.region(), bounds, goal)) {
      double together = sums.atMost(regions.kinds(), part);
      double atMost = Math.min(whole.atMost(), part.spans.atMost(goal, sums.summed(), together));
      if (goal.admits(atMost, part.path)) {
        wanted.add(new Waiting(part, atMost));
      } else {
        settle(part.count);
      }
    }
    return wanted;
  }
}
