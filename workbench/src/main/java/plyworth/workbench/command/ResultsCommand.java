package plyworth.workbench.command;

import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.ParentCommand;
import plyworth.shared.data.JsonPrint;
import plyworth.shared.study.Results;
import plyworth.workbench.analysis.Ranked;
import plyworth.workbench.analysis.ResultsReview;
import plyworth.workbench.host.PluginCatalog;

/** Shows what laboratories and trials found beside what was believed and predicted. */
@Command(
    name = "results",
    description = {
      "Shows what laboratories and trials found: how each reading moved the figure of a material, how"
          + " candidates compare with what was predicted of them, and what that does to the ranking."
    })
final class ResultsCommand implements Callable<Integer> {

  @ParentCommand private Plyworth program;

  @Mixin private StudyArgument study;

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
    StudyRun run = StudyRun.of(program, study);
    if (run.study().results().equals(Results.NONE)) {
      throw new WrongInput(
          run.file()
              + " holds no results. Put them under \"results\": a reading of a material into"
              + " \"measured_materials\", of a candidate into \"measured_candidates\".");
    }
    Answer answer = run.work(working -> answer(run, working));
    StudyRun.warn(answer.after(), program.err());
    if (format.json()) {
      program.out().print(JsonPrint.text(ResultsJson.of(answer)));
    } else {
      ResultsText.print(answer, program.out());
    }
    program.out().flush();
    return Failures.DONE;
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
