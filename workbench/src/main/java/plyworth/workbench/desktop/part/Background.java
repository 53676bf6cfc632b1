package plyworth.workbench.desktop.part;

import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.swing.SwingUtilities;
import plyworth.shared.data.DataException;
import plyworth.workbench.desktop.word.Words;

/**
 * Work off the event thread where the latest request wins: a new one cancels the one under way, and
 * only its own result is shown.
 */
public final class Background {

  private final ExecutorService worker = Worker.named("plyworth-background");
  private final AtomicLong latest = new AtomicLong();

  /**
   * Runs {@code work} later; {@code done} or {@code failed} then run on the event thread, unless a
   * newer request came.
   *
   * @param work takes whether it is cancelled
   * @param failed takes the reason, for people
   */
  public <T> void run(
      Function<BooleanSupplier, T> work, Consumer<T> done, Consumer<String> failed) {
    long mine = latest.incrementAndGet();
    BooleanSupplier stale = () -> latest.get() != mine;
    worker.execute(
        () -> {
          if (stale.getAsBoolean()) {
            return;
          }
          try {
            T result = work.apply(stale);
            show(stale, () -> done.accept(result));
          } catch (OutOfMemoryError e) {
            show(stale, () -> failed.accept(Words.of("failure.memory")));
          } catch (CancellationException e) {
            show(stale, () -> failed.accept(Words.of("failure.stopped")));
          } catch (DataException e) {
            show(stale, () -> failed.accept(String.join("\n\n", e.messages())));
          } catch (RuntimeException | Error e) {
            String reason = e.getMessage() == null ? e.toString() : e.getMessage();
            show(stale, () -> failed.accept(reason));
          }
        });
  }

  /** Forgets what is under way. */
  public void cancel() {
    latest.incrementAndGet();
  }

  /** Forgets what is under way, and whatever is asked from now on. */
  public void end() {
    cancel();
    worker.shutdown();
  }

  private static void show(BooleanSupplier stale, Runnable result) {
    SwingUtilities.invokeLater(
        () -> {
          if (!stale.getAsBoolean()) {
            result.run();
          }
        });
  }
}
