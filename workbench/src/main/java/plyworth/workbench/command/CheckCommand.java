package plyworth.workbench.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;
import plyworth.shared.store.StudyFile;
import plyworth.shared.study.Study;
import plyworth.workbench.analysis.Compiled;
import plyworth.workbench.analysis.Prepared;
import plyworth.workbench.host.PluginCatalog;

/** Reads studies strictly and says what is wrong and where. */
@Command(
    name = "check",
    mixinStandardHelpOptions = true,
    description = "Reads studies strictly; says what is wrong and where.")
final class CheckCommand implements Callable<Integer> {

  @ParentCommand private Plyworth program;

  @Parameters(arity = "1..*", paramLabel = "STUDY", description = "Study files.")
  private List<Path> files;

  @Override
  public Integer call() {
    PluginCatalog catalog = program.catalog();
    int wrong = 0;
    for (Path file : files) {
      try {
        program.out().println(file + ": " + check(file, catalog));
      } catch (IllegalArgumentException | plyworth.shared.data.DataException | IOException e) {
        program.err().println("plyworth: " + said(file, e));
        wrong++;
      }
    }
    return wrong == 0 ? Failures.DONE : Failures.WRONG_INPUT;
  }

  private static String check(Path file, PluginCatalog catalog) throws IOException {
    Study study = StudyFile.open(file).study();
    StudyArgument.refuseDangling(file, study, catalog, Set.of());
    Compiled compiled = Compiled.of(Prepared.of(study, catalog), () -> false);
    return String.format(
        java.util.Locale.ROOT,
        "in order, %,d candidates, %d neighbour rules",
        compiled.paths().count(),
        study.rules().size());
  }

  private static String said(Path file, Exception e) {
    if (e instanceof java.nio.file.NoSuchFileException) {
      return file + ": there is no such file. Check the path.";
    }
    return e instanceof plyworth.shared.data.DataException
        ? e.getMessage()
        : file + ": " + e.getMessage();
  }
}
