package plyworth.workbench.engine.search;

import java.util.function.BooleanSupplier;
import plyworth.workbench.engine.table.Chunk;
import plyworth.workbench.engine.table.ChunkFiller;
import plyworth.workbench.engine.table.Progress;
import plyworth.workbench.engine.table.Tabulation;

/** What every search counts, and how it scores. */
abstract class Search {

  final Goal goal;

  private final Progress progress;
  private final ChunkFiller filler;
  private final long all;
  private boolean stopped;
  private double settled;
  private long scored;

  long popped;
  long pushed;
  long opened;
  long bounded;
  long deepened;
  int longestQueue;
  long queueBytes;

  Search(Tabulation tabulation, Goal goal, Progress progress) {
    this.goal = goal;
    this.progress = progress;
    BooleanSupplier goOn = this::goesOn;
    filler = tabulation.filler(goOn);
    all = tabulation.graph().count();
  }

  /** Searches until nothing is wanted or it is cancelled. */
  final void run(long[] hopefuls) {
    search(hopefuls);
    if (!stopped) {
      progress.scored(all, all);
    }
  }

  /** As {@link #run}. */
  abstract void search(long[] hopefuls);

  final SearchEffort effort(double seconds) {
    return new SearchEffort(
        popped,
        pushed,
        opened,
        bounded,
        scored,
        longestQueue,
        queueBytes,
        deepened,
        !stopped,
        seconds);
  }

  final boolean goesOn() {
    stopped |= progress.cancelled();
    return !stopped;
  }

  /** Shows candidates to the goal that are likely to be good. */
  final void expect(long[] hopefuls) {
    Chunk chunk = goesOn() && hopefuls.length > 0 ? filler.fill(hopefuls, 1) : null;
    if (chunk != null) {
      goal.expect(row -> hopefuls[row], chunk);
      scored += hopefuls.length;
    }
  }

  /** Scores runs of candidates that begin at some path numbers; null when it was cancelled. */
  final Chunk scored(long[] firsts, int run) {
    Chunk chunk = filler.fill(firsts, run);
    scored += chunk == null ? 0 : chunk.size();
    return chunk;
  }

  /** Hands scored runs to the goal. */
  final void take(long[] firsts, int run, Chunk chunk) {
    goal.take(row -> firsts[row / run] + row % run, chunk);
    settle(chunk.size());
  }

  /** Tells that so many candidates need not be looked at any more. */
  final void settle(double count) {
    settled += count;
    progress.scored((long) Math.min(settled, all), all);
  }
}
