package plyworth.workbench.engine.table;

import java.util.function.Supplier;
import plyworth.workbench.host.BoundPlugin;

/** Calls into plugins, which may do anything. */
public final class Plugins {

  private Plugins() {}

  /**
   * What a call to a plugin answers.
   *
   * @throws ScoringFault when it throws instead
   */
  public static <T> T call(BoundPlugin plugin, Supplier<T> call) {
    PluginWatch watch = PluginWatch.ofThread();
    watch.begin(plugin);
    try {
      return call.get();
    } catch (ScoringFault fault) {
      throw fault;
    } catch (RuntimeException | LinkageError | AssertionError | StackOverflowError thrown) {
      throw new ScoringFault(plugin.id(), thrown);
    } finally {
      watch.end();
    }
  }
}
