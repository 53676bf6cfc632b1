package plyworth.workbench.engine.table;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Hands the chunks to the threads in order, and gathers them. */
final class ChunkQueue {

  private final Tabulation tabulation;
  private final Progress progress;
  private final long total;
  private final Chunk[] chunks;
  private int next;
  private int gathered;
  private volatile boolean stopped;
  private Throwable fault;

  ChunkQueue(Tabulation tabulation, Progress progress) {
    this.tabulation = tabulation;
    this.progress = progress;
    total = tabulation.graph().count();
    chunks = new Chunk[Math.toIntExact((total + Chunk.ROWS - 1) / Chunk.ROWS)];
  }

  CandidateTable run(int threads) {
    List<Thread> helpers = new ArrayList<>();
    for (int i = 1; i < Math.min(threads, chunks.length); i++) {
      Thread helper = new Thread(this::work, "plyworth-table-" + i);
      helper.setDaemon(true);
      helper.start();
      helpers.add(helper);
    }
    work();
    helpers.forEach(ChunkQueue::await);
    rethrow();
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
      fail(e);
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

  private synchronized void fail(Throwable e) {
    fault = fault == null ? e : fault;
    stopped = true;
  }

  private void rethrow() {
    if (fault instanceof Error error) {
      throw error;
    }
    if (fault != null) {
      throw (RuntimeException) fault;
    }
  }

  private static void await(Thread thread) {
    boolean interrupted = false;
    while (thread.isAlive()) {
      try {
        thread.join();
      } catch (InterruptedException e) {
        interrupted = true;
      }
    }
    if (interrupted) {
      Thread.currentThread().interrupt();
    }
  }
}
