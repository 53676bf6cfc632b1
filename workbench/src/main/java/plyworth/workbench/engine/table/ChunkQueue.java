package plyworth.workbench.engine.table;

import java.util.Arrays;

/** Hands the chunks to the threads in order, and gathers them. */
final class ChunkQueue {

  private final Tabulation tabulation;
  private final Progress progress;
  private final long total;
  private final Chunk[] chunks;
  private int next;
  private int gathered;
  private volatile boolean stopped;

  ChunkQueue(Tabulation tabulation, Progress progress) {
    this.tabulation = tabulation;
    this.progress = progress;
    total = tabulation.graph().count();
    chunks = new Chunk[Math.toIntExact((total + Chunk.ROWS - 1) / Chunk.ROWS)];
  }

  CandidateTable run(int threads) {
    try {
      WatchedThreads.run(Math.min(threads, chunks.length), tabulation.patience(), this::work);
    } finally {
      stopped = true;
    }
    return new CandidateTable(
        tabulation.plugins().criteria(), Arrays.copyOf(chunks, gathered), total);
  }

  private void work() {
    try {
      ChunkFiller filler = new ChunkFiller(tabulation, this::goesOn);
      for (int index = take(); index >= 0; index = take()) {
        long first = (long) index * Chunk.ROWS;
        Chunk chunk = filler.fill(first, (int) Math.min(Chunk.ROWS, total - first));
        if (chunk != null) {
          put(index, chunk);
        }
      }
    } catch (RuntimeException | Error e) {
      stopped = true;
      throw e;
    }
  }

  private synchronized int take() {
    return goesOn() && next < chunks.length ? next++ : -1;
  }

  private synchronized void put(int index, Chunk chunk) {
    chunks[index] = chunk;
    int before = gathered;
    while (gathered < chunks.length && chunks[gathered] != null) {
      gathered++;
    }
    if (gathered > before) {
      progress.scored(Math.min(total, (long) gathered * Chunk.ROWS), total);
    }
  }

  private boolean goesOn() {
    stopped |= progress.cancelled();
    return !stopped;
  }
}
