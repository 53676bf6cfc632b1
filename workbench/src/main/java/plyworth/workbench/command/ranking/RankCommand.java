package plyworth.workbench.command.ranking;

import java.io.PrintWriter;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import plyworth.shared.data.JsonPrint;
import plyworth.workbench.analysis.BestList;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.Search;
import plyworth.workbench.command.part.Failures;
import plyworth.workbench.command.part.ListFormat;
import plyworth.workbench.command.part.NamedCandidate;
import plyworth.workbench.command.part.Program;
import plyworth.workbench.command.part.ProgressText;
import plyworth.workbench.command.part.StudyArgument;
import plyworth.workbench.command.part.StudyRun;
import plyworth.workbench.command.part.WrongInput;
import plyworth.workbench.command.print.HindrancesText;
import plyworth.workbench.ranking.ParetoFront;

/** Ranks every candidate of a study. */
@Command(name = "rank", description = "Ranks every candidate of a study.")
public final class RankCommand implements Callable<Integer> {

  private static final int MOST_ON_FRONT = 100_000;

  private static final String NO_FRONT =
      "--front: the Pareto front is read from the table of all candidates, and a bounded search"
          + " makes none. Leave --front out, or make the table fit: offer fewer options, or give"
          + " more memory (PLYWORTH_JAVA_OPTIONS=-Xmx8g).";

  @ParentCommand private Program program;

  @Mixin private StudyArgument study;

  @Mixin private ChartOption chart;

  @Option(
      names = "--top",
      paramLabel = "N",
      defaultValue = "10",
      description = "How many of the best to print, up to 100000; ${DEFAULT-VALUE} by default.")
  private int top;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "table",
      description = "table, json or csv; ${DEFAULT-VALUE} by default.")
  private ListFormat format;

  @Option(
      names = "--list",
      paramLabel = "WHICH",
      defaultValue = "kinds",
      description = {
        "What table and chart list: kinds (the best of each kind of barrier, printing and sealant) or all"
            + " (the best, however alike); ${DEFAULT-VALUE} by default. JSON has both, CSV all."
      })
  private Listing listing;

  @Option(
      names = "--front",
      description = "Also finds the Pareto front over the weighted criteria.")
  private boolean front;

  @Option(
      names = "--search",
      paramLabel = "WAY",
      description = {
        "table scores and counts every candidate; bounded scores only those that may be among the"
            + " best, and finds the same. By default a table where it fits into memory."
      })
  private Search search;

  @Option(names = "--timing", description = "Also prints counts, seconds and memory.")
  private boolean timing;

  @Override
  public Integer call() {
    if (top < 1 || top > NamedCandidate.MOST) {
      throw new WrongInput("--top is " + top + "; it must be 1 to " + NamedCandidate.MOST);
    }
    if (front && search == Search.BOUNDED) {
      throw new WrongInput(NO_FRONT);
    }
    chart.check();
    StudyRun run = StudyRun.of(program, study);
    Optional<Search> way = Optional.ofNullable(search);
    Ranked ranked =
        run.work(working -> run.ranked(working, top, way, ProgressText.on(program.err())));
    if (front && !ranked.ranking().isCounted()) {
      throw new WrongInput(NO_FRONT);
    }
    StudyRun.warn(ranked, program.err());
    if (chart.asked()) {
      chart.write(ranked, listed(ranked));
    }
    print(ranked);
    if (timing) {
      TimingText.print(ranked, format == ListFormat.TABLE ? program.out() : program.err());
    }
    return Failures.DONE;
  }

  private BestList listed(Ranked ranked) {
    return listing == Listing.KINDS ? BestList.kinds(ranked, top) : BestList.all(ranked, top);
  }

  private void print(Ranked ranked) {
    PrintWriter out = program.out();
    Optional<ParetoFront> found = front ? ranked.front(MOST_ON_FRONT) : Optional.empty();
    switch (format) {
      case TABLE -> RankingText.print(ranked, listed(ranked), found, out);
      case JSON ->
          out.print(JsonPrint.text(RankingJson.of(ranked, BestList.kinds(ranked, top), found)));
      case CSV -> RankingCsv.print(ranked, out);
    }
    out.flush();
    if (format != ListFormat.TABLE && ranked.best().isEmpty()) {
      HindrancesText.print(ranked, program.err());
    }
  }
}
