package plyworth.workbench.command.candidate;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import plyworth.shared.data.JsonPrint;
import plyworth.shared.structure.Structure;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.command.part.Failures;
import plyworth.workbench.command.part.NamedCandidate;
import plyworth.workbench.command.part.OutputFormat;
import plyworth.workbench.command.part.Program;
import plyworth.workbench.command.part.ProgressText;
import plyworth.workbench.command.part.StudyArgument;
import plyworth.workbench.command.part.StudyRun;
import plyworth.workbench.command.part.WrongInput;
import plyworth.workbench.host.PluginCatalog;

/** Shows structures side by side with today's. */
@Command(
    name = "compare",
    description = "Shows structures side by side with today's: figures, what is gained and lost.")
public final class CompareCommand implements Callable<Integer> {

  private static final int MOST = 8;

  @ParentCommand private Program program;

  @Mixin private StudyArgument study;

  @Parameters(
      index = "1..*",
      arity = "1..*",
      paramLabel = "CANDIDATE",
      description = "Up to 8, each a rank (1, 2, …) or a structure in layer notation.")
  private List<String> candidates;

  @Mixin private OutputFormat format;

  private record Answer(Ranked ranked, String text) {}

  @Override
  public Integer call() {
    if (candidates.size() > MOST) {
      throw new WrongInput(
          "at most " + MOST + " candidates fit side by side, not " + candidates.size());
    }
    StudyRun run = StudyRun.of(program, study);
    List<NamedCandidate> named =
        candidates.stream().map(c -> NamedCandidate.read(c, run.study())).toList();
    Answer answer = run.work(working -> compare(run, working, named));
    StudyRun.warn(answer.ranked(), program.err());
    program.out().print(answer.text());
    program.out().flush();
    return Failures.DONE;
  }

  private Answer compare(StudyRun run, PluginCatalog working, List<NamedCandidate> named) {
    Ranked ranked = run.naming(named, working, ProgressText.on(program.err()));
    List<Compared> sheets = sheets(ranked, named);
    return new Answer(
        ranked,
        format.json()
            ? JsonPrint.text(ComparisonJson.of(ranked, sheets))
            : ComparisonText.of(ranked, sheets));
  }

  /** Today's structure first, under whatever name it comes, and once. */
  private static List<Compared> sheets(Ranked ranked, List<NamedCandidate> named) {
    List<Compared> sheets = new ArrayList<>();
    sheets.add(new Compared("today", ranked.baseline()));
    int letter = 'A';
    for (NamedCandidate candidate : named) {
      Structure structure = candidate.in(ranked);
      if (!structure.equals(ranked.study().baseline())) {
        String name =
            candidate.rank() > 0 ? "rank " + candidate.rank() : Character.toString(letter++);
        sheets.add(new Compared(name, ranked.sheet(structure)));
      }
    }
    if (sheets.size() == 1) {
      throw new WrongInput("there is nothing to compare: only today's structure is named");
    }
    return sheets;
  }
}
