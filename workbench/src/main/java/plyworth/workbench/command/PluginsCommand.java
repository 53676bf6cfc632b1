package plyworth.workbench.command;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ParentCommand;
import plyworth.shared.scoring.ScoringPlugin;
import plyworth.workbench.host.LoadedPlugin;
import plyworth.workbench.host.PluginCatalog;
import plyworth.workbench.host.PluginFault;
import plyworth.workbench.host.Sentences;

/** Says what is loaded, from where, and what is faulty and why. */
@Command(
    name = "plugins",
    mixinStandardHelpOptions = true,
    description = "What is loaded, from where, and what is faulty and why.")
final class PluginsCommand implements Callable<Integer> {

  @ParentCommand private Plyworth program;

  @Override
  public Integer call() {
    PluginCatalog catalog = program.catalog();
    PrintWriter out = program.out();
    out.println("Plugins in " + catalog.folder());
    catalog.plugins().forEach(p -> print(out, p));
    if (catalog.plugins().isEmpty()) {
      out.println("  none is loaded");
    }
    for (PluginFault fault : catalog.faults()) {
      out.println("  faulty: " + fault.name() + " from " + fault.origin());
      out.println("    " + fault.reason());
    }
    return Failures.DONE;
  }

  private static void print(PrintWriter out, LoadedPlugin loaded) {
    ScoringPlugin plugin = loaded.plugin();
    out.printf(
        "  %-16s %s, version %s, from %s%n",
        loaded.id(),
        Sentences.of(plugin, plugin.card().title(), Locale.ENGLISH),
        plugin.card().version(),
        loaded.origin().getFileName());
    plugin
        .criteria()
        .forEach(
            c ->
                out.printf(
                    "    %-34s %s%s%n",
                    loaded.id() + "/" + c.id(),
                    Sentences.of(plugin, c.title(), Locale.ENGLISH),
                    c.unit().isEmpty() ? "" : ", " + c.unit()));
    plugin
        .parameters()
        .forEach(
            p ->
                out.printf(
                    "    setting %-26s %s: %s %s%n",
                    p.id(),
                    Sentences.of(plugin, p.title(), Locale.ENGLISH),
                    plyworth.workbench.host.Digits.sensible(p.standard()),
                    p.unit()));
  }
}
