package plyworth.workbench.command.part;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.concurrent.atomic.AtomicLong;
import plyworth.workbench.engine.table.Progress;

/** Says now and then how far long work is, to a person who waits at a terminal. */
public final class ProgressText implements Progress {

  private static final long NANOS_BETWEEN_LINES = 2_000_000_000L;

  private final PrintWriter err;
  private final String line;
  private final AtomicLong next = new AtomicLong(System.nanoTime() + NANOS_BETWEEN_LINES);

  private ProgressText(PrintWriter err, String line) {
    this.err = err;
    this.line = line;
  }

  /** Of candidates; silent where nobody waits. */
  public static Progress on(PrintWriter err) {
    return of(err, "settled %,d of %,d candidates%n");
  }

  /** Of one structure in many worlds; silent where nobody waits. */
  public static Progress ofWorlds(PrintWriter err) {
    return of(err, "scored %,d of %,d times%n");
  }

  /** Of inputs that are changed one by one; silent where nobody waits. */
  public static Progress ofInputs(PrintWriter err) {
    return of(err, "tried %,d of %,d inputs%n");
  }

  private static Progress of(PrintWriter err, String line) {
    return System.console() == null ? Progress.NONE : new ProgressText(err, line);
  }

  @Override
  public void scored(long candidates, long of) {
    long due = next.get();
    long now = System.nanoTime();
    if (now > due && next.compareAndSet(due, now + NANOS_BETWEEN_LINES)) {
      err.printf(Locale.ROOT, line, candidates, of);
      err.flush();
    }
  }

  @Override
  public boolean cancelled() {
    return false;
  }
}
