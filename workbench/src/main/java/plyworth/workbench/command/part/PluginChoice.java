package plyworth.workbench.command.part;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import picocli.CommandLine.Option;
import plyworth.shared.data.Spelling;
import plyworth.shared.study.Study;
import plyworth.workbench.host.PluginCatalog;

/** Which of the plugins at hand a command works with. */
public final class PluginChoice {

  @Option(
      names = "--leave-out",
      paramLabel = "PLUGIN",
      description = "Leave a plugin out and share its weight out; may be repeated.")
  private Set<String> leftOut = new LinkedHashSet<>();

  /** Ids of the plugins that are left out. */
  public Set<String> leftOut() {
    return leftOut;
  }

  /** The plugins less those left out. */
  public PluginCatalog of(PluginCatalog catalog) {
    return catalog.without(leftOut);
  }

  /** Refuses to leave out what neither the program nor the study knows. */
  public void check(PluginCatalog catalog, Study study) {
    Set<String> known = new TreeSet<>(study.settings().keySet());
    catalog.plugins().forEach(p -> known.add(p.id()));
    catalog.faults().forEach(f -> known.add(f.name()));
    study.weightings().forEach(w -> w.weights().keySet().forEach(id -> known.add(pluginOf(id))));
    study.limits().forEach(limit -> known.add(pluginOf(limit.criterion())));
    study.valueFunctions().keySet().forEach(id -> known.add(pluginOf(id)));
    for (String id : leftOut) {
      if (!known.contains(id)) {
        throw new WrongInput(
            "--leave-out: there is no plugin \""
                + id
                + "\". "
                + Spelling.suggestion(id, List.copyOf(known)));
      }
    }
  }

  private static String pluginOf(String criterion) {
    return criterion.substring(0, Math.max(0, criterion.indexOf('/')));
  }
}
