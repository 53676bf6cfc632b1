package plyworth.workbench.engine.table;

import java.time.Duration;
import java.util.Optional;
import plyworth.workbench.host.BoundPlugin;

/** Which plugin a thread waits for, and since when; for the thread that looks on. */
final class PluginWatch {

  private static final ThreadLocal<PluginWatch> OF_THREAD =
      ThreadLocal.withInitial(PluginWatch::new);

  private record Waiting(BoundPlugin plugin, long since) {}

  private volatile Waiting waiting;

  private PluginWatch() {}

  /** The watch of this thread. */
  static PluginWatch ofThread() {
    return OF_THREAD.get();
  }

  void begin(BoundPlugin plugin) {
    waiting = new Waiting(plugin, System.nanoTime());
  }

  void end() {
    waiting = null;
  }

  /** The plugin that the thread has been waiting for longer than that. */
  Optional<BoundPlugin> silentFor(Duration patience) {
    Waiting now = waiting;
    return now != null && System.nanoTime() - now.since() > patience.toNanos()
        ? Optional.of(now.plugin())
        : Optional.empty();
  }
}
