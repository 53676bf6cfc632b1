package plyworth.workbench.desktop.session;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import javax.swing.SwingUtilities;
import javax.swing.Timer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plyworth.workbench.SmallStudy;

/** What the session does once its window is closed: nothing. */
class ClosedSessionTest {

  private static final int LONGER_THAN_IDLE_MILLIS = 1800;

  @TempDir Path folder;

  private final AtomicInteger told = new AtomicInteger();

  @Test
  void aClosedSessionKeepsNothingAndTellsNobody() throws Exception {
    Recovery recovery = new Recovery(folder.resolve("unsaved"));
    Path file = folder.resolve("mint.study.json");
    SwingUtilities.invokeAndWait(
        () -> {
          Session session = new Session(SmallStudy.CATALOG, recovery);
          session.listen(told::incrementAndGet);
          session.begin(file, SmallStudy.few());
          session.close();
          told.set(0);
        });
    awaitTimers();
    assertThat(recovery.holds(file)).isFalse();
    assertThat(told).hasValue(0);
  }

  /** Timers ring in order, so one that was begun before has rung when this returns. */
  private static void awaitTimers() throws InterruptedException {
    CountDownLatch rung = new CountDownLatch(1);
    Timer timer = new Timer(LONGER_THAN_IDLE_MILLIS, event -> rung.countDown());
    timer.setRepeats(false);
    timer.start();
    rung.await();
  }
}
