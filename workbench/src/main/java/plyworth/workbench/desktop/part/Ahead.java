package plyworth.workbench.desktop.part;

import java.util.concurrent.ExecutorService;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.swing.SwingUtilities;

/**
 * Work off the event thread that is shown whenever it is done, however fast requests come: while
 * one is under way the latest of those that come waits, and the others are dropped.
 */
public final class Ahead<T> {

  private final ExecutorService worker = Worker.named("plyworth-ahead");
  private final Consumer<T> shown;
  private boolean busy;
  private Supplier<T> waiting;

  /**
   * Nothing to do yet.
   *
   * @param shown takes what was made, on the event thread
   */
  public Ahead(Consumer<T> shown) {
    this.shown = shown;
  }

  /** Asks for something to be made; on the event thread. */
  public void ask(Supplier<T> work) {
    if (busy) {
      waiting = work;
    } else {
      begin(work);
    }
  }

  private void begin(Supplier<T> work) {
    busy = true;
    worker.execute(
        () -> {
          try {
            T made = work.get();
            SwingUtilities.invokeLater(() -> shown.accept(made));
          } finally {
            SwingUtilities.invokeLater(this::next);
          }
        });
  }

  private void next() {
    Supplier<T> work = waiting;
    waiting = null;
    busy = false;
    if (work != null) {
      begin(work);
    }
  }
}
