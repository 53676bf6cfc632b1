package plyworth.workbench.command.evidence;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import plyworth.shared.store.StudyFile;
import plyworth.shared.store.TextFile;
import plyworth.workbench.analysis.MaterialImport;
import plyworth.workbench.analysis.MaterialsCsv;
import plyworth.workbench.analysis.StudyMaterials;
import plyworth.workbench.command.part.Failures;
import plyworth.workbench.command.part.Program;
import plyworth.workbench.command.part.StudyArgument;
import plyworth.workbench.command.part.StudyRun;
import plyworth.workbench.command.part.WrongInput;

/**
 * Lists the materials of a study, writes their figures into a file, and reads a file of figures.
 */
@Command(
    name = "materials",
    description = {
      "Lists the materials that a study uses or carries. With --export their figures go into a file,"
          + " one sourced figure to a line; with --import the same file, edited, is compared with"
          + " the study, and with --to written into a new study."
    })
public final class MaterialsCommand implements Callable<Integer> {

  @ParentCommand private Program program;

  @Mixin private StudyArgument study;

  @Option(
      names = "--export",
      paramLabel = "FILE",
      description = "Writes every figure of these materials into a new file, NAME.csv.")
  private Path export;

  @Option(
      names = "--import",
      paramLabel = "FILE",
      description = "Shows what the figures in a file change, and which lines are refused.")
  private Path figures;

  @Option(
      names = "--to",
      paramLabel = "FILE",
      description = "Writes the study with these figures into a new file, NAME.study.json.")
  private Path to;

  @Override
  public Integer call() {
    if (to != null && figures == null) {
      throw new WrongInput("--to: there is nothing to write. Name a file of figures: --import.");
    }
    StudyRun run = StudyRun.of(program, study);
    if (export != null) {
      write(MaterialsCsv.text(StudyMaterials.here(run.study())));
    }
    int code = figures == null ? Failures.DONE : read(run);
    if (export == null && figures == null) {
      MaterialsText.print(run.study(), program.out());
    }
    program.out().flush();
    return code;
  }

  private void write(String text) {
    if (Files.exists(export)) {
      throw new WrongInput("--export: " + export + " exists already. Name a new file.");
    }
    try {
      Files.writeString(export, text);
    } catch (IOException e) {
      throw new WrongInput(
          "--export: " + export + " cannot be written. Check that its folder is there.");
    }
  }

  /** A file with a wrong line is shown, and not taken over. */
  private int read(StudyRun run) {
    MaterialImport read =
        MaterialImport.read(TextFile.read(figures), figures.toString(), run.study(), run.catalog());
    MaterialsText.print(read, program.out());
    read.refused()
        .forEach(
            line ->
                program
                    .err()
                    .printf(
                        "plyworth: %s, line %d, %s: %s%n",
                        figures, line.line(), line.what(), line.reason()));
    if (!read.refused().isEmpty()) {
      return Failures.WRONG_INPUT;
    }
    if (to != null) {
      StudyFile.save(to, read.study(), StudyFile.NEW);
    }
    return Failures.DONE;
  }
}
