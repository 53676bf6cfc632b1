package plyworth.workbench.app;

import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import plyworth.workbench.command.Plyworth;
import plyworth.workbench.command.Workplace;
import plyworth.workbench.desktop.Desktop;
import plyworth.workbench.host.PluginCatalog;

/** Starts the command line, or the desktop where there is a display. */
public final class Main {

  private static final int STAYS_OPEN = -1;

  private Main() {}

  /** Runs the program and ends the process with its exit code, unless a window stays open. */
  public static void main(String[] arguments) {
    PrintWriter out = writer(System.out);
    PrintWriter err = writer(System.err);
    int code =
        Plyworth.run(
            Workplace.here(),
            (study, catalog) -> open(study, catalog, out, err),
            out,
            err,
            arguments);
    out.flush();
    err.flush();
    if (code != STAYS_OPEN) {
      System.exit(code);
    }
  }

  private static int open(Path study, PluginCatalog catalog, PrintWriter out, PrintWriter err) {
    if (Desktop.available()) {
      Desktop.open(study, catalog);
      return STAYS_OPEN;
    }
    int code =
        Plyworth.run(
            Workplace.here(), (s, c) -> 0, out, err, "rank", study.toString(), "--top", "10");
    if (code != 0) {
      return code;
    }
    out.println();
    out.println("There is no display here, so no window opens. Where there is one, start:");
    out.println("  " + Workplace.here().home().resolve("bin").resolve("plyworth") + " " + study);
    return code;
  }

  private static PrintWriter writer(java.io.PrintStream stream) {
    return new PrintWriter(new OutputStreamWriter(stream, StandardCharsets.UTF_8), true);
  }
}
