package plyworth.workbench.analysis;

import java.util.function.Function;
import plyworth.workbench.host.PluginCatalog;
import plyworth.workbench.host.PluginFailure;

/** Does work with plugins; one that fails is marked faulty, and the work is done again without. */
public final class WithoutFaulty {

  private WithoutFaulty() {}

  /**
   * What the work gives with the plugins that do not fail.
   *
   * @param work is handed the catalogue in which those that failed are marked faulty
   * @throws PluginFailure when the failing plugin is not in the catalogue
   */
  public static <T> T run(PluginCatalog catalog, Function<PluginCatalog, T> work) {
    PluginCatalog working = catalog;
    while (true) {
      try {
        return work.apply(working);
      } catch (PluginFailure failure) {
        PluginCatalog left = working.faulty(failure.pluginId(), failure.reason());
        if (left.plugins().size() == working.plugins().size()) {
          throw failure;
        }
        working = left;
      }
    }
  }
}
