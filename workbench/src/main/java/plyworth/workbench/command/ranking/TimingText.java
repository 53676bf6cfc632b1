package plyworth.workbench.command.ranking;

import java.io.PrintWriter;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.engine.search.SearchEffort;

/** Prints how much work a ranking was. */
final class TimingText {

  private static final double MEBIBYTE = 1024.0 * 1024.0;

  private TimingText() {}

  static void print(Ranked ranked, PrintWriter out) {
    Runtime runtime = Runtime.getRuntime();
    out.printf(Locale.ROOT, "%nprocessors            %d%n", runtime.availableProcessors());
    out.printf(
        Locale.ROOT,
        "graph                 %,d nodes, %,d edges, %.3f s%n",
        ranked.scored().compiled().paths().nodes(),
        ranked.scored().compiled().paths().edges(),
        ranked.scored().compiled().seconds());
    ranked
        .ranking()
        .search()
        .ifPresentOrElse(e -> search(ranked, e, out), () -> table(ranked, out));
    out.printf("table                 %s%n", ranked.scored().sizeStatement());
    out.printf(
        Locale.ROOT,
        "heap in use           %.0f MiB of %.0f MiB%n",
        (runtime.totalMemory() - runtime.freeMemory()) / MEBIBYTE,
        runtime.maxMemory() / MEBIBYTE);
    sinceTheStart(ProcessHandle.current().info(), out);
    out.flush();
  }

  /** What somebody waits for who starts the program, the start of the virtual machine included. */
  private static void sinceTheStart(ProcessHandle.Info process, PrintWriter out) {
    if (process.startInstant().isPresent() && process.totalCpuDuration().isPresent()) {
      Duration waited = Duration.between(process.startInstant().get(), Instant.now());
      out.printf(
          Locale.ROOT,
          "since the start       %.2f s, %.2f s of processor time%n",
          waited.toMillis() * 1e-3,
          process.totalCpuDuration().get().toMillis() * 1e-3);
    }
  }

  private static void table(Ranked ranked, PrintWriter out) {
    long rows = ranked.scored().table().rows();
    double scoring = ranked.scored().seconds();
    out.printf(
        Locale.ROOT,
        "scored                %,d candidates, %.3f s, %,.0f candidates/s%n",
        rows,
        scoring,
        rows / scoring);
    out.printf(Locale.ROOT, "ranked                %.3f s%n", ranked.seconds());
  }

  private static void search(Ranked ranked, SearchEffort effort, PrintWriter out) {
    out.printf(Locale.ROOT, "ready to search       %.3f s%n", ranked.scored().seconds());
    out.printf(
        Locale.ROOT,
        "searched              %,d regions opened, %,d bounded, %,d candidates scored, %.3f s%n",
        effort.opened(),
        effort.bounded(),
        effort.scored(),
        effort.seconds());
    out.printf(
        Locale.ROOT,
        "queue                 %,d pops, %,d pushes, %,d regions at most, %.1f MiB%s%n",
        effort.popped(),
        effort.pushed(),
        effort.longestQueue(),
        effort.queueBytes() / MEBIBYTE,
        effort.deepened() == 0
            ? ""
            : String.format(
                Locale.ROOT, "; %,d opened depth-first for want of memory", effort.deepened()));
  }
}
