package plyworth.workbench.command.candidate;

import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import plyworth.shared.data.JsonPrint;
import plyworth.shared.quantity.Range;
import plyworth.shared.structure.Structure;
import plyworth.workbench.analysis.Ranges;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.Sheet;
import plyworth.workbench.command.part.Failures;
import plyworth.workbench.command.part.NamedCandidate;
import plyworth.workbench.command.part.OutputFormat;
import plyworth.workbench.command.part.Program;
import plyworth.workbench.command.part.StudyArgument;
import plyworth.workbench.command.part.StudyRun;
import plyworth.workbench.host.PluginCatalog;

/** Scores any structure under a study's brief, also one that is not on offer. */
@Command(
    name = "score",
    description = "Scores any structure under a study's brief, also one that is not on offer.")
public final class ScoreCommand implements Callable<Integer> {

  private static final int DRAWS = 100;

  @ParentCommand private Program program;

  @Mixin private StudyArgument study;

  @Option(
      names = "--structure",
      required = true,
      paramLabel = "LAYERS",
      description = {
        "The layers, outside first, joined by \" / \". A layer is: material amount unit, and where"
            + " they matter @process, !side and coverage %%. For example",
        "\"ink-wb 1.4 g/m2 @flexo-water 45 %% / kraft-paper 50 g/m2\"."
      })
  private String structure;

  @Mixin private OutputFormat format;

  private record Scores(Ranked ranked, String text) {}

  @Override
  public Integer call() {
    StudyRun run = StudyRun.of(program, study);
    Structure read = NamedCandidate.structure("--structure", structure, run.study());
    Scores scores = run.work(working -> score(run, working, read));
    StudyRun.warn(scores.ranked(), program.err());
    program.out().print(scores.text());
    program.out().flush();
    return Failures.DONE;
  }

  private Scores score(StudyRun run, PluginCatalog working, Structure read) {
    Ranked ranked = run.ready(working);
    Sheet sheet = ranked.sheet(read);
    Map<String, Range> ranges =
        Ranges.of(ranked.scored().compiled().prepared(), read, DRAWS, run.study().seed());
    return new Scores(
        ranked,
        format.json()
            ? JsonPrint.text(SheetJson.of(ranked, sheet, ranges))
            : SheetText.of(ranked, sheet, ranges, DRAWS));
  }
}
