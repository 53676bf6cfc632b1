package plyworth.workbench.engine.table;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.stream.Stream;
import plyworth.workbench.host.BoundPlugin;

/**
 * Work that calls plugins, on threads of its own, so that a plugin that never answers can be left
 * behind with its thread. Such a thread cannot be stopped; it ends with the program.
 */
final class WatchedThreads {

  private static final long LOOK_MILLIS = 20;

  /** One thread and what it waits for. */
  private static final class Worker extends Thread {
    private final Runnable work;
    private final AtomicReference<Throwable> fault;
    private volatile PluginWatch watch;

    Worker(Runnable work, AtomicReference<Throwable> fault) {
      super("plyworth-table");
      this.work = work;
      this.fault = fault;
      setDaemon(true);
    }

    @Override
    public void run() {
      watch = PluginWatch.ofThread();
      try {
        work.run();
      } catch (RuntimeException | Error e) {
        fault.compareAndSet(null, e);
      }
    }

    private Optional<BoundPlugin> silent(Duration patience) {
      PluginWatch own = watch;
      return own == null ? Optional.empty() : own.silentFor(patience);
    }
  }

  private WatchedThreads() {}

  /**
   * Does work on several threads and waits for all of them.
   *
   * @param patience how long a plugin may take to answer one call
   * @throws ScoringFault when a plugin takes longer; the threads are left behind
   */
  static void run(int threads, Duration patience, Runnable work) {
    AtomicReference<Throwable> fault = new AtomicReference<>();
    List<Worker> workers = Stream.generate(() -> new Worker(work, fault)).limit(threads).toList();
    workers.forEach(Thread::start);
    boolean interrupted = false;
    for (Worker worker : workers) {
      while (worker.isAlive()) {
        interrupted |= !joined(worker);
        workers.forEach(w -> check(w, patience));
      }
    }
    if (interrupted) {
      Thread.currentThread().interrupt();
    }
    rethrow(fault.get());
  }

  private static boolean joined(Thread thread) {
    try {
      thread.join(LOOK_MILLIS);
      return true;
    } catch (InterruptedException e) {
      return false;
    }
  }

  private static void check(Worker worker, Duration patience) {
    worker
        .silent(patience)
        .ifPresent(
            plugin -> {
              throw new ScoringFault(
                  plugin.id(),
                  "it has not answered for "
                      + patience.toSeconds()
                      + " s; its work goes on unseen until the program ends");
            });
  }

  private static void rethrow(Throwable fault) {
    if (fault instanceof Error error) {
      throw error;
    }
    if (fault != null) {
      throw (RuntimeException) fault;
    }
  }
}
