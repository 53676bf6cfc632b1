package plyworth.workbench.command.stock;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import plyworth.shared.data.DataException;
import plyworth.shared.study.Study;
import plyworth.workbench.analysis.Compiled;
import plyworth.workbench.command.part.Failures;
import plyworth.workbench.command.part.PlantChoice;
import plyworth.workbench.command.part.PluginChoice;
import plyworth.workbench.command.part.Program;
import plyworth.workbench.command.part.StudyArgument;
import plyworth.workbench.command.part.StudyRun;
import plyworth.workbench.command.print.BriefText;
import plyworth.workbench.host.PluginCatalog;

/** Reads studies strictly and says what is wrong and where. */
@Command(
    name = "check",
    description = "Reads studies strictly; says what is wrong and where. Changes nothing.")
public final class CheckCommand implements Callable<Integer> {

  @ParentCommand private Program program;

  @Parameters(arity = "1..*", paramLabel = "STUDY", description = "Study files.")
  private List<Path> files;

  @Mixin private PlantChoice plant;

  @Mixin private PluginChoice plugins;

  @Override
  public Integer call() {
    PluginCatalog catalog = program.catalog();
    int code = Failures.DONE;
    for (Path file : files) {
      try {
        program.out().println(file + ": " + check(file, catalog));
      } catch (DataException e) {
        code = Failures.refuse(e, program.err());
      }
    }
    return code;
  }

  private String check(Path file, PluginCatalog catalog) {
    Study study = plant.in(StudyArgument.open(file));
    plugins.check(catalog, study);
    StudyArgument.refuseDangling(file, study, catalog, plugins.leftOut());
    StudyRun run = new StudyRun(file, study, plugins.of(catalog));
    Compiled compiled = run.work(run::compiled);
    if (compiled.paths().count() == 0) {
      throw run.nothingOnOffer();
    }
    return String.format(
        Locale.ROOT,
        "in order, %,d candidates, %d neighbour rules, %s%s",
        compiled.paths().count(),
        study.rules().size(),
        measurements(study),
        study.plant().map(p -> "; plant: " + BriefText.of(p)).orElse(""));
  }

  /** How many measurements there are, and what they concern. */
  private static String measurements(Study study) {
    int count = study.measurements().size();
    if (count == 0) {
      return "no measurements";
    }
    Set<String> figures = new TreeSet<>();
    study.measurements().forEach(m -> figures.add(m.figure()));
    return count
        + (count == 1 ? " measurement of " : " measurements of ")
        + String.join(", ", figures);
  }
}
