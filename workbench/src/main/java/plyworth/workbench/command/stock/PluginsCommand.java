package plyworth.workbench.command.stock;

import java.io.PrintWriter;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.ParentCommand;
import plyworth.shared.scoring.Criterion;
import plyworth.shared.scoring.Parameter;
import plyworth.shared.scoring.ScoringPlugin;
import plyworth.shared.scoring.Text;
import plyworth.workbench.command.part.Failures;
import plyworth.workbench.command.part.Program;
import plyworth.workbench.command.print.Paragraph;
import plyworth.workbench.host.Digits;
import plyworth.workbench.host.LoadedPlugin;
import plyworth.workbench.host.PluginCatalog;
import plyworth.workbench.host.PluginFault;
import plyworth.workbench.host.Sentences;
import plyworth.workbench.host.UnitText;

/** Says what is loaded, from where, and what is faulty and why. */
@Command(name = "plugins", description = "What is loaded, from where, and what is faulty and why.")
public final class PluginsCommand implements Callable<Integer> {

  @ParentCommand private Program program;

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
      out.println(Paragraph.of("    ", fault.reason()));
    }
    return Failures.DONE;
  }

  private static void print(PrintWriter out, LoadedPlugin loaded) {
    ScoringPlugin plugin = loaded.plugin();
    out.println();
    out.printf(
        "  %s: %s, version %s, from %s%n",
        loaded.id(),
        said(plugin, plugin.card().title()),
        plugin.card().version(),
        loaded.origin().getFileName());
    for (Criterion criterion : plugin.criteria()) {
      String unit = UnitText.of(criterion.unit());
      out.printf(
          "    criterion  %-34s %s%s%n",
          loaded.id() + "/" + criterion.id(),
          said(plugin, criterion.title()),
          unit.isEmpty() ? "" : ", " + unit);
    }
    for (Parameter parameter : plugin.parameters()) {
      out.printf(
          "    setting    %-34s %s: %s%n",
          parameter.id(), said(plugin, parameter.title()), values(parameter));
    }
  }

  /** The standard value and what may be set instead. */
  private static String values(Parameter parameter) {
    String unit = UnitText.of(parameter.unit());
    return Digits.sensible(parameter.standard())
        + (unit.isEmpty() ? "" : " " + unit)
        + (" (" + Digits.sensible(parameter.lowest()) + " to ")
        + (Digits.sensible(parameter.highest()) + ")");
  }

  private static String said(ScoringPlugin plugin, Text text) {
    return Sentences.of(plugin, text, Locale.ENGLISH);
  }
}
