package plyworth.workbench.desktop.part;

import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;

/** A thread beside the event thread, which ends by itself when there is nothing to do. */
final class Worker {

  private static final long IDLE_SECONDS = 5;

  private Worker() {}

  /** Does one thing after the other; what is asked of it after its end is dropped. */
  static ThreadPoolExecutor named(String name) {
    ThreadPoolExecutor worker =
        new ThreadPoolExecutor(
            1,
            1,
            IDLE_SECONDS,
            TimeUnit.SECONDS,
            new LinkedBlockingQueue<>(),
            task -> thread(name, task),
            new ThreadPoolExecutor.DiscardPolicy());
    worker.allowCoreThreadTimeOut(true);
    return worker;
  }

  private static Thread thread(String name, Runnable task) {
    Thread thread = new Thread(task, name);
    thread.setDaemon(true);
    return thread;
  }
}
