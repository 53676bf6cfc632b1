package plyworth.workbench.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import plyworth.shared.data.JsonPrint;
import plyworth.shared.study.Study;
import plyworth.workbench.analysis.Compiled;
import plyworth.workbench.analysis.Prepared;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.Scored;
import plyworth.workbench.chart.ChartFile;
import plyworth.workbench.chart.ChartTheme;
import plyworth.workbench.chart.RankedBars;
import plyworth.workbench.chart.RankingBars;
import plyworth.workbench.chart.RankingChart;
import plyworth.workbench.engine.table.Progress;
import plyworth.workbench.host.PluginFault;
import plyworth.workbench.ranking.ParetoFront;

/** Ranks every candidate of a study. */
@Command(
    name = "rank",
    mixinStandardHelpOptions = true,
    description = "Ranks every candidate of a study.")
final class RankCommand implements Callable<Integer> {

  private static final int MOST_ON_FRONT = 100_000;

  /** Ways to print a ranking. */
  enum Format {
    /** For people. */
    TABLE,
    /** For programs. */
    JSON,
    /** For spreadsheets. */
    CSV
  }

  @ParentCommand private Plyworth program;

  @Mixin private StudyArgument study;

  @Option(
      names = "--top",
      paramLabel = "N",
      defaultValue = "10",
      description = "How many of the best to print; ${DEFAULT-VALUE} by default.")
  private int top;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "table",
      description = "table, json or csv.")
  private Format format;

  @Option(
      names = "--chart",
      paramLabel = "FILE",
      description = "Also writes the ranking chart, as .png or .svg.")
  private Path chart;

  @Option(
      names = "--front",
      description = "Also finds the Pareto front over the weighted criteria.")
  private boolean front;

  @Option(names = "--timing", description = "Also prints counts, seconds and memory.")
  private boolean timing;

  @Override
  public Integer call() throws IOException {
    if (top < 1) {
      throw new IllegalArgumentException("--top is " + top + "; it must be 1 or more");
    }
    if (chart != null && !ChartFile.canWrite(chart)) {
      throw new IllegalArgumentException("--chart writes .png or .svg, not " + chart);
    }
    var catalog = program.catalog();
    Study read = study.read(catalog);
    Compiled compiled = Compiled.of(Prepared.of(read, study.narrowed(catalog)), () -> false);
    Ranked ranked = Ranked.of(Scored.of(compiled, Progress.NONE), top);
    ranked.scored().faults().forEach(this::warn);
    print(ranked);
    if (chart != null) {
      writeChart(ranked);
    }
    if (timing) {
      TimingText.print(ranked, format == Format.TABLE ? program.out() : program.err());
    }
    return Failures.DONE;
  }

  private void print(Ranked ranked) {
    PrintWriter out = program.out();
    Optional<ParetoFront> found =
        front ? Optional.of(ranked.front(MOST_ON_FRONT)) : Optional.empty();
    switch (format) {
      case TABLE -> RankingText.print(ranked, found, out);
      case JSON -> out.print(JsonPrint.text(RankingJson.of(ranked, found)));
      case CSV -> RankingCsv.print(ranked, out);
    }
    out.flush();
  }

  private void writeChart(Ranked ranked) throws IOException {
    RankingBars bars = RankedBars.of(ranked, top, Locale.ENGLISH);
    int height = Math.min(4000, 140 + 34 * bars.bars().size());
    ChartFile.write(RankingChart.of(bars, ChartTheme.PAPER), 1200, height, chart);
  }

  private void warn(PluginFault fault) {
    program.err().println("plyworth: left out: " + fault.name() + ": " + fault.reason());
  }
}
