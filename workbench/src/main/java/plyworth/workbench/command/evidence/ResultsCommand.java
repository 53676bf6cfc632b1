package plyworth.workbench.command.evidence;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;
import plyworth.shared.data.JsonPrint;
import plyworth.shared.store.StudyFile;
import plyworth.shared.store.TextFile;
import plyworth.shared.study.MaterialResult;
import plyworth.shared.study.Results;
import plyworth.shared.study.Study;
import plyworth.workbench.analysis.PropertyBounds;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.ResultsReview;
import plyworth.workbench.command.part.Failures;
import plyworth.workbench.command.part.OutputFormat;
import plyworth.workbench.command.part.Program;
import plyworth.workbench.command.part.ProgressText;
import plyworth.workbench.command.part.StudyArgument;
import plyworth.workbench.command.part.StudyRun;
import plyworth.workbench.command.part.WrongInput;
import plyworth.workbench.host.PluginCatalog;
import plyworth.workbench.robustness.turn.QuestionList;

/** Shows what laboratories and trials found beside what was believed and predicted. */
@Command(
    name = "results",
    description = {
      "Shows what laboratories and trials found: how each reading moved the figure of a material, how"
          + " candidates compare with what was predicted of them, and what that does to the ranking."
    })
public final class ResultsCommand implements Callable<Integer> {

  @ParentCommand private Program program;

  @Mixin private StudyArgument study;

  @Option(
      names = "--with",
      paramLabel = "FILE",
      description =
          "Adds what a laboratory has filled into the list that questions --format csv gives.")
  private Path with;

  @Option(
      names = "--to",
      paramLabel = "FILE",
      description = "Writes the study with these results into a new file, NAME.study.json.")
  private Path to;

  @Mixin private OutputFormat format;

  /**
   * What the results came to.
   *
   * @param before the ranking as it was without them
   * @param after the ranking with them
   */
  record Answer(Ranked before, Ranked after, ResultsReview review) {}

  @Override
  public Integer call() {
    StudyRun run = filled(StudyRun.of(program, study));
    if (run.study().results().equals(Results.NONE)) {
      throw new WrongInput(
          run.file()
              + " holds no results. Put them under \"results\": a reading of a material into"
              + " \"measured_materials\", of a candidate into \"measured_candidates\"; or fill the list of questions and give it --with FILE.");
    }
    Answer answer = run.work(working -> answer(run, working));
    StudyRun.warn(answer.after(), program.err());
    if (to != null) {
      StudyFile.save(to, run.study(), StudyFile.NEW);
    }
    if (format.json()) {
      program.out().print(JsonPrint.text(ResultsJson.of(answer)));
    } else {
      ResultsText.print(answer, program.out());
    }
    program.out().flush();
    return Failures.DONE;
  }

  /** The study with what was filled in. */
  private StudyRun filled(StudyRun run) {
    if (with == null) {
      return run;
    }
    List<MaterialResult> more =
        QuestionList.read(TextFile.read(with), with.toString(), run.study()).strictly();
    Study filled = run.study().with(run.study().results().and(more));
    PropertyBounds.check(filled, run.catalog()).stream()
        .findFirst()
        .ifPresent(
            wrong -> {
              throw new WrongInput(with + ": " + wrong.problem() + ". " + wrong.remedy());
            });
    return new StudyRun(run.file(), filled, run.catalog());
  }

  private Answer answer(StudyRun run, PluginCatalog working) {
    Ranked after = best(run, working);
    StudyRun without = new StudyRun(run.file(), run.study().with(Results.NONE), run.catalog());
    return new Answer(
        best(without, working), after, ResultsReview.of(after.scored().compiled().prepared()));
  }

  private Ranked best(StudyRun run, PluginCatalog working) {
    return run.ranked(working, 1, Optional.empty(), ProgressText.on(program.err()));
  }
}
