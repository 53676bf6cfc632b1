package plyworth.workbench.command;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import plyworth.shared.data.Json;
import plyworth.shared.data.JsonPrint;
import plyworth.shared.structure.LayerNotation;
import plyworth.shared.structure.Structure;
import plyworth.shared.study.Study;
import plyworth.workbench.analysis.Compiled;
import plyworth.workbench.analysis.Prepared;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.Scored;
import plyworth.workbench.engine.table.Progress;
import plyworth.workbench.host.PluginCatalog;

/** Shows the breakdown behind a structure's figures. */
@Command(
    name = "explain",
    mixinStandardHelpOptions = true,
    description = "Shows the breakdown behind a structure's figures, with formulae and sources.")
final class ExplainCommand implements Callable<Integer> {

  @ParentCommand private Plyworth program;

  @Mixin private StudyArgument study;

  @Parameters(
      index = "1",
      paramLabel = "CANDIDATE",
      description = "A rank (1, 2, …), \"baseline\", or a structure in layer notation.")
  private String candidate;

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      defaultValue = "table",
      description = "table or json.")
  private ScoreCommand.Format format;

  @Override
  public Integer call() throws IOException {
    if (candidate.matches("\\d+")) {
      explainRank(Integer.parseInt(candidate));
    } else {
      Structure read =
          candidate.equals("baseline")
              ? study.read(program.catalog()).baseline()
              : LayerNotation.readStructure(candidate);
      explain(SingleStructure.ready(program, study, read), read);
    }
    return Failures.DONE;
  }

  private void explainRank(int rank) throws IOException {
    PluginCatalog catalog = program.catalog();
    Study read = study.read(catalog);
    Compiled compiled = Compiled.of(Prepared.of(read, study.narrowed(catalog)), () -> false);
    Ranked ranked = Ranked.of(Scored.of(compiled, Progress.NONE), Math.max(1, rank));
    if (rank < 1 || rank > ranked.best().size()) {
      throw new IllegalArgumentException(
          "there is no rank " + rank + "; " + ranked.best().size() + " candidates are ranked");
    }
    explain(ranked, ranked.structure(ranked.best().get(rank - 1).path()));
  }

  private void explain(Ranked ranked, Structure structure) {
    if (format == ScoreCommand.Format.JSON) {
      Map<String, Json> root = new LinkedHashMap<>();
      root.put("format", Json.of("plyworth explain"));
      root.put("version", Json.of(1));
      root.put("structure", Json.of(structure.toString()));
      root.put("explanation", ExplanationJson.of(ranked, structure));
      program.out().print(JsonPrint.text(Json.of(root)));
    } else {
      program.out().println(structure);
      ExplanationText.print(ranked, structure, program.out());
    }
    program.out().flush();
  }
}
