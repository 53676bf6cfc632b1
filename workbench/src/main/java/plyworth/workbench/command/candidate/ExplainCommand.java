package plyworth.workbench.command.candidate;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import plyworth.shared.data.Json;
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
import plyworth.workbench.host.PluginCatalog;

/** Shows the breakdown behind a structure's figures. */
@Command(
    name = "explain",
    description = "Shows the breakdown behind a structure's figures, with formulae and sources.")
public final class ExplainCommand implements Callable<Integer> {

  @ParentCommand private Program program;

  @Mixin private StudyArgument study;

  @Parameters(
      index = "1",
      paramLabel = "CANDIDATE",
      description = "A rank (1, 2, …), \"baseline\", or a structure in layer notation.")
  private String candidate;

  @Mixin private OutputFormat format;

  private record Explained(Ranked ranked, String text) {}

  @Override
  public Integer call() {
    StudyRun run = StudyRun.of(program, study);
    NamedCandidate named = NamedCandidate.read(candidate, run.study());
    Explained explained = run.work(working -> explain(run, working, named));
    StudyRun.warn(explained.ranked(), program.err());
    program.out().print(explained.text());
    program.out().flush();
    return Failures.DONE;
  }

  private Explained explain(StudyRun run, PluginCatalog working, NamedCandidate named) {
    Ranked ranked = run.naming(List.of(named), working, ProgressText.on(program.err()));
    Structure structure = named.in(ranked);
    return new Explained(
        ranked, format.json() ? json(ranked, structure) : ExplanationText.of(ranked, structure));
  }

  private static String json(Ranked ranked, Structure structure) {
    Map<String, Json> root = new LinkedHashMap<>();
    root.put("format", Json.of("plyworth explain"));
    root.put("version", Json.of(1));
    root.put("study", Json.of(ranked.study().title()));
    root.put("structure", Json.of(structure.toString()));
    root.put("explanation", ExplanationJson.of(ranked, structure));
    return JsonPrint.text(Json.of(root));
  }
}
