package plyworth.workbench.desktop.session;

import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import javax.swing.SwingUtilities;
import plyworth.workbench.desktop.part.Background;
import plyworth.workbench.desktop.word.Words;
import plyworth.workbench.engine.table.Progress;

/**
 * Work that takes its time: begun, watched and stopped by hand. Lives on the event thread, works
 * off it; what is done when it is stopped is kept where the work can give it.
 */
public final class LongWork<T> {

  private static final long NANOS_BETWEEN_REPORTS = 50_000_000;

  private final Background background = new Background();
  private final Runnable changed;
  private Watch watch;
  private double share = -1;
  private T result;
  private String message = "";

  /**
   * Work that has not begun.
   *
   * @param changed told whenever more is known
   */
  public LongWork(Runnable changed) {
    this.changed = changed;
  }

  /** Begins anew; what was under way is given up, what was known is forgotten. */
  public void start(Function<Progress, T> work) {
    Watch mine = new Watch();
    watch = mine;
    share = 0;
    result = null;
    message = "";
    background.run(stale -> tried(work, mine.under(stale)), this::done, this::fail);
    changed.run();
  }

  private static <T> Optional<T> tried(Function<Progress, T> work, Progress progress) {
    try {
      return Optional.of(work.apply(progress));
    } catch (CancellationException stopped) {
      return Optional.empty();
    }
  }

  private void done(Optional<T> found) {
    message = found.isPresent() ? "" : Words.of("work.stopped");
    result = found.orElse(null);
    rest();
  }

  private void fail(String reason) {
    message = reason;
    rest();
  }

  private void rest() {
    watch = null;
    share = -1;
    changed.run();
  }

  /** Stops it; what is done is kept. */
  public void stop() {
    if (watch != null) {
      watch.stopped = true;
    }
  }

  /** Gives up what is under way, and forgets what is known. */
  public void clear() {
    background.cancel();
    watch = null;
    share = -1;
    result = null;
    message = "";
  }

  boolean running() {
    return watch != null;
  }

  /** How much is done, 0 to 1. */
  double share() {
    return share;
  }

  /** What the last work came to; empty before. */
  public Optional<T> result() {
    return Optional.ofNullable(result);
  }

  /** Why there is no result; empty where there is one, or nothing was tried. */
  String message() {
    return message;
  }

  /** Looks at the work now and then. */
  private final class Watch {

    private volatile boolean stopped;
    private volatile long lastReport;

    Progress under(BooleanSupplier stale) {
      return new Progress() {
        @Override
        public void scored(long done, long of) {
          long now = System.nanoTime();
          if (now - lastReport > NANOS_BETWEEN_REPORTS) {
            lastReport = now;
            SwingUtilities.invokeLater(() -> report((double) done / of));
          }
        }

        @Override
        public boolean cancelled() {
          return stopped || stale.getAsBoolean();
        }
      };
    }

    private void report(double now) {
      if (watch == this) {
        share = Math.max(share, Math.min(1, now));
        changed.run();
      }
    }
  }
}
